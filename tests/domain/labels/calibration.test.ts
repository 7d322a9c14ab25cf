import { describe, expect, test } from 'vitest';
import { calibrationPage, rulerLength } from '../../../src/domain/labels/calibration.ts';
import { labelsOnPage } from '../../../src/domain/labels/format.ts';
import { LABEL_FORMATS } from '../../../src/domain/labels/formats.ts';
import { readOffset } from '../../../src/domain/labels/offset.ts';
import { boxOfText } from '../../../src/domain/labels/placed.ts';

describe.each(LABEL_FORMATS)('$paper, $name', (format) => {
  const { edges, readings } = calibrationPage(format);

  test('the whole test page lies on the page', () => {
    for (const mark of [...edges, ...readings]) {
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
    expect(edges).toHaveLength(labelsOnPage(format) * 12);
  });

  test('every millimetre of the rulers has its mark', () => {
    const lines = readings.filter(({ kind }) => kind === 'line').length;
    const rules = 2 + 2; // Two long lines, and the marks at nought.
    const { width, height } = format.page;
    expect(lines).toBe(rulerLength(width) + rulerLength(height) + rules);
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
