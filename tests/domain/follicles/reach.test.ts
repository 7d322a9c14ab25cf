import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { normal } from '../../../demo-data/follicle-females.ts';
import { chanceFrom } from '../../../demo-data/random.ts';
import { fitLine, type Line } from '../../../src/domain/follicles/line.ts';
import { chancesReached } from '../../../src/domain/follicles/reach.ts';

const DAYS = 150;
const DRAWS = 40_000;

const through = (gap: number, ...sizes: readonly number[]): Line =>
  fitLine(
    sizes.map((mm, i) => ({ days: i * gap, mm, errorMm: Math.max(1, 0.08 * mm) })),
    8,
    5 / 7,
  );

/** Draws whole lines (a normal over the root of a chi-squared) and walks each to the size. */
function bySampling(line: Line, mm: number, from: number): readonly number[] {
  const chance = chanceFrom(11);
  const days = Array.from({ length: DAYS + 1 }, () => 0);
  for (let draw = 0; draw < DRAWS; draw += 1) {
    let squares = 0;
    for (let k = 0; k < line.degrees; k += 1) squares += normal(chance) ** 2;
    const stretch = 1 / Math.sqrt(squares / line.degrees);
    const level = line.levelMm + line.levelScaleMm * stretch * normal(chance);
    const slope = line.slopeMm + line.slopeScaleMm * stretch * normal(chance);
    const sizeAt = (day: number): number => level + slope * (from + day - line.meanDays);
    let day = 0;
    while (day <= DAYS && sizeAt(day) < mm) day += 1;
    if (day <= DAYS) days[day]! += 1;
  }
  let sum = 0;
  return days.map((count) => (sum += count) / DRAWS);
}

test.each([
  ['two scans, fast', through(14, 12, 18), 14],
  ['three scans, slow', through(21, 12, 15, 19), 42],
  ['five scans, soon there', through(18, 12, 17, 21, 27, 32), 72],
  ['falling, from above', through(20, 38, 34, 31), 40],
  ['flat', through(25, 18, 18, 19, 18), 75],
])('the days are those of sampled lines: %s', (_, line, from) => {
  const exact = chancesReached(line, 35, from, DAYS);
  const sampled = bySampling(line, 35, from);
  // Four standard errors of the sampling, 4 × √(¼ / 40,000), and what equally likely slopes cost.
  for (const [day, chance] of exact.entries()) {
    expect(Math.abs(chance - sampled[day]!)).toBeLessThan(0.01 + 0.005);
  }
});

const aLine = fc
  .tuple(
    fc.integer({ min: 10, max: 30 }),
    fc.array(fc.double({ min: 10, max: 40, noNaN: true }), { minLength: 2, maxLength: 7 }),
  )
  .map(([gap, sizes]) => through(gap, ...sizes));

test('chances rise from day to day, stay from 0 to 1, and are smaller for a larger size', () => {
  fc.assert(
    fc.property(aLine, fc.integer({ min: 12, max: 50 }), (line, mm) => {
      const reached = chancesReached(line, mm, 90, 60);
      const larger = chancesReached(line, mm + 2, 90, 60);
      for (const [day, chance] of reached.entries()) {
        expect(chance).toBeGreaterThanOrEqual(day > 0 ? reached[day - 1]! - 1e-12 : -1e-12);
        expect(chance).toBeLessThanOrEqual(1);
        expect(larger[day]).toBeLessThanOrEqual(chance + 1e-12);
      }
    }),
    { numRuns: 40 },
  );
});
