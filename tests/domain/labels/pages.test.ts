import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { labelCode } from '../../../src/domain/core/code.ts';
import { labelsOnPage } from '../../../src/domain/labels/format.ts';
import { LABEL_FORMATS } from '../../../src/domain/labels/formats.ts';
import { cellOrigin, nextStart, paginate } from '../../../src/domain/labels/pages.ts';
import { tub } from './make.ts';

const subjects = (count: number) =>
  Array.from({ length: count }, (_, i) => tub({ code: labelCode(i) }));
const anyFormat = fc.constantFrom(...LABEL_FORMATS);
const byId = (id: string) => LABEL_FORMATS.find((format) => format.id === id)!;

test('every label is printed once, in order, on no page more than it holds', () => {
  fc.assert(
    fc.property(anyFormat, fc.nat(150), fc.integer({ min: 1, max: 65 }), (format, count, at) => {
      const all = subjects(count);
      const pages = paginate(all, format, at);
      expect(pages.flat().map(({ subject }) => subject)).toEqual(all);
      for (const page of pages) {
        const cells = page.map(({ cell }) => cell);
        expect(cells.length).toBeGreaterThan(0);
        expect(Math.max(...cells)).toBeLessThan(labelsOnPage(format));
        expect(cells).toEqual(cells.map((_, i) => cells[0]! + i));
      }
    }),
  );
});

test('a half-used sheet begins at the label that is left, the next sheet at its first', () => {
  const [first, second] = paginate(subjects(10), byId('a4-24-64x34'), 20);
  expect(first!.map(({ cell }) => cell)).toEqual([19, 20, 21, 22, 23]);
  expect(second!.map(({ cell }) => cell)).toEqual([0, 1, 2, 3, 4]);
});

test('a roll has one label a page, wherever a sheet was left', () => {
  const pages = paginate(subjects(3), byId('roll-50x30'), 17);
  expect(pages.map((page) => page.map(({ cell }) => cell))).toEqual([[0], [0], [0]]);
});

test.each([
  ['below the first label', 0, 0],
  ['not a number', Number.NaN, 0],
  ['beyond the last label', 99, 23],
  ['between two labels', 3.7, 2],
])('a start that is %s is taken as the nearest label', (_, startAt, cell) => {
  expect(paginate(subjects(1), byId('a4-24-64x34'), startAt)[0]![0]!.cell).toBe(cell);
});

test.each([
  [1, 5, 6],
  [20, 5, 1],
  [20, 6, 2],
  [1, 48, 1],
])('after %i and %i labels the next print begins at %i', (startAt, count, next) => {
  expect(nextStart(byId('a4-24-64x34'), startAt, count)).toBe(next);
});

// By hand: 210 − 3 × 63.5 − 2 × 2.5 = 14.5, halved 7.25; 297 − 8 × 33.9 = 25.8, halved 12.9.
test('labels are counted along the rows', () => {
  const format = byId('a4-24-64x34');
  expect(cellOrigin(format, 0).x).toBeCloseTo(7.25, 9);
  expect(cellOrigin(format, 0).y).toBeCloseTo(12.9, 9);
  expect(cellOrigin(format, 4).x).toBeCloseTo(7.25 + 66, 9);
  expect(cellOrigin(format, 4).y).toBeCloseTo(12.9 + 33.9, 9);
});
