import * as fc from 'fast-check';
import jstat from 'jstat';
import { expect, test } from 'vitest';
import { tQuantile } from '../../../src/domain/core/student-t.ts';
import { chanceFalling, fitLine, sizeOn, type Point } from '../../../src/domain/follicles/line.ts';

const DEGREES = 8;
const PRIOR = 5 / 7;
const NO_PRIOR = 1e6;

// Anscombe F.J. 1973, Graphs in statistical analysis, Am Stat 27:17–21, first set: y = 3.0001 + 0.5001 x.
test('with no prior the line is that of least squares', () => {
  const y = [8.04, 6.95, 7.58, 8.81, 8.33, 9.96, 7.24, 4.26, 10.84, 4.82, 5.68];
  const x = [10, 8, 13, 9, 11, 14, 6, 4, 12, 7, 5];
  const line = fitLine(
    x.map((days, i) => ({ days, mm: y[i]!, errorMm: 1 })),
    DEGREES,
    NO_PRIOR,
  );
  expect(line.slopeMm).toBeCloseTo(0.5001, 4);
  expect(sizeOn(line, 0).mm).toBeCloseTo(3.0001, 4);
});

const points: readonly Point[] = [
  { days: 0, mm: 11, errorMm: 1 },
  { days: 17, mm: 17.5, errorMm: 1.4 },
  { days: 40, mm: 19, errorMm: 5 },
  { days: 58, mm: 28, errorMm: 2.2 },
];

/**
 * The posterior by brute force: prior times likelihood on a grid of size on day 0, slope and squared
 * scale, with no algebra done beforehand. Returns the mean of a function of line.
 */
function byGrid(said: readonly Point[], of: (level: number, slope: number) => number): number {
  let [sum, total] = [0, 0];
  for (let i = 0; i < 60; i += 1) {
    const variance = Math.exp(-2.6 + (i / 59) * 5.6); // 0.07 to 20 of the assumed
    const ofVariance = -(DEGREES / 2) * Math.log(variance) - DEGREES / (2 * variance);
    for (let level = -9; level <= 29; level += 0.2) {
      for (let slope = -0.9; slope <= 1.5; slope += 0.012) {
        let squares = (slope / PRIOR) ** 2;
        for (const { days, mm, errorMm } of said) {
          squares += ((mm - level - slope * days) / errorMm) ** 2;
        }
        const log =
          ofVariance - ((said.length + 1) / 2) * Math.log(variance) - squares / (2 * variance);
        const weight = Math.exp(log + 20);
        sum += weight * of(level, slope);
        total += weight;
      }
    }
  }
  return sum / total;
}

test.each([
  ['two scans', points.slice(0, 2)],
  ['four scans, one of them poor', points],
])('the closed form is the posterior on a grid: %s', (_, said) => {
  const line = fitLine(said, DEGREES, PRIOR);
  expect(line.degrees).toBe(DEGREES + said.length - 1);
  expect(line.slopeMm).toBeCloseTo(
    byGrid(said, (_level, slope) => slope),
    3,
  );
  const wide = tQuantile(0.9, line.degrees);
  const high = line.slopeMm + wide * line.slopeScaleMm;
  expect(byGrid(said, (_level, slope) => Number(slope <= high))).toBeCloseTo(0.9, 2);
  expect(byGrid(said, (_level, slope) => Number(slope < 0.2))).toBeCloseTo(
    jstat.studentt.cdf((0.2 - line.slopeMm) / line.slopeScaleMm, line.degrees),
    2,
  );
  const later = sizeOn(line, 80);
  const low = later.mm - wide * later.scaleMm;
  expect(byGrid(said, (level, slope) => Number(level + 80 * slope <= low))).toBeCloseTo(0.1, 2);
});

test('the chance of falling is that of the statistics library', () => {
  for (const mm of [5, 14, 15.5, 40]) {
    const line = fitLine([points[0]!, points[1]!, { days: 40, mm, errorMm: 2 }], DEGREES, PRIOR);
    const t = -line.slopeMm / line.slopeScaleMm;
    expect(chanceFalling(line)).toBeCloseTo(jstat.studentt.cdf(t, line.degrees), 7);
  }
});

const aPoint = fc.record({
  days: fc.integer({ min: 0, max: 200 }),
  mm: fc.double({ min: 8, max: 50, noNaN: true }),
  errorMm: fc.double({ min: 0.5, max: 8, noNaN: true }),
});
const manyPoints = fc.array(aPoint, { minLength: 2, maxLength: 10 });

test('a size read twice as exactly (in variance) counts like two such readings', () => {
  fc.assert(
    fc.property(manyPoints, aPoint, (some, more) => {
      const twice = fitLine([...some, more, more], DEGREES, PRIOR);
      const once = fitLine(
        [...some, { ...more, errorMm: more.errorMm / Math.SQRT2 }],
        DEGREES,
        PRIOR,
      );
      expect(once.slopeMm).toBeCloseTo(twice.slopeMm, 8);
      expect(sizeOn(once, 100).mm).toBeCloseTo(sizeOn(twice, 100).mm, 6);
    }),
  );
});

test('counting the days from another night changes nothing but the count', () => {
  fc.assert(
    fc.property(manyPoints, fc.integer({ min: -500, max: 500 }), (some, offset) => {
      const line = fitLine(some, DEGREES, PRIOR);
      const moved = fitLine(
        some.map((each) => ({ ...each, days: each.days + offset })),
        DEGREES,
        PRIOR,
      );
      expect(moved.slopeMm).toBeCloseTo(line.slopeMm, 8);
      expect(moved.slopeScaleMm).toBeCloseTo(line.slopeScaleMm, 8);
      expect(sizeOn(moved, 60 + offset).mm).toBeCloseTo(sizeOn(line, 60).mm, 6);
      expect(sizeOn(moved, 60 + offset).scaleMm).toBeCloseTo(sizeOn(line, 60).scaleMm, 6);
    }),
  );
});

test('in centimetres it is the same line', () => {
  fc.assert(
    fc.property(manyPoints, (some) => {
      const line = fitLine(some, DEGREES, PRIOR);
      const tenth = some.map((each) => ({ ...each, mm: each.mm / 10, errorMm: each.errorMm / 10 }));
      const small = fitLine(tenth, DEGREES, PRIOR / 10);
      expect(10 * small.slopeMm).toBeCloseTo(line.slopeMm, 8);
      expect(10 * small.levelScaleMm).toBeCloseTo(line.levelScaleMm, 8);
      expect(chanceFalling(small)).toBeCloseTo(chanceFalling(line), 8);
    }),
  );
});

test('one scan more, on the line, makes growth and size better known', () => {
  fc.assert(
    fc.property(manyPoints, aPoint, (some, { days, errorMm }) => {
      const line = fitLine(some, DEGREES, PRIOR);
      const more = fitLine([...some, { days, errorMm, mm: sizeOn(line, days).mm }], DEGREES, PRIOR);
      expect(more.slopeMm).toBeCloseTo(line.slopeMm, 6);
      expect(more.slopeScaleMm).toBeLessThan(line.slopeScaleMm);
      expect(sizeOn(more, days).scaleMm).toBeLessThan(sizeOn(line, days).scaleMm);
    }),
  );
});
