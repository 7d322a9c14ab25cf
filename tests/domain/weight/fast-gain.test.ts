import { describe, expect, test } from 'vitest';
import { addDays } from '../../../src/domain/core/calendar.ts';
import { fastGain } from '../../../src/domain/weight/fast-gain.ts';
import { regainedOn } from '../../../src/domain/weight/regained.ts';
import { emptyGutStory as story, START, type StoryParts } from './weight-story.ts';

describe('growing too fast', () => {
  const gain = (
    masses: readonly (readonly [number, number])[],
    more: Omit<Partial<StoryParts>, 'masses'> = {},
  ) => {
    const { readings, layings, protocol } = story(masses, more);
    return fastGain(readings, layings, protocol)?.monthlyShare;
  };

  test('is over 12 % in 30 days, from 700 g on', () => {
    expect(
      gain([
        [0, 1_000],
        [30, 1_130],
      ]),
    ).toBeCloseTo(0.13, 9);
    // 25.4 % in 60 days is 12 % a month compounded.
    expect(
      gain([
        [0, 1_000],
        [60, 1_254],
      ]),
    ).toBeUndefined();
    expect(
      gain([
        [0, 1_000],
        [60, 1_270],
      ]),
    ).toBeCloseTo(Math.sqrt(1.27) - 1, 9);
    expect(
      gain([
        [0, 1_000],
        [30, 1_110],
      ]),
    ).toBeUndefined();
    expect(
      gain([
        [0, 400],
        [30, 500],
      ]),
    ).toBeUndefined();
    expect(
      gain([
        [0, 1_000],
        [20, 1_150],
      ]),
    ).toBeUndefined();
  });

  test('does not count a meal in the gut', () => {
    const meals = [
      [addDays(START, -40), 50],
      [addDays(START, 28), 60],
    ] as const;
    expect(
      gain(
        [
          [0, 1_000],
          [30, 1_150],
        ],
        { meals },
      ),
    ).toBeUndefined();
  });

  test('is not said of a female that regains what her eggs took', () => {
    const masses = [
      [0, 1_800],
      [30, 1_250],
      [60, 1_450],
    ] as const;
    const layings = [{ date: '2026-01-30' }];
    expect(gain(masses, { layings })).toBeUndefined();
    expect(gain([...masses, [90, 1_820]], { layings })).toBeGreaterThan(0.2);
  });
});

test('a weight is regained between two weights, or not yet', () => {
  const { readings } = story([
    [0, 1_200],
    [30, 1_300],
    [60, 1_500],
  ]);
  expect(regainedOn(readings, 1_400)).toBe(addDays(START, 45));
  expect(regainedOn(readings, 1_200)).toBe(START);
  expect(regainedOn(readings, 1_501)).toBeUndefined();
});
