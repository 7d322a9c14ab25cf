import fc from 'fast-check';
import jstat from 'jstat';
import { expect, test } from 'vitest';
import { wilsonInterval } from '../../../src/domain/core/wilson.ts';

// Newcombe R.G. 1998, Stat Med 17:857–872, table I, score method without continuity correction; from
// memory.
test.each([
  { hits: 81, of: 263, low: 0.2553, high: 0.3662 },
  { hits: 15, of: 148, low: 0.0624, high: 0.1605 },
  { hits: 0, of: 20, low: 0, high: 0.1611 },
  { hits: 1, of: 29, low: 0.0061, high: 0.1718 },
])('$hits of $of is between $low and $high, as published', ({ hits, of, low, high }) => {
  const interval = wilsonInterval(hits, of);
  expect(interval.low).toBeCloseTo(low, 4);
  expect(interval.high).toBeCloseTo(high, 4);
});

/** How many standard errors a counted share is from a true one: the score test. */
const score = (share: number, hits: number, of: number): number =>
  (hits / of - share) / Math.sqrt((share * (1 - share)) / of);

/** Where a function that changes sign between two places is zero, by halving. */
function rootOf(f: (x: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  for (let step = 0; step < 200; step += 1) {
    const middle = (low + high) / 2;
    if (f(low) > 0 === f(middle) > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

const counted = fc
  .integer({ min: 1, max: 400 })
  .chain((of) => fc.tuple(fc.integer({ min: 0, max: of }), fc.constant(of)));

test('its ends are the shares that a score test at 5 % just does not refuse', () => {
  fc.assert(
    fc.property(counted, ([hits, of]) => {
      const z = 1.959964; // 97.5 % of the standard normal: any table.
      const { low, high } = wilsonInterval(hits, of);
      const [tiny, share] = [1e-12, hits / of];
      const least = hits === 0 ? 0 : rootOf((x) => score(x, hits, of) - z, tiny, share - tiny);
      const most = hits === of ? 1 : rootOf((x) => score(x, hits, of) + z, share + tiny, 1 - tiny);
      expect(low).toBeCloseTo(least, 6);
      expect(high).toBeCloseTo(most, 6);
    }),
  );
});

test('by the normal distribution of a statistics library, 2.5 % lie beyond either end', () => {
  fc.assert(
    fc.property(counted, ([hits, of]) => {
      const { low, high } = wilsonInterval(hits, of);
      const below = (share: number) => jstat.normal.cdf(score(share, hits, of), 0, 1);
      // At none and at all of them, the end is the end of all shares.
      const ends = [hits === 0 ? 0.975 : below(low), hits === of ? 0.025 : below(high)];
      expect(ends[0]).toBeCloseTo(0.975, 6);
      expect(ends[1]).toBeCloseTo(0.025, 6);
    }),
  );
});

test('it holds the counted share, stays between 0 and 1, and narrows with more of the same', () => {
  fc.assert(
    fc.property(counted, ([hits, of]) => {
      const { low, high } = wilsonInterval(hits, of);
      expect(low).toBeGreaterThanOrEqual(0);
      expect(high).toBeLessThanOrEqual(1);
      expect(low).toBeLessThanOrEqual(hits / of);
      expect(high).toBeGreaterThanOrEqual(hits / of);
      const more = wilsonInterval(4 * hits, 4 * of);
      expect(more.high - more.low).toBeLessThan(high - low);
    }),
  );
});

test('nothing counted says nothing, and more hits than cases are refused', () => {
  expect(wilsonInterval(0, 0)).toEqual({ low: 0, high: 1 });
  expect(() => wilsonInterval(3, 2)).toThrow(RangeError);
  expect(() => wilsonInterval(-1, 2)).toThrow(RangeError);
});
