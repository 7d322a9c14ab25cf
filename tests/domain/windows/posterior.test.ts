import jstat from 'jstat';
import { describe, expect, test } from 'vitest';
import { chanceFrom } from '../../../demo-data/random.ts';
import { tCdf } from '../../../src/domain/core/student-t.ts';
import { learn, predictNext, type Prior } from '../../../src/domain/windows/posterior.ts';
import { chiSquared, normal, weighedQuantile } from './sampling.ts';

const prior: Prior = { mean: 3.4, variance: 0.01, degrees: 8, keepers: 1, groups: 0 };
const values = [3.35, 3.5, 3.46, 3.52, 3.49];
const exact = (group: string, ...means: readonly number[]) =>
  means.map((mean) => ({ group, mean, blur: 0 }));

describe('without groups', () => {
  // Normal–inverse-gamma as in Murphy K.P. 2007, Conjugate Bayesian analysis of the Gaussian
  // distribution, from memory: κn = κ0 + n, μn = (κ0 μ0 + n x̄) / κn, αn = α0 + n/2,
  // βn = β0 + ½ Σ(x − x̄)² + κ0 n (x̄ − μ0)² / 2κn, next: t with 2αn degrees at μn,
  // scale² = βn (κn + 1) / (αn κn).
  const n = values.length;
  const mean = values.reduce((a, b) => a + b, 0) / n;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  const kappa = 1 + n;
  const alpha = 4 + n / 2;
  const beta = 4 * 0.01 + squares / 2 + (n * (mean - 3.4) ** 2) / (2 * kappa);

  test('the next value is the textbook’s', () => {
    const next = predictNext(learn(prior, exact('a', ...values)));
    expect(next.location).toBeCloseTo((3.4 + n * mean) / kappa, 12);
    expect(next.scale ** 2).toBeCloseTo((beta * (kappa + 1)) / (alpha * kappa), 12);
    expect(next.degrees).toBe(2 * alpha);
  });

  test('it is the normal and the inverse gamma of jStat put together', () => {
    const next = predictNext(learn(prior, exact('a', ...values)));
    // P(x ≤ c) is the mean of a normal's over the posterior of the variance, here at its own
    // 2,000 quantiles.
    for (const c of [3.2, 3.4, 3.45, 3.6]) {
      let sum = 0;
      for (let q = 0.5; q < 2_000; q += 1) {
        const variance = beta / jstat.gamma.inv(1 - q / 2_000, alpha, 1);
        sum += jstat.normal.cdf(c, (3.4 + n * mean) / kappa, Math.sqrt(variance * (1 + 1 / kappa)));
      }
      expect(tCdf((c - next.location) / next.scale, next.degrees)).toBeCloseTo(sum / 2_000, 4);
    }
  });
});

describe('with females in groups', () => {
  const grouped: Prior = { ...prior, keepers: 4 / 3, groups: 1 / 3 };
  const seen = [...exact('a', 3.3, 3.28, 3.33, 3.31), ...exact('b', 3.5), ...exact('c', 3.6, 3.52)];

  const names = ['a', 'b', 'c', 'd'] as const; // Nobody knows anything of d.

  /** The same by drawing keepers and females from the prior and weighing each by what was seen. */
  const drawn = (() => {
    const chance = chanceFrom(11);
    return Array.from({ length: 100_000 }, () => {
      const variance = (8 * 0.01) / chiSquared(8, chance);
      const about = (mean: number, times: number) =>
        mean + Math.sqrt(variance * times) * normal(chance);
      const keeper = about(3.4, 4 / 3);
      const females = names.map(() => about(keeper, 1 / 3));
      let logWeight = -0.5 * seen.length * Math.log(variance);
      for (const { group, mean } of seen) {
        const off = mean - (females[names.findIndex((name) => name === group)] ?? NaN);
        logWeight -= (off * off) / (2 * variance);
      }
      return { next: females.map((mean) => about(mean, 1)), weight: Math.exp(logWeight) };
    });
  })();

  test.each(names)('the next value of female %s is that of brute force', (group) => {
    const { location, scale, degrees } = predictNext(learn(grouped, seen), group);
    const which = names.indexOf(group);
    const sample = drawn.map(({ next, weight }) => ({ value: next[which] ?? NaN, weight }));
    for (const share of [0.1, 0.5, 0.9]) {
      const t = (weighedQuantile(sample, share) - location) / scale;
      expect(Math.abs(tCdf(t, degrees) - share)).toBeLessThan(0.015);
    }
  });

  test('she lies between her own mean and the keeper’s, nearer her own with each cycle', () => {
    const others = exact('b', 3.6, 3.62, 3.58);
    const keeper = predictNext(learn(grouped, others)).location;
    const after = [1, 2, 4, 8].map(
      (n) =>
        predictNext(
          learn(grouped, [...others, ...exact('a', ...Array.from({ length: n }, () => 3.3))]),
          'a',
        ).location,
    );
    const path = [keeper, ...after, 3.3];
    expect(path).toEqual(path.toSorted((a, b) => b - a));
  });
});

test('what is not known exactly counts for less, down to nothing', () => {
  const widths = [0, 0.005, 0.02, 0.1, 1e6].map((blur) => {
    const seen = [3.6, 3.6, 3.6].map((mean) => ({ group: 'a', mean, blur }));
    return predictNext(learn(prior, seen));
  });
  const shifts = widths.map(({ location }) => location - prior.mean);
  expect(shifts).toEqual(shifts.toSorted((a, b) => b - a));
  expect(shifts.at(-1)).toBeCloseTo(0, 4);
  expect(widths.map(({ degrees }) => degrees)).toEqual([11, 10, 9, 8, 8]);
  const none = predictNext(learn(prior, []));
  expect(widths.at(-1)?.scale).toBeCloseTo(none.scale, 5);
});
