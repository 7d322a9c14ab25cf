import jstat from 'jstat';
import { expect, test } from 'vitest';
import { repeatScans } from '../../../demo-data/follicle-females.ts';
import { beyondErrorMm, errorMmOf, scanErrors } from '../../../src/domain/follicles/error.ts';
import { defaultProtocol } from '../../../src/domain/protocol/values.ts';
import { aScan } from './make-scan.ts';

const assumed = scanErrors([], defaultProtocol);

// 8 % in diameter: (1 + 0.259)^(1/3) = 1.080, from 25.9 % in volume [Gilman & Wolf 2007].
test('without repeat scans the error is the assumed one', () => {
  expect(Math.cbrt(1.259) - 1).toBeCloseTo(assumed.ultrasound.share, 3);
  expect(errorMmOf(30, assumed.ultrasound)).toBeCloseTo(2.4);
  expect(errorMmOf(6, assumed.ultrasound)).toBe(1);
  expect(errorMmOf(20, assumed.palpation)).toBe(5);
});

test('one pair of scans adds one degree, and moves the error a little', () => {
  const { ultrasound } = scanErrors([[aScan(0, 20), aScan(0, 22)]], defaultProtocol);
  // By hand: the pair's variance is 2 mm², the assumed one (0.08 × 21)² = 2.8224; (8 + 2/2.8224) / 9.
  expect(ultrasound.share).toBeCloseTo(0.08 * Math.sqrt((8 + 2 / 2.8224) / 9), 10);
  expect(ultrasound.degrees).toBe(9);
  expect(ultrasound.nights).toBe(1);
});

test('many repeat scans bring out the true error, larger or smaller', () => {
  for (const times of [0.5, 1.5]) {
    const { ultrasound } = scanErrors(repeatScans(3, 2_000, times), defaultProtocol);
    expect(ultrasound.share).toBeGreaterThan(0.95 * times * 0.08);
    expect(ultrasound.share).toBeLessThan(1.05 * times * 0.08);
    expect(ultrasound.leastMm).toBeCloseTo(ultrasound.share / 0.08, 10);
  }
});

test('other nights, other females, felt classes and scans that found none are no repeats', () => {
  const learnt = [
    [aScan(0, 10), aScan(1, 20)],
    [aScan(0, 30)],
    [aScan(0, 'none'), aScan(0, 12)],
    [aScan(0, 'round lumps'), aScan(0, 'large lumps')],
  ];
  expect(scanErrors(learnt, defaultProtocol)).toEqual(assumed);
});

// Normal, one-sided: 2 SD is exceeded by 0.0228, one in 44 [Abramowitz & Stegun 1964, table 26.1].
test('two sizes differ beyond error at twice the SD of their difference', () => {
  const sized = (mm: number) => ({ mm, errorMm: 0.08 * mm, error: assumed.ultrasound });
  expect(beyondErrorMm(sized(30), sized(20))).toBeCloseTo(2 * Math.hypot(2.4, 1.6), 10);
  expect(1 - jstat.normal.cdf(2, 0, 1)).toBeCloseTo(1 / 44, 3);
});
