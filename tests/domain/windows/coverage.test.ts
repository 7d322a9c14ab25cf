import { describe, expect, test } from 'vitest';
import { rankedScore, runTrial, type Trial } from '../../../demo-data/window-trial.ts';
import { defaultProtocol } from '../../../src/domain/protocol/values.ts';
import type { LinkName } from '../../../src/domain/windows/link.ts';

// Invented keepers who differ as assumed, whose cycles come from a gamma distribution, which is not
// assumed. The benchmark runs the same with more of them.

const trial = (links: readonly LinkName[], ownCycles: number, more: Partial<Trial> = {}) =>
  runTrial({
    protocol: defaultProtocol,
    keepers: 500,
    seed: 3,
    links,
    ownCycles,
    femaleShare: defaultProtocol.windowFemaleShare,
    lookDays: 1,
    ...more,
  });

const mean = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;

describe.each([
  ['the shed', ['shed to lay']],
  ['the ovulation', ['ovulation to shed', 'shed to lay']],
] as const)('windows for the eggs, from %s', (_from, links) => {
  const after = [0, 3, 10].map((cycles) => trial(links, cycles));

  test('hold about four in five, somewhat more for whole days', () => {
    for (const outcomes of after) {
      const held = mean(outcomes.map(({ isHeld }) => Number(isHeld)));
      expect(held).toBeGreaterThanOrEqual(0.77);
      expect(held).toBeLessThanOrEqual(0.87);
    }
  });

  test('are narrower with each keeper’s own cycles', () => {
    const widths = after.map((outcomes) => mean(outcomes.map(({ width }) => width)));
    const [none = NaN, three = NaN, ten = NaN] = widths;
    expect(three).toBeLessThan(none - 1);
    expect(ten).toBeLessThan(three);
  });
});

test('own cycles known only to five days still make windows that hold, and narrower ones', () => {
  const [none = [], ten = []] = [0, 10].map((n) => trial(['shed to lay'], n, { lookDays: 5 }));
  const held = mean(ten.map(({ isHeld }) => Number(isHeld)));
  expect(held).toBeGreaterThanOrEqual(0.77);
  expect(held).toBeLessThanOrEqual(0.87);
  const [before, after] = [none, ten].map((each) => mean(each.map(({ width }) => width)));
  expect(after).toBeLessThan((before ?? NaN) - 1);
});

test('from the third cycle on, a forecast is nearer than thirty days after the shed', () => {
  for (const ownCycles of [2, 10]) {
    const outcomes = trial(['shed to lay'], ownCycles);
    const fixed = mean(outcomes.map(({ days }) => Math.abs(days - 30)));
    expect(mean(outcomes.map(({ crps }) => crps))).toBeLessThan(fixed);
  }
});

test('the score of a forecast is how far off it was, for one day, and less where it was unsure', () => {
  // By hand: the two halves are ¼ each on the day between them.
  expect(rankedScore({ chances: [1] }, 0)).toBe(0);
  expect(rankedScore({ chances: [1] }, 3)).toBe(3);
  expect(rankedScore({ chances: [0, 0, 1] }, -1)).toBe(3);
  expect(rankedScore({ chances: [0.5, 0, 0.5] }, 1)).toBeCloseTo(0.5, 12);
});
