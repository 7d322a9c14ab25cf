import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ballPython } from '../../../src/domain/genes/catalogue/ball-python.ts';
import { clutchOdds } from '../../../src/domain/genes/clutch-odds.ts';
import {
  add,
  fraction,
  HALF,
  ONE,
  times,
  type Fraction,
} from '../../../src/domain/genes/fraction.ts';
import { howMany, inClutch, neededFor, type Needed } from '../../../src/domain/genes/in-clutch.ts';
import { targetCases, type TargetCase } from '../../../src/domain/genes/target-odds.ts';
import { animal, pair, short } from './pairs.ts';

// Binomial: 1 - (1 - p)^n, by hand or by exact fractions; the fractions stand in full.

/** Eggs of known parents, a share p of them wanted, half of either sex. */
const known = (p: Fraction): readonly TargetCase[] => [
  { weight: ONE, female: times(p, HALF), male: times(p, HALF) },
];
const visual = { wants: [{ locus: 'pied', look: 'Pied' }] };
const visuals = (dam: string, sire: string) =>
  targetCases(pair(dam, sire), visual, { of: 'hatchlings' });

const goals = [fraction(1, 2), fraction(9, 10), fraction(19, 20), fraction(99, 100)];
const numbers = (cases: readonly TargetCase[], hope: 'one' | 'one of each sex' = 'one') =>
  goals.map((goal) => nOf(neededFor(cases, goal, hope)));
const nOf = (needed: Needed) => (needed.reachable ? needed.n : `never over ${short(needed.limit)}`);

describe('at least one', () => {
  test.each([
    [4, 175 / 256],
    [6, 3367 / 4096],
    [8, 58975 / 65536],
  ])('het x het, %i hatchlings', (n, expected) => {
    const { atLeastOne, none, expected: mean } = inClutch(visuals('het Pied', 'het Pied'), n);
    expect(atLeastOne).toBeCloseTo(expected, 12);
    expect(none).toBeCloseTo(1 - expected, 12);
    expect(mean).toBeCloseTo(n / 4, 12);
  });

  test.each([
    [fraction(1, 8), 144495 / 262144],
    [fraction(1, 16), 5386591 / 16777216],
  ])('p = %o in six', (p, expected) => {
    expect(inClutch(known(p), 6).atLeastOne).toBeCloseTo(expected, 12);
  });

  test.each([
    [1, [0.5, 0.25, 0.125, 0.0625, 0.03125, 0.015625]],
    [2, [0.75, 0.4375, 0.234375, 0.121094, 0.061523, 0.031006]],
    [3, [0.875, 0.578125, 0.330078, 0.176025, 0.090851, 0.046146]],
    [4, [0.9375, 0.683594, 0.413818, 0.227524, 0.119262, 0.06105]],
    [5, [0.96875, 0.762695, 0.487091, 0.275804, 0.146785, 0.075721]],
    [6, [0.984375, 0.822021, 0.551205, 0.321066, 0.173448, 0.090163]],
    [7, [0.992188, 0.866516, 0.607304, 0.363499, 0.199278, 0.104379]],
    [8, [0.996094, 0.899887, 0.656391, 0.403281, 0.2243, 0.118374]],
    [9, [0.998047, 0.924915, 0.699342, 0.440575, 0.248541, 0.132149]],
    [10, [0.999023, 0.943686, 0.736924, 0.47554, 0.272024, 0.145709]],
    [12, [0.999756, 0.968324, 0.798583, 0.539048, 0.316811, 0.172197]],
  ])('in %i, for one in 2, 4, 8, 16, 32, 64', (n, expected) => {
    for (const [power, chance] of expected.entries()) {
      const p = fraction(1, 2 ** (power + 1));
      expect(inClutch(known(p), n).atLeastOne).toBeCloseTo(chance, 6);
    }
  });

  test('how many of six and eight', () => {
    const cases = visuals('het Pied', 'het Pied');
    const sixths = [729, 1458, 1215, 540, 135, 18, 1].map((n) => n / 4096);
    const eighths = [6561, 17496, 20412, 13608, 5670, 1512, 252, 24, 1].map((n) => n / 65536);
    for (const [n, expected] of [
      [6, sixths],
      [8, eighths],
    ] as const) {
      const all = howMany(cases, n);
      expect(all).toHaveLength(n + 1);
      for (const [k, chance] of all.entries()) expect(chance).toBeCloseTo(expected[k] ?? NaN, 12);
    }
  });
});

