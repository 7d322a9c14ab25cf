import { describe, expect, test } from 'vitest';
import { chanceFrom } from '../../../demo-data/random.ts';
import { normalCdf } from '../../../src/domain/core/normal.ts';
import { chancesReached } from '../../../src/domain/growth/first-reach.ts';
import { ahead, follow, type Followed } from '../../../src/domain/growth/follow.ts';
import type { Course } from '../../../src/domain/growth/prior.ts';
import { lengthened, stretch } from '../../../src/domain/growth/scale.ts';
import { normal } from '../windows/sampling.ts';

const course = (parts: Partial<Course> = {}): Course => ({
  power: 0,
  adult: Math.log(1_900),
  pace: 0.0023,
  strays: 0.006,
  weight: 1,
  ...parts,
});

const standing = (parts: Partial<Course>, massG: number, error: number): Followed => {
  const each = course(parts);
  const at = lengthened(massG, each.power);
  return {
    course: each,
    weight: 1,
    state: { at, variance: (error * stretch(at, each.power)) ** 2 },
  };
};

/** Walks the course day by day, many times: the share that has been at the target by each day. */
function walked({ course: each, state }: Followed, targetG: number, days: number, seed: number) {
  const chance = chanceFrom(seed);
  const RUNS = 4_000;
  const target = lengthened(targetG, each.power);
  const arrived = Array.from({ length: days + 1 }, () => 0);
  for (let run = 0; run < RUNS; run += 1) {
    let at = state.at + Math.sqrt(state.variance) * normal(chance);
    const perDay = each.strays * stretch(state.at, each.power);
    let day = 0;
    while (at < target && day < days) {
      at += each.pace * (each.adult - at) + perDay * normal(chance);
      day += 1;
    }
    if (at >= target) arrived[day] = (arrived[day] ?? 0) + 1;
  }
  let reached = 0;
  return arrived.map((count) => (reached += count) / RUNS);
}

/** A walk by whole days passes the target a little later than a steady one. */
function farthestOff(start: Followed, targetG: number): number {
  const reached = chancesReached([start], targetG, 700);
  const shares = walked(start, targetG, 700, 5);
  const off = [14, 60, 120, 250, 400, 700].map(
    (day) => (reached[day] ?? NaN) - (shares[day] ?? NaN),
  );
  return Math.max(...off.map(Math.abs));
}

describe('the chance of having been at a weight', () => {
  test.each([
    ['from 1,000 g', {}, 1_000, 0.02],
    ['close by', {}, 1_450, 0.03],
    ['straying far', { strays: 0.02 }, 900, 0.02],
    ['slowing early', { power: 0.5, adult: lengthened(1_900, 0.5), pace: 0.0015 }, 900, 0.02],
    ['slowing late', { power: -0.5, adult: lengthened(1_900, -0.5), pace: 0.004 }, 900, 0.02],
    ['that is its adult weight', { adult: Math.log(1_500) }, 1_200, 0.02],
  ])('of 1,500 g, %s, is that of walks day by day', (_name, parts, massG, error) => {
    expect(farthestOff(standing(parts, massG, error), 1_500)).toBeLessThan(0.06);
  });

  test('beyond the adult weight is that of such walks within a tenth', () => {
    // There the target bends most, and its chord lies nearest.
    const start = standing({ adult: Math.log(1_400) }, 1_200, 0.02);
    expect(farthestOff(start, 1_500)).toBeLessThan(0.1);
  });

  test('has one value a day, which never falls and is no more than 1', () => {
    const reached = chancesReached([standing({}, 1_000, 0.02)], 1_500, 500);
    expect(reached).toHaveLength(501);
    for (const [day, chance] of reached.entries()) {
      expect(chance).toBeGreaterThanOrEqual(reached[day - 1] ?? 0);
      expect(chance).toBeLessThanOrEqual(1);
    }
  });
});

test('a course closes in on the adult weight by the same share each day', () => {
  // By hand: half the way of log mass in ln 2/pace days.
  const { at, variance } = ahead(course(), { at: Math.log(475), variance: 0 }, Math.LN2 / 0.0023);
  expect(Math.exp(at)).toBeCloseTo(Math.sqrt(475 * 1_900), 6);
  // σ²(1 − ¼)/(2k).
  expect(variance).toBeCloseTo((0.006 ** 2 * 0.75) / (2 * 0.0023), 12);
});

test('courses are weighed by how well they foretold each weight', () => {
  // Two courses and three weights; the normal densities worked out one after the other, without a filter:
  // with no error of the scale, each weight is foretold from the one before alone.
  const slow = course({ pace: 0.001, weight: 0.5 });
  const fast = course({ pace: 0.004, weight: 0.5 });
  const marks = [
    { days: 0, massG: 500, error: 1e-9 },
    { days: 100, massG: 700, error: 1e-9 },
    { days: 250, massG: 900, error: 1e-9 },
  ];
  const density = ({ pace, adult, strays }: Course): number =>
    [
      [500, 700, 100],
      [700, 900, 150],
    ].reduce((product, [from = NaN, to = NaN, days = NaN]) => {
      const kept = Math.exp(-pace * days);
      const mean = adult + (Math.log(from) - adult) * kept;
      const variance = (strays ** 2 * (1 - kept ** 2)) / (2 * pace);
      return (
        product * (Math.exp(-((Math.log(to) - mean) ** 2) / (2 * variance)) / Math.sqrt(variance))
      );
    }, 1);
  const followed = follow([slow, fast], marks);
  const of = (each: Course) => followed.find((one) => one.course === each)?.weight ?? 0;
  expect(of(slow) / of(fast)).toBeCloseTo(density(slow) / density(fast), 6);
  expect(of(slow) + of(fast)).toBeCloseTo(1, 12);
});

test('the scale of power 0 is the one between its neighbours', () => {
  expect(lengthened(700, 1e-7)).toBeCloseTo(lengthened(700, 0), 4);
  // A thousandth of mass more moves it by a thousandth of the stretch.
  for (const power of [-0.5, 0, 0.5]) {
    const at = lengthened(700, power);
    expect((lengthened(700.7, power) - at) / stretch(at, power)).toBeCloseTo(0.001, 5);
  }
});

test.each([
  // Abramowitz & Stegun 1964, table 26.1.
  [0, 0.5],
  [1, 0.841344746],
  [-1.96, 0.024997895],
  [3, 0.998650102],
])('the normal at %f is %f', (z, chance) => {
  expect(normalCdf(z)).toBeCloseTo(chance, 6);
});
