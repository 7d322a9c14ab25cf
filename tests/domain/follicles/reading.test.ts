import { expect, test } from 'vitest';
import { looksOf } from '../../../src/domain/follicles/looks.ts';
import { readings } from './make-scan.ts';

test('two axes become their mean, and the larger is kept', () => {
  const [reading] = readings([0, [20, 24]]);
  expect(reading).toMatchObject({ kind: 'size', mm: 22, largerMm: 24, errorMm: 0.08 * 22 });
});

// Sizes of the felt classes: common practice, no source.
test.each([
  ['small bumps', 12],
  ['round lumps', 20],
  ['large lumps', 30],
  ['egg-like', 40],
] as const)('%s stand for about %i mm, give or take a quarter', (felt, mm) => {
  const [reading] = readings([0, felt]);
  expect(reading).toMatchObject({ kind: 'size', method: 'palpation', mm, largerMm: mm });
  expect(reading?.errorMm).toBe(mm / 4);
});

test('nothing found is no size, only a limit', () => {
  const [seen, feltNothing] = readings([0, 'none'], [1, 'nothing']);
  expect(seen).toMatchObject({ kind: 'below', belowMm: 8 });
  expect(feltNothing).toMatchObject({ kind: 'below', belowMm: 12 });
  for (const each of [seen, feltNothing]) expect(each).not.toHaveProperty('mm');
});

test('readings come in the order of their nights, whatever order they were given in', () => {
  const days = readings([40, 20], [0, 12], [20, 16]).map(({ night }) => night);
  expect(days).toEqual(days.toSorted());
});

test('two scans of one night and method are one look, √2 times as exact; two methods are two', () => {
  const looks = looksOf(readings([0, 20], [0, 22], [0, 'round lumps']));
  expect(looks.map(({ method, mm }) => [method, mm])).toEqual([
    ['palpation', 20],
    ['ultrasound', 21],
  ]);
  expect(looks[1]?.errorMm).toBeCloseTo((0.08 * 21) / Math.SQRT2, 10);
});

test('where the second scan of a night finds a follicle, it was there all night', () => {
  const looks = looksOf(readings([0, 'none'], [0, 9]));
  expect(looks).toHaveLength(1);
  expect(looks[0]).toMatchObject({ mm: 9, found: true });
});
