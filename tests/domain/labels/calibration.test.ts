import { describe, expect, test } from 'vitest';
import { calibrationPage, rulerLength } from '../../../src/domain/labels/calibration.ts';
import { labelsOnPage } from '../../../src/domain/labels/format.ts';
import { LABEL_FORMATS } from '../../../src/domain/labels/formats.ts';
import { readOffset } from '../../../src/domain/labels/offset.ts';
import { boxOfText } from '../../../src/domain/labels/placed.ts';

describe.each(LABEL_FORMATS)('$paper, $name', (format) => {
  const placed = calibrationPage(format);

  test('the whole test page lies on the page', () => {
    for (const mark of placed) {
      if (mark.kind === 'qr') throw new Error('A test page has no codes.');
      const ends =
        mark.kind === 'line'
          ? [mark.from, mark.to]
          : [
              [boxOfText(mark).x, boxOfText(mark).y],
              [mark.x + mark.width, boxOfText(mark).y + boxOfText(mark).height],
            ];
      for (const [x = -1, y = -1] of ends) {
        expect(x).toBeGreaterThanOrEqual(-1e-9);
        expect(y).toBeGreaterThanOrEqual(-1e-9);
        expect(x).toBeLessThanOrEqual(format.page.width + 1e-9);
        expect(y).toBeLessThanOrEqual(format.page.height + 1e-9);
      }
    }
  });

  test('every label has its box: four edges and two strokes in each corner', () => {
    const edges = placed.filter((mark) => mark.kind === 'line').length;
    const marks = rulerLength(format.page.width) + rulerLength(format.page.height) + 4;
    expect(edges).toBe(labelsOnPage(format) * 12 + marks);
  });
});

test('rulers are 100 mm, or the whole tens of millimetres that a small label holds', () => {
  expect(rulerLength(210)).toBe(100);
  expect(rulerLength(40)).toBe(30);
  expect(rulerLength(25)).toBe(10);
});

test.each([
  [1.26, 1.3],
  [-7, -5],
  [5.04, 5],
  [Number.NaN, 0],
])('an offset of %d mm is taken as %d mm', (entered, taken) => {
  expect(readOffset(entered)).toBe(taken);
});