describe('eggs needed', () => {
  test.each([
    [fraction(1, 2), [1, 4, 5, 7]],
    [fraction(1, 3), [2, 6, 8, 12]],
    // 8 eggs give 0.899887, just below 90 %.
    [fraction(1, 4), [3, 9, 11, 17]],
    [fraction(1, 8), [6, 18, 23, 35]],
    [fraction(1, 16), [11, 36, 47, 72]],
    [fraction(1, 32), [22, 73, 95, 146]],
    // 146 give 0.899667, 147 0.901235; 190 give 0.949822, 191 0.950606.
    [fraction(1, 64), [45, 147, 191, 293]],
    [fraction(3, 16), [4, 12, 15, 23]],
    [fraction(1, 6), [4, 13, 17, 26]],
    [fraction(1, 9), [6, 20, 26, 40]],
  ])('p = %o for 50, 90, 95, 99 %%', (p, expected) => {
    expect(numbers(known(p))).toEqual(expected);
  });

  test('a goal met exactly is met', () => {
    expect(neededFor(known(fraction(9, 10)), fraction(9, 10), 'one')).toEqual({
      reachable: true,
      n: 1,
    });
    // 1 - (7/10)^3 = 657/1000
    expect(nOf(neededFor(known(fraction(3, 10)), fraction(657, 1000), 'one'))).toBe(3);
    expect(
      nOf(neededFor(known(fraction(3, 10)), fraction(657_000_001, 1_000_000_000), 'one')),
    ).toBe(4);
  });
});

describe('one of each sex: 1 - 2(1 - p/2)^n + (1 - p)^n', () => {
  const quarter = known(fraction(1, 4));
  test.each([
    [2, 1 / 32],
    [4, 295 / 2048],
    [6, 36751 / 131072],
    [8, 3463615 / 8388608],
  ])('in %i', (n, expected) => {
    expect(inClutch(quarter, n).oneOfEachSex).toBeCloseTo(expected, 12);
  });

  test('in ten and twelve', () => {
    expect(inClutch(quarter, 10).oneOfEachSex).toBeCloseTo(0.530162, 6);
    expect(inClutch(quarter, 12).oneOfEachSex).toBeCloseTo(0.628842, 6);
  });

  test('eggs needed', () => {
    expect(numbers(quarter, 'one of each sex')).toEqual([10, 23, 28, 40]);
  });

  test('is beyond a clutch that gives it to one sex', () => {
    const noCrossing = targetCases(
      pair('Normal', 'male maker Banana'),
      { sex: 'male', wants: [{ locus: 'banana', look: 'Banana' }] },
      { of: 'hatchlings' },
    );
    expect(numbers(noCrossing, 'one of each sex')).toEqual(goals.map(() => 'never over 0'));
  });
});

describe('an uncertain parent is one draw for the whole clutch', () => {
  test.each([
    // (2/3)(1 - (3/4)^6); pooled it would be 1 - (5/6)^6 = 0.665.
    ['66% het Pied', 'het Pied', 3367 / 6144],
    ['66% het Pied', '66% het Pied', 3367 / 9216],
    ['66% het Pied', 'Pied', 21 / 32],
  ])('%s x %s, six', (dam, sire, expected) => {
    expect(inClutch(visuals(dam, sire), 6).atLeastOne).toBeCloseTo(expected, 12);
  });

  test.each([
    [4, 5 / 8],
    [8, 85 / 128],
    [10, 341 / 512],
  ])('66%% het x visual, %i', (n, expected) => {
    expect(inClutch(visuals('66% het Pied', 'Pied'), n).atLeastOne).toBeCloseTo(expected, 12);
  });

  test('so 90 % may be out of reach, and it says why', () => {
    const cases = visuals('66% het Pied', 'Pied');
    expect(numbers(cases)).toEqual([2, ...goals.slice(1).map(() => 'never over 2/3')]);
    const ninety = neededFor(cases, fraction(9, 10), 'one');
    expect(ninety.reachable ? '' : ninety.because).toContain('2/3');
    // The limit itself is approached and never met.
    expect(nOf(neededFor(cases, fraction(2, 3), 'one'))).toBe('never over 2/3');
    expect(nOf(neededFor(visuals('50% het Pied', 'Pied'), HALF, 'one'))).toBe('never over 1/2');
    const hopeless = neededFor(visuals('Normal', 'Pied'), HALF, 'one');
    expect(hopeless.reachable ? '' : hopeless.because).toBe('These parents cannot give it.');
  });

  test('one unknown father of all differs from each egg its own', () => {
    const sires = ['Pied', 'Normal'].map((text) => ({ sire: animal(text, 'male'), weight: HALF }));
    const six = (fathers: 'one' | 'each egg its own') => {
      const odds = clutchOdds(animal('Pied', 'female'), sires, ballPython, { fathers });
      return inClutch(targetCases(odds, visual, { of: 'hatchlings' }), 6).atLeastOne;
    };
    expect(six('one')).toBeCloseTo(1 / 2, 12);
    expect(six('each egg its own')).toBeCloseTo(63 / 64, 12);
  });

  test('what earlier young say of both parents at once is kept', () => {
    // Two possible hets after n normal young, Bayes by hand: both het 3/8 and 9/29; the next egg is
    // visual with a quarter of that, and not with the product of the parents' own chances.
    const next = (weights: readonly (readonly [number, number, number])[], of: number) => {
      const both = weights.map(([parts, dam, sire]) => ({
        chance: fraction(parts, of),
        dam,
        sire,
      }));
      const odds = clutchOdds(new Map(), [{ sire: new Map(), weight: ONE }], ballPython, {
        together: new Map([['pied', both]]),
      });
      const [first, ...rest] = targetCases(odds, visual, { of: 'hatchlings' });
      return inClutch([...(first ? [first] : []), ...rest], 1).atLeastOne;
    };
    expect(
      next(
        [
          [3, 1, 1],
          [2, 1, 0],
          [2, 0, 1],
          [1, 0, 0],
        ],
        8,
      ),
    ).toBeCloseTo(3 / 32, 12);
    expect(
      next(
        [
          [9, 1, 1],
          [8, 1, 0],
          [8, 0, 1],
          [4, 0, 0],
        ],
        29,
      ),
    ).toBeCloseTo(9 / 116, 12);
  });
});

