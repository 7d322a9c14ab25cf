import { describe, expect, test } from 'vitest';
import { labelsOnPage } from '../../../src/domain/labels/format.ts';
import { LABEL_FORMATS, PAGES } from '../../../src/domain/labels/formats.ts';
import { cellOrigin } from '../../../src/domain/labels/pages.ts';

const EPSILON_MM = 1e-9; // For sums of binary fractions, far below any printer.

describe.each(LABEL_FORMATS)('$paper, $name', (format) => {
  const { page, label } = format;
  const cells = Array.from({ length: labelsOnPage(format) }, (_, cell) => cellOrigin(format, cell));

  test('every label lies on the page', () => {
    for (const { x, y } of cells) {
      expect(x).toBeGreaterThanOrEqual(-EPSILON_MM);
      expect(y).toBeGreaterThanOrEqual(-EPSILON_MM);
      expect(x + label.width).toBeLessThanOrEqual(page.width + EPSILON_MM);
      expect(y + label.height).toBeLessThanOrEqual(page.height + EPSILON_MM);
    }
  });

  test('no two labels overlap', () => {
    for (const [i, a] of cells.entries()) {
      for (const b of cells.slice(i + 1)) {
        const apart =
          Math.abs(a.x - b.x) >= label.width - EPSILON_MM ||
          Math.abs(a.y - b.y) >= label.height - EPSILON_MM;
        expect(apart).toBe(true);
      }
    }
  });

  test('the grid is centred: what is left over is the same on both sides', () => {
    const last = cells.at(-1)!;
    expect(page.width - last.x - label.width).toBeCloseTo(format.left, 9);
    expect(page.height - last.y - label.height).toBeCloseTo(format.top, 9);
  });
});

test('every format has an id of its own, since choices are remembered by it', () => {
  expect(new Set(LABEL_FORMATS.map(({ id }) => id)).size).toBe(LABEL_FORMATS.length);
});

// Source: A4 from ISO 216; Letter is 8½ × 11 in, an inch being 25.4 mm exactly (NIST SP 811).
test('pages have the sizes of their standards', () => {
  expect(PAGES.a4).toEqual({ width: 210, height: 297 });
  expect(PAGES.letter.width).toBeCloseTo(215.9, 9);
  expect(PAGES.letter.height).toBeCloseTo(279.4, 9);
});

test('label sizes are common practice and say so: nobody should trust them unmeasured', () => {
  for (const { source } of LABEL_FORMATS) expect(source).toContain('measure your stock');
});
