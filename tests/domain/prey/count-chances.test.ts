import fc from 'fast-check';
import jstat from 'jstat';
import { describe, expect, test } from 'vitest';
import {
  acceptanceOf,
  chanceEats,
  eatenOf,
  usualAcceptance,
  type AppetiteClass,
} from '../../../src/domain/prey/acceptance.ts';
import {
  enoughWith,
  expectedCount,
  sumOfCounts,
  timesPieces,
} from '../../../src/domain/prey/count-chances.ts';
import { defaultProtocol } from '../../../src/domain/protocol/values.ts';
import { runs } from '../../arbitrary.ts';

const single = (p: number): readonly number[] => [1 - p, p];
const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);
const chance = fc.double({ min: 0, max: 1, noNaN: true });

/** Every way in which each eats or not, one after the other. */
function enumerated(chances: readonly number[]): readonly number[] {
  const counts = Array.from({ length: chances.length + 1 }, () => 0);
  for (let way = 0; way < 2 ** chances.length; way += 1) {
    const eats = chances.map((_, i) => Math.floor(way / 2 ** i) % 2 === 1);
    const product = chances.reduce((all, p, i) => all * (eats[i] === true ? p : 1 - p), 1);
    const n = eats.filter(Boolean).length;
    counts[n] = (counts[n] ?? 0) + product;
  }
  return counts;
}

describe('how many of several eat', () => {
  test('is what counting every way gives', () => {
    fc.assert(
      fc.property(fc.array(chance, { maxLength: 9 }), (chances) => {
        const exact = sumOfCounts(chances.map(single));
        for (const [n, expected] of enumerated(chances).entries()) {
          expect(exact[n]).toBeCloseTo(expected, 12);
        }
      }),
      runs(60),
    );
  });

  test.each([
    [7, 0.3],
    [40, 0.85],
    [500, 0.62],
  ])('is the binomial where all %i have the same chance %f', (animals, p) => {
    const exact = sumOfCounts(Array.from({ length: animals }, () => single(p)));
    for (const [n, value] of exact.entries()) {
      expect(value).toBeCloseTo(jstat.binomial.pdf(n, animals, p), 9);
    }
  });

  test('of 500 that all differ, has the mean and variance of the sum', () => {
    const chances = Array.from({ length: 500 }, (_, i) => (i + 0.5) / 500);
    const exact = sumOfCounts(chances.map(single));
    const mean = expectedCount(exact);
    expect(sum(exact)).toBeCloseTo(1, 10);
    expect(mean).toBeCloseTo(sum(chances), 8);
    const variance = exact.reduce((all, p, n) => all + p * (n - mean) ** 2, 0);
    expect(variance).toBeCloseTo(sum(chances.map((p) => p * (1 - p))), 8);
  });

  test('in meals of two pieces, is even', () => {
    expect(timesPieces([0.25, 0.5, 0.25], 2)).toEqual([0.25, 0, 0.5, 0, 0.25]);
  });

  test('is enough with the chance asked for, and one less is not', () => {
    fc.assert(
      fc.property(fc.array(chance, { minLength: 1, maxLength: 30 }), (chances) => {
        const exact = sumOfCounts(chances.map(single));
        const enough = enoughWith(0.9, exact);
        expect(sum(exact.slice(0, enough + 1))).toBeGreaterThanOrEqual(0.9 - 1e-8);
        expect(sum(exact.slice(0, enough))).toBeLessThan(0.9 + 1e-8);
      }),
      runs(60),
    );
  });
});

describe('how often one eats', () => {
  const kinds = Object.keys(usualAcceptance) as AppetiteClass[];

  test.each(kinds)('is the usual share of a %s before any offer', (kind) => {
    expect(chanceEats(acceptanceOf(kind, [], defaultProtocol))).toBeCloseTo(
      usualAcceptance[kind],
      12,
    );
  });

  test('is the mean of a beta that each offer adds one to', () => {
    // By hand: 0.85 of 4 offers, and three of five of its own: (3.4 + 3)/(4 + 5).
    const own = ['ate', 'refused', 'left', 'partly', 'refused', 'ate'] as const;
    expect(chanceEats(acceptanceOf('female', own, defaultProtocol))).toBeCloseTo(6.4 / 9, 12);
  });

  test('of many of its own offers, is its own share', () => {
    const own = Array.from({ length: 400 }, (_, i) =>
      i % 4 === 0 ? ('ate' as const) : ('refused' as const),
    );
    expect(chanceEats(acceptanceOf('grower', own, defaultProtocol))).toBeCloseTo(0.25, 1);
  });
});

describe('how many of several offers one eats', () => {
  test('is the beta binomial', () => {
    // By the formula: C(n, k) B(k + a, n − k + b)/B(a, b), with the beta function of another library.
    fc.assert(
      fc.property(
        fc.double({ min: 0.2, max: 9, noNaN: true }),
        fc.double({ min: 0.2, max: 9, noNaN: true }),
        fc.integer({ min: 1, max: 12 }),
        (eaten, refused, offers) => {
          const exact = eatenOf(offers, { eaten, refused });
          for (const [k, value] of exact.entries()) {
            const expected =
              (jstat.combination(offers, k) * jstat.betafn(k + eaten, offers - k + refused)) /
              jstat.betafn(eaten, refused);
            expect(value).toBeCloseTo(expected, 7);
          }
        },
      ),
      runs(60),
    );
  });

  test('is nearly the binomial where its appetite is well known', () => {
    const exact = eatenOf(8, { eaten: 5_000, refused: 5_000 });
    for (const [n, value] of exact.entries()) {
      expect(value).toBeCloseTo(jstat.binomial.pdf(n, 8, 0.5), 3);
    }
  });
});