describe('eggs and hatchlings', () => {
  test('a hatch rate scales the chance of an egg: 1 - (31/40)^6', () => {
    const cases = targetCases(pair('het Pied', 'het Pied'), visual, {
      of: 'eggs',
      hatchRate: fraction(9, 10),
    });
    expect(inClutch(cases, 6).atLeastOne).toBeCloseTo(3208496319 / 4096000000, 12);
  });

  test('lethal eggs count among eggs and not among hatchlings', () => {
    const odds = pair('Spider', 'Spider');
    const normal = { wants: [{ locus: 'spider', look: '' }] };
    const egg = targetCases(odds, normal, { of: 'eggs', hatchRate: ONE });
    const hatchling = targetCases(odds, normal, { of: 'hatchlings' });
    expect([inClutch(egg, 1).expected, inClutch(hatchling, 1).expected]).toEqual([1 / 4, 1 / 3]);
  });

  test('a sex halves it', () => {
    const odds = pair('het Pied', 'het Pied');
    const cases = targetCases(odds, { ...visual, sex: 'female' }, { of: 'hatchlings' });
    expect(inClutch(cases, 1).atLeastOne).toBeCloseTo(1 / 8, 12);
  });
});

test('chances of small targets keep their last digits', () => {
  // 2^-60 in one egg: 1 - (1 - p) would be nothing in floating point.
  const p = fraction(1n, 2n ** 60n);
  expect(inClutch(known(p), 1).atLeastOne / 2 ** -60).toBeCloseTo(1, 12);
  expect(inClutch(known(p), 1_000).atLeastOne / 2 ** -60).toBeCloseTo(1_000, 9);
});

test('the number needed is the first that is enough, worked out with whole numbers', () => {
  // (d - a)^n against d^n, by bigints and without logarithms.
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 40 }),
      fc.integer({ min: 1, max: 40 }),
      fc.integer({ min: 1, max: 99 }),
      (a, more, percent) => {
        const d = a + more;
        const needed = neededFor(known(fraction(a, d)), fraction(percent, 100), 'one');
        if (!needed.reachable) throw new Error('reachable');
        const enough = (n: number) =>
          100n * BigInt(d - a) ** BigInt(n) <= BigInt(100 - percent) * BigInt(d) ** BigInt(n);
        expect([enough(needed.n), enough(needed.n - 1)]).toEqual([true, false]);
      },
    ),
  );
});

test('a clutch of no whole number is refused', () => {
  const cases = known(add(HALF, fraction(1, 4)));
  for (const n of [-1, 1.5, NaN, Infinity]) {
    expect(() => inClutch(cases, n)).toThrow(RangeError);
    expect(() => howMany(cases, n)).toThrow(RangeError);
  }
});
