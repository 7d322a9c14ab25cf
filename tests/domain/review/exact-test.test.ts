import fc from 'fast-check';
import jstat from 'jstat';
import { expect, test } from 'vitest';
import { exactTest } from '../../../src/domain/review/exact-test.ts';

const sure = (...shares: readonly number[]) => [{ weight: 1, shares }];

test('682 of 925 against three quarters is 0.38, as in the manual of R', () => {
  // Conover W.J. 1971, Practical Nonparametric Statistics, p. 97, after the manual of R's binom.test:
  // p = 0.3825; from memory.
  expect(exactTest([682, 243], sure(0.75, 0.25))).toBeCloseTo(0.3825, 4);
});

test('eight of eight against a half are 2 of 256', () => {
  expect(exactTest([8, 0], sure(0.5, 0.5))).toBeCloseTo(2 / 256, 12);
});

/** Every way each young may turn out, one after the other, with its chance and what it comes to. */
function everyBrood(of: number, shares: readonly number[]) {
  let broods = [{ chance: 1, counts: shares.map(() => 0) }];
  for (let young = 0; young < of; young += 1) {
    broods = broods.flatMap(({ chance, counts }) =>
      shares.map((share, kind) => ({
        chance: chance * share,
        counts: counts.map((count, n) => (n === kind ? count + 1 : count)),
      })),
    );
  }
  return broods;
}

/** The same test by going through every brood there can be. */
function byEnumeration(
  seen: readonly number[],
  odds: readonly { weight: number; shares: readonly number[] }[],
): number {
  const of = seen.reduce((a, b) => a + b, 0);
  const chances = new Map<string, number>();
  for (const { weight, shares } of odds) {
    for (const { chance, counts } of everyBrood(of, shares)) {
      const key = counts.join(' ');
      chances.set(key, (chances.get(key) ?? 0) + weight * chance);
    }
  }
  const own = chances.get(seen.join(' ')) ?? 0;
  return [...chances.values()]
    .filter((each) => each <= own * (1 + 1e-7))
    .reduce((a, b) => a + b, 0);
}

const share = fc.integer({ min: 0, max: 8 });
const anyShares = (kinds: number) =>
  fc
    .array(share, { minLength: kinds, maxLength: kinds })
    .filter((parts) => parts.some((part) => part > 0))
    .map((parts) => {
      const all = parts.reduce((a, b) => a + b, 0);
      return parts.map((part) => part / all);
    });

const anyCase = fc.integer({ min: 2, max: 3 }).chain((kinds) =>
  fc.record({
    counts: fc
      .array(fc.integer({ min: 0, max: 3 }), { minLength: kinds, maxLength: kinds })
      .filter((counts) => counts.some((count) => count > 0)),
    odds: fc
      .tuple(anyShares(kinds), anyShares(kinds), fc.integer({ min: 1, max: 9 }))
      .map(([a, b, tenths]) => [
        { weight: tenths / 10, shares: a },
        { weight: 1 - tenths / 10, shares: b },
      ]),
  }),
);

test('it is what going through every brood gives, for certain and uncertain parents', () => {
  fc.assert(
    fc.property(anyCase, ({ counts, odds }) => {
      expect(exactTest(counts, odds)).toBeCloseTo(byEnumeration(counts, odds), 9);
    }),
    { numRuns: 60 },
  );
});

test('with two looks it is the sum of the binomial chances that are no larger', () => {
  fc.assert(
    fc.property(
      fc
        .integer({ min: 1, max: 60 })
        .chain((n) => fc.tuple(fc.constant(n), fc.integer({ min: 0, max: n }))),
      fc.integer({ min: 1, max: 15 }),
      ([n, hits], sixteenths) => {
        const p = sixteenths / 16;
        const chance = (k: number) => jstat.binomial.pdf(k, n, p);
        const own = chance(hits) * (1 + 1e-7);
        const oracle = Array.from({ length: n + 1 }, (_, k) => chance(k)).filter(
          (each) => each <= own,
        );
        expect(exactTest([hits, n - hits], sure(p, 1 - p))).toBeCloseTo(
          oracle.reduce((a, b) => a + b, 0),
          8,
        );
      },
    ),
  );
});

test('what cannot be has no chance, and the likeliest outcome is no surprise', () => {
  expect(exactTest([7, 1], sure(1, 0))).toBe(0);
  expect(exactTest([2, 4, 2], sure(0.25, 0.5, 0.25))).toBeCloseTo(1, 12);
});
