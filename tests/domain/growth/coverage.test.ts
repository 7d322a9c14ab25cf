import { expect, test } from 'vitest';
import { grower } from '../../../demo-data/growers.ts';
import { growthTrial } from '../../../demo-data/growth-trial.ts';

// Invented growers with fixed seeds; e2e/bench/growth.ts has the same with more of them.

const seeds = Array.from({ length: 1_000 }, (_, i) => i + 1);
const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

test('80 % windows hold about four in five, of growers that grow otherwise than assumed', () => {
  const asked = growthTrial(seeds, 'von Bertalanffy');
  const held = asked.flatMap(({ isHeld }) => (isHeld === undefined ? [] : [Number(isHeld)]));
  expect(held.length).toBeGreaterThan(500);
  expect(mean(held)).toBeGreaterThanOrEqual(0.75);
  expect(mean(held)).toBeLessThanOrEqual(0.87);
  // And as many get there in time as is said, give or take one in ten.
  const told = asked.filter(({ chanceWithin }) => chanceWithin !== undefined);
  const said = mean(told.map(({ chanceWithin = NaN }) => chanceWithin));
  expect(Math.abs(said - mean(told.map(({ gotThere }) => Number(gotThere))))).toBeLessThan(0.1);
}, 60_000);

test('the invented growers weigh what growers do', () => {
  // 200–1,000 g at a year and 500–2,000 g at two, females [common practice, no source].
  const females = seeds
    .slice(0, 100)
    .map((seed) => grower(seed, 'von Bertalanffy'))
    .filter(({ sex }) => sex === 'female');
  const within = (day: number, low: number, high: number) =>
    mean(females.map(({ massG }) => Number((massG[day] ?? 0) >= low && (massG[day] ?? 0) <= high)));
  expect(within(365, 200, 1_000)).toBeGreaterThan(0.9);
  expect(within(730, 500, 2_000)).toBeGreaterThan(0.8);
});
