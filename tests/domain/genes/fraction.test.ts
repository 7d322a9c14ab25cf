import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  add,
  compare,
  fraction,
  minus,
  nearestFraction,
  ONE,
  over,
  power,
  times,
  toNumber,
  ZERO,
} from '../../../src/domain/genes/fraction.ts';
import { chanceIn, chanceWords } from '../../../src/domain/genes/trait-text.ts';

const any = fc
  .tuple(fc.bigInt({ min: -(10n ** 9n), max: 10n ** 9n }), fc.bigInt({ min: 1n, max: 10n ** 9n }))
  .map(([n, d]) => fraction(n, d));
const chance = fc
  .tuple(fc.integer({ min: 0, max: 700_000 }), fc.integer({ min: 1, max: 700_000 }))
  .map(([a, b]) => fraction(Math.min(a, b), Math.max(a, b)));

describe('fractions', () => {
  test('keep the laws of a field', () => {
    fc.assert(
      fc.property(any, any, any, (a, b, c) => {
        expect(add(a, b)).toEqual(add(b, a));
        expect(times(a, add(b, c))).toEqual(add(times(a, b), times(a, c)));
        expect(add(minus(a, b), b)).toEqual(a);
        const size = compare(b, ZERO) > 0 ? b : ONE;
        expect(times(over(a, size), size)).toEqual(a);
      }),
    );
  });

  test('are in lowest terms', () => {
    expect([fraction(6, 9), fraction(0, 5), fraction(-4, 2)]).toEqual([
      { n: 2n, d: 3n },
      { n: 0n, d: 1n },
      { n: -2n, d: 1n },
    ]);
  });

  test('become the nearest number, however long they are', () => {
    expect(toNumber(fraction(2, 3))).toBe(2 / 3);
    const long = power(fraction(2, 3), 500);
    expect(toNumber(long) / (2 / 3) ** 500).toBeCloseTo(1, 12);
    expect(toNumber(add(ONE, power(fraction(1, 3), 400)))).toBe(1);
    expect(toNumber(minus(ZERO, power(fraction(9, 7), 300))) / -((9 / 7) ** 300)).toBeCloseTo(
      1,
      12,
    );
  });

  test('come back from the floating point number they became', () => {
    // Denominators to 700,000 are further apart than 2e-12, so the simplest one near is the one.
    fc.assert(
      fc.property(chance, (value) => {
        expect(nearestFraction(toNumber(value))).toEqual(value);
      }),
    );
    expect(nearestFraction(0.3218543046357616)).toEqual(fraction(243, 755));
  });

  test('refuse what is none', () => {
    for (const wrong of [NaN, Infinity, -0.1, 1.1]) {
      expect(() => nearestFraction(wrong)).toThrow(RangeError);
    }
    expect(() => fraction(1, 0)).toThrow(RangeError);
    expect(() => fraction(0.5)).toThrow(RangeError);
    expect(() => over(ONE, ZERO)).toThrow(RangeError);
  });
});

test('a chance in words is read back as the same chance', () => {
  fc.assert(
    fc.property(chance, (value) => {
      fc.pre(value.n > 0n);
      expect(chanceIn(chanceWords(value) ?? '')).toEqual(value);
    }),
  );
  expect(chanceWords(fraction(133, 200))).toBe('133/200');
});
