import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { developmentRate, takenError } from '../../../src/domain/incubation/rate.ts';
import { runs } from '../../arbitrary.ts';

const daysAt = (tempC: number, at315 = 57): number => at315 / developmentRate(tempC);

describe('the pace of development', () => {
  test('is that of water pythons from 27.05 to 30.15 °C', () => {
    // Shine R. et al. 1997, Ecology 78:1713–1721: 80.00 and 67.97 days.
    expect(developmentRate(30.15) / developmentRate(27.05)).toBeCloseTo(80 / 67.97, 2);
  });

  test.each([
    [28, 67.8],
    [29.2, 63.7],
    [30, 61.2],
    [32, 55.7],
  ])('at %f °C is within a day of degree-days over 9.5 °C', (tempC, days) => {
    // The straight line through the same two points, anchored on 57 days at 31.5 °C.
    expect(((31.5 - 9.5) / (tempC - 9.5)) * 57).toBeCloseTo(days, 1);
    expect(Math.abs(daysAt(tempC) - days)).toBeLessThan(1);
  });

  test('at 29.2 °C lies within what was seen there', () => {
    // Ellis T.M. & Chappell M.A. 1987, J Comp Physiol B 157:393–402: 58–70 days.
    expect(daysAt(29.2)).toBeGreaterThan(58);
    expect(daysAt(29.2)).toBeLessThan(70);
  });

  test.each([
    [30, 60, 68],
    [31, 53, 62],
    [32, 53, 62],
  ])('at %f °C is what keepers count, %i to %i days', (tempC, least, most) => {
    // Common practice, no source.
    expect(daysAt(tempC)).toBeGreaterThan(least);
    expect(daysAt(tempC)).toBeLessThan(most);
  });

  test('is never reckoned faster than at 32 °C', () => {
    // King ratsnakes hardly gain from 30 to 32 °C (44.40 and 42.55 days, Ji & Du 2001), and of Ptyas
    // only 0.44 hatched at 33 °C, against 0.93 at 30 (Lin L.-H. et al. 2010, J Therm Biol 35:28–33).
    for (const tempC of [32.1, 33.5, 35, 40]) {
      expect(developmentRate(tempC)).toBe(developmentRate(32));
    }
  });

  test('slows sooner in the cold, as king ratsnakes do from 26 to 24 °C', () => {
    // Ji X. & Du W.-G. 2001, Comp Biochem Physiol A 129:461–471: 58.06 and 74.03 days.
    expect(developmentRate(26) / developmentRate(24)).toBeCloseTo(74.03 / 58.06, 2);
  });

  test('rises with warmth and never jumps', () => {
    const warmth = fc.double({ min: 15, max: 40, noNaN: true });
    fc.assert(
      fc.property(warmth, (tempC) => {
        const step = developmentRate(tempC + 0.01) - developmentRate(tempC);
        expect(step).toBeGreaterThanOrEqual(0);
        expect(step).toBeLessThan(0.002);
      }),
      runs(300),
    );
  });
});

test('what nobody read is the surer the more own clutches there are', () => {
  const errors = [0, 1, 3, 10].map((clutches) => takenError(0.3, clutches));
  expect(errors).toEqual(errors.toSorted((a, b) => b - a));
  // 0.3 °C, by the slope of the same curve at any temperature: ln 1.69 / 10 a degree.
  expect(errors[0]).toBeCloseTo(0.3 * 0.0525, 3);
});
