import { expect, test } from 'vitest';
import { growing, resorbing } from '../../../demo-data/follicle-females.ts';
import {
  growthTrial,
  resorbingTrial,
  shareOf,
  suggested,
} from '../../../demo-data/follicle-trial.ts';

// Invented females with fixed seeds; e2e/bench/follicles.ts has the same with more of them.

const seeds = (count: number): readonly number[] => Array.from({ length: count }, (_, i) => i + 1);

test('of steadily growing females, under 2 in 100 are wrongly said to resorb in a season', () => {
  expect(shareOf(suggested(seeds(2_000).map((seed) => growing(seed))))).toBeLessThan(0.02);
});

test('of resorbing females, at least 4 in 5 are found within four weeks of the second fall', () => {
  const { inTime } = resorbingTrial(seeds(500).map((seed) => resorbing(seed)));
  expect(inTime.of).toBe(500);
  expect(shareOf(inTime)).toBeGreaterThanOrEqual(0.8);
});

test('four in five of the 80 % intervals hold the truth', () => {
  const { growth, size, ripe } = growthTrial(seeds(200).map((seed) => growing(seed)));
  for (const share of [growth, size, ripe]) {
    expect(share.of).toBeGreaterThan(400);
    expect(shareOf(share)).toBeGreaterThan(0.75);
    expect(shareOf(share)).toBeLessThan(0.87);
  }
}, 30_000);
