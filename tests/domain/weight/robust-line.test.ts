import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { theilSen, type LinePoint } from '../../../src/domain/weight/robust-line.ts';
import { runs } from '../../arbitrary.ts';

const points = (...pairs: readonly (readonly [number, number])[]): readonly LinePoint[] =>
  pairs.map(([x, y]) => ({ x, y }));

test('the slope and its 95 % interval are those of Sen’s own example', () => {
  // Data of Sen P.K. 1968, J Am Stat Assoc 63:1379–1389: slope 4. His printed limits rest on slips in his list of
  // slopes; 26/7 and 35/8 are what the tests of other programs hold (R package deming, SciPy).
  const sen = points([1, 9], [2, 15], [3, 19], [4, 20], [10, 45], [12, 55], [18, 78]);
  const line = theilSen(sen, 0.95);
  expect(line?.slope).toBeCloseTo(4, 12);
  expect(line?.low).toBeCloseTo(26 / 7, 12);
  expect(line?.high).toBeCloseTo(35 / 8, 12);
  // Of the 5,040 orders of seven, 76 have at most three discordant pairs: counted one by one.
  expect(line?.coverage).toBeCloseTo(1 - 152 / 5_040, 12);
});

/** Every order of the first whole numbers. */
function orders(n: number): readonly (readonly number[])[] {
  if (n === 0) return [[]];
  return orders(n - 1).flatMap((order) =>
    Array.from({ length: n }, (_, at) => order.toSpliced(at, 0, n - 1)),
  );
}

const falls = (order: readonly number[]): number =>
  order.reduce((sum, a, i) => sum + order.slice(i + 1).filter((b) => b < a).length, 0);

describe('an 80 % interval', () => {
  test.each([4, 5, 6, 7])('of %i points is that of a test over all orders', (n) => {
    // Slopes that Kendall's test does not reject, with its chances counted over all orders of n.
    const counted = orders(n).map(falls);
    const chanceOf = (most: number) =>
      counted.filter((each) => each <= most).length / counted.length;
    const cloud = Array.from({ length: n }, (_, x) => ({ x, y: (7 * x * x) % 11 }));
    const pairs = (n * (n - 1)) / 2;
    const isKept = (slope: number): boolean => {
      const falling = falls(cloud.map(({ x, y }) => y - slope * x));
      return 2 * chanceOf(Math.min(falling, pairs - falling)) > 0.2 + 1e-12;
    };
    const { low = NaN, high = NaN, coverage } = theilSen(cloud, 0.8) ?? {};
    expect([low + 1e-6, (low + high) / 2, high - 1e-6].map(isKept)).toEqual([true, true, true]);
    expect([low - 1e-6, high + 1e-6].map(isKept)).toEqual([false, false]);
    expect(coverage).toBeGreaterThanOrEqual(0.8);
  });

  test('of three points is one of two in three, for one order in six rises throughout', () => {
    const line = theilSen(points([0, 1], [1, 5], [2, 4]), 0.8);
    expect([line?.low, line?.high]).toEqual([-1, 4]);
    expect(line?.coverage).toBeCloseTo(2 / 3, 12);
  });
});

describe('the line', () => {
  const xs = fc.uniqueArray(fc.integer({ min: 0, max: 300 }), { minLength: 4, maxLength: 12 });

  test('through points on a line is that line', () => {
    fc.assert(
      fc.property(xs, fc.integer({ min: -9, max: 9 }), (all, slope) => {
        const line = theilSen(
          all.toSorted((a, b) => a - b).map((x) => ({ x, y: 5 + slope * x })),
          0.8,
        );
        expect(line?.slope).toBeCloseTo(slope, 9);
      }),
      runs(60),
    );
  });

  test('does not follow one wild point of eight', () => {
    const eight = Array.from({ length: 8 }, (_, x) => ({ x, y: 2 * x }));
    const wild = eight.map((point, i) => (i === 6 ? { ...point, y: 500 } : point));
    expect(theilSen(wild, 0.8)?.slope).toBeCloseTo(2, 9);
  });

  test('turns with the points, and grows with their scale', () => {
    fc.assert(
      fc.property(xs, fc.infiniteStream(fc.integer({ min: 0, max: 50 })), (all, noise) => {
        const sorted = all.toSorted((a, b) => a - b);
        const cloud = sorted.map((x) => ({ x, y: Number(noise.next().value) }));
        const line = theilSen(cloud, 0.8);
        const turned = theilSen(
          cloud.map(({ x, y }) => ({ x, y: 3 * (y + 2 * x) })),
          0.8,
        );
        expect(turned?.slope).toBeCloseTo(3 * ((line?.slope ?? NaN) + 2), 6);
        expect(line?.low).toBeLessThanOrEqual(line?.slope ?? NaN);
        expect(line?.high).toBeGreaterThanOrEqual(line?.slope ?? NaN);
      }),
      runs(60),
    );
  });

  test('needs two points', () => {
    expect(theilSen(points([1, 2]), 0.8)).toBeUndefined();
  });
});
