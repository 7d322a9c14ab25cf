import jstat from 'jstat';
import { expect, test } from 'vitest';
import { tCdf, tQuantile } from '../../../src/domain/core/student-t.ts';

// Percentage points of the t distribution: Abramowitz M. & Stegun I.A. 1964, table 26.10
// (one-sided 0.90, 0.95, 0.975, 0.995).
test.each([
  [1, 3.078, 6.314, 12.706, 63.657],
  [2, 1.886, 2.92, 4.303, 9.925],
  [8, 1.397, 1.86, 2.306, 3.355],
  [9, 1.383, 1.833, 2.262, 3.25],
  [18, 1.33, 1.734, 2.101, 2.878],
  [30, 1.31, 1.697, 2.042, 2.75],
])(
  'with %i degrees of freedom, the quantiles are those of the printed table',
  (degrees, ...row) => {
    const found = [0.9, 0.95, 0.975, 0.995].map((p) => tQuantile(p, degrees));
    for (const [i, value] of row.entries()) expect(found[i]).toBeCloseTo(value, 3);
  },
);

test('the distribution is that of a statistics library, jStat, as far as that is exact', () => {
  for (let degrees = 1; degrees <= 60; degrees += 1) {
    for (let t = -8; t <= 8; t += 0.37) {
      expect(tCdf(t, degrees)).toBeCloseTo(jstat.studentt.cdf(t, degrees), 7);
    }
  }
});

test('a quantile is where the distribution reaches its chance, on both sides', () => {
  for (const degrees of [1, 3, 8, 25]) {
    for (const p of [0.001, 0.1, 0.5, 0.77, 0.999]) {
      expect(tCdf(tQuantile(p, degrees), degrees)).toBeCloseTo(p, 11);
    }
  }
});

test('degrees that are no whole number are refused', () => {
  expect(() => tCdf(1, 2.5)).toThrow(RangeError);
  expect(() => tCdf(1, 0)).toThrow(RangeError);
});
