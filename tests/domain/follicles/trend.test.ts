import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { dayOf, nightOf } from '../../../demo-data/follicle-females.ts';
import { follicleTrend, type Trend } from '../../../src/domain/follicles/trend.ts';
import { defaultProtocol } from '../../../src/domain/protocol/values.ts';
import { window } from '../../../src/domain/windows/day-chances.ts';
import { readings, type Found } from './make-scan.ts';

const trendOf = (...scans: readonly (readonly [number, Found])[]): Trend | undefined =>
  follicleTrend(readings(...scans), defaultProtocol);

const daysUsed = (trend: Trend | undefined): readonly number[] | undefined =>
  trend?.readings.map(({ night }) => dayOf(night));

test('one scan is not a trend, nor are two of the same night, nor a size and nothing', () => {
  expect(trendOf()).toBeUndefined();
  expect(trendOf([0, 15])).toBeUndefined();
  expect(trendOf([0, 15], [0, 16])).toBeUndefined();
  expect(trendOf([0, 15], [0, 'round lumps'])).toBeUndefined();
  expect(trendOf([0, 15], [20, 'nothing'])).toBeUndefined();
  expect(trendOf([0, 'none'], [20, 15])).toBeUndefined();
});

test('a size and nothing found do not make steep growth', () => {
  const plain = trendOf([30, 14], [50, 20]);
  const nothingFirst = trendOf([0, 'none'], [15, 'nothing'], [30, 14], [50, 20]);
  expect(nothingFirst?.mmPerWeek).toBe(plain?.mmPerWeek);
});

test('resting scans before the growth are left out', () => {
  const trend = trendOf([0, 6], [28, 7], [56, 13], [77, 20], [98, 27]);
  expect(daysUsed(trend)).toEqual([56, 77, 98]);
  // 14 mm in 6 weeks; the weak prior takes off a little.
  expect(trend?.mmPerWeek).toBeGreaterThan(2.2);
  expect(trend?.mmPerWeek).toBeLessThan(14 / 6);
});

test('fingers that feel nothing between two ultrasound sizes end no growth', () => {
  expect(daysUsed(trendOf([0, 12], [10, 'nothing'], [20, 18], [40, 24]))).toEqual([0, 20, 40]);
});

test('a fall beyond error begins a new line at the largest size; one within error does not', () => {
  expect(daysUsed(trendOf([0, 14], [20, 20], [40, 27], [60, 17]))).toEqual([40, 60]);
  expect(daysUsed(trendOf([0, 14], [20, 20], [40, 27], [60, 24]))).toEqual([0, 20, 40, 60]);
});

test('growth after a fall is a line of its own', () => {
  const trend = trendOf([0, 28], [20, 20], [40, 12], [60, 18], [80, 25]);
  expect(daysUsed(trend)).toEqual([40, 60, 80]);
  expect(trend?.chanceShrinking).toBeLessThan(0.01);
});

test('while she rests there is no trend, even after a season', () => {
  expect(trendOf([0, 28], [20, 20], [40, 12], [60, 7])).toBeUndefined();
});

test('scans far apart and rising leave no doubt of growth; equal ones leave all of it', () => {
  expect(trendOf([0, 12], [30, 24], [60, 36])?.chanceShrinking).toBeLessThan(0.001);
  expect(trendOf([0, 20], [30, 20])?.chanceShrinking).toBeCloseTo(0.5, 10);
});

test('felt classes alone say little, and say so', () => {
  const felt = trendOf([0, 'small bumps'], [20, 'round lumps']);
  const seen = trendOf([0, 12], [20, 20]);
  if (!felt || !seen) throw new Error('Two scans are a trend.');
  expect(felt.high - felt.low).toBeGreaterThan(2 * (seen.high - seen.low));
  expect(felt.reaches(35, nightOf(20))).toBeUndefined();
});

test('a size is not said where she may never get there, and not for a shrinking one', () => {
  expect(trendOf([0, 18], [25, 18.5], [50, 19])?.reaches(35, nightOf(50))).toBeUndefined();
  expect(trendOf([0, 30], [25, 24], [50, 17])?.reaches(35, nightOf(50))).toBeUndefined();
});

test('a size she is at already falls on the night asked about', () => {
  const when = trendOf([0, 14], [25, 22], [50, 30])?.reaches(20, nightOf(50));
  expect(when?.from).toBe(nightOf(50));
  expect(when?.chances[0]).toBeGreaterThan(0.99);
});

test('no size is below nothing', () => {
  const later = trendOf([0, 30], [25, 22], [50, 15])?.on(nightOf(200));
  expect(later).toEqual({ mm: 0, low: 0, high: expect.any(Number) as number });
});

const growth = fc
  .tuple(
    fc.array(fc.integer({ min: 14, max: 28 }), { minLength: 1, maxLength: 5 }),
    fc.double({ min: 0.25, max: 0.6, noNaN: true }),
    fc.array(fc.double({ min: -1.5, max: 1.5, noNaN: true }), { minLength: 6, maxLength: 6 }),
  )
  .map(([gaps, rate, errors]) => {
    let day = 0;
    const days = [0, ...gaps.map((gap) => (day += gap))];
    return days.map((each, i) => [each, 13 + rate * each + errors[i]!] as const);
  })
  .filter((scans) => scans.every(([, mm]) => mm > 10 && mm < 60));

test('chances of days add up to 1, and a larger size has no earlier window', () => {
  fc.assert(
    fc.property(growth, fc.integer({ min: 20, max: 40 }), (scans, mm) => {
      const trend = trendOf(...scans);
      const last = nightOf(scans.at(-1)![0]);
      const smaller = trend?.reaches(mm, last);
      const larger = trend?.reaches(mm + 4, last);
      if (!smaller || !larger) return;
      expect(smaller.chances.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 9);
      expect(Math.min(...smaller.chances)).toBeGreaterThanOrEqual(0);
      expect(window(larger).from >= window(smaller).from).toBe(true);
      expect(window(larger).to >= window(smaller).to).toBe(true);
    }),
    { numRuns: 40 },
  );
});

test('the same scans on other nights, or in another order, are the same trend', () => {
  fc.assert(
    fc.property(growth, fc.integer({ min: 1, max: 300 }), (scans, later) => {
      const trend = trendOf(...scans);
      const moved = trendOf(...scans.map(([day, mm]) => [day + later, mm] as const).toReversed());
      expect(moved?.mmPerWeek).toBeCloseTo(trend?.mmPerWeek ?? NaN, 9);
      expect(moved?.chanceShrinking).toBeCloseTo(trend?.chanceShrinking ?? NaN, 9);
      const [was, is] = [trend?.on(nightOf(100)), moved?.on(nightOf(100 + later))];
      expect(is?.low).toBeCloseTo(was?.low ?? NaN, 7);
    }),
    { numRuns: 40 },
  );
});
