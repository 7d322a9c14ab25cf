import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays } from '../../../src/domain/core/calendar.ts';
import { weightAlarm, type AlarmFacts } from '../../../src/domain/weight/alarm.ts';
import { runs } from '../../arbitrary.ts';
import { day } from '../../make.ts';
import { emptyGutStory as story, START, type StoryParts } from './weight-story.ts';

const alarm = (
  kind: AlarmFacts['kind'],
  masses: readonly (readonly [number, number])[],
  more: Omit<Partial<StoryParts>, 'masses'> = {},
  seasonNight?: string,
) =>
  weightAlarm({
    ...story(masses, more),
    kind,
    ...(seasonNight === undefined ? {} : { seasonNight: day(seasonNight) }),
  });

const causes = (found: ReturnType<typeof alarm>) =>
  found.speaks ? [found.level] : found.exclusions.map(({ what }) => what);

describe('a weight alarm', () => {
  // Limits are common practice, no source.
  test.each<[string, ReturnType<typeof alarm>, readonly string[]]>([
    ['nothing to compare', alarm('other', [[0, 900]]), []],
    [
      'a gain',
      alarm('other', [
        [0, 900],
        [30, 930],
      ]),
      [],
    ],
    [
      '3 % in a month',
      alarm('other', [
        [0, 1_000],
        [30, 970],
      ]),
      [],
    ],
    // 7 % in 60 days is 0.12 % a day: McCue's rate.
    [
      '7 % in 60 days without food',
      alarm('other', [
        [0, 1_000],
        [60, 930],
      ]),
      ['expected fast'],
    ],
    [
      '7 % in 20 days',
      alarm('other', [
        [0, 1_000],
        [20, 930],
      ]),
      ['watch'],
    ],
    [
      '16 % in 150 days without food',
      alarm('other', [
        [0, 1_000],
        [150, 840],
      ]),
      ['act'],
    ],
    [
      'bit by bit, 16 % in 60 days',
      alarm('other', [
        [0, 1_000],
        [20, 950],
        [40, 900],
        [60, 840],
      ]),
      ['act'],
    ],
    [
      '30 % in 10 days',
      alarm('other', [
        [0, 1_000],
        [10, 700],
      ]),
      ['entry error?'],
    ],
    [
      'the same, weighed again',
      alarm('other', [
        [0, 1_000],
        [10, 700],
        [11, 705],
      ]),
      ['act'],
    ],
    [
      '9 % of a hatchling',
      alarm('hatchling', [
        [0, 70],
        [40, 63.5],
      ]),
      ['watch'],
    ],
    [
      '13 % of a hatchling',
      alarm('hatchling', [
        [0, 70],
        [60, 61],
      ]),
      ['act'],
    ],
  ])('of %s', (_name, found, expected) => {
    expect(causes(found)).toEqual(expected);
  });

  test('of a male in season holds him against his weight before it', () => {
    const masses = [
      [0, 900],
      [25, 880],
      [50, 820],
    ] as const;
    const found = alarm('male in season', masses, {}, '2026-01-10');
    expect(found.speaks && [found.level, found.drop.since]).toEqual([
      'watch',
      'its weight before the season',
    ]);
    expect(causes(alarm('male in season', [...masses, [70, 785]], {}, '2026-01-10'))).toEqual([
      'act',
    ]);
  });

  test('of one that eats and yet loses speaks, where the same fasting would not', () => {
    const masses = [
      [0, 1_000],
      [50, 930],
    ] as const;
    expect(causes(alarm('other', masses))).toEqual(['expected fast']);
    const meals = [-40, -20, 15, 48].map((days) => [addDays(START, days), 40] as const);
    expect(causes(alarm('other', masses, { meals }))).toEqual(['watch']);
  });

  test('begins anew at a laying', () => {
    const layings = [{ date: '2026-02-10', clutchMassG: 600 }];
    const masses = [
      [0, 2_000],
      [41, 1_380],
      [60, 1_370],
    ] as const;
    expect(causes(alarm('other', masses.slice(0, 2), { layings }))).toEqual(['laying']);
    expect(causes(alarm('other', masses, { layings }))).toEqual([]);
  });

  test('never speaks without having said what else it may be', () => {
    const anyWeights = fc.array(
      fc.tuple(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 100, max: 2_000 })),
      { minLength: 1, maxLength: 8 },
    );
    const anyDay = fc.integer({ min: 0, max: 300 }).map((days) => addDays(START, days));
    fc.assert(
      fc.property(
        anyWeights,
        fc.array(fc.tuple(anyDay, fc.integer({ min: 10, max: 200 })), { maxLength: 8 }),
        fc.array(anyDay, { maxLength: 3 }),
        fc.constantFrom('hatchling', 'other'),
        (steps, meals, sheds, kind) => {
          let days = 0;
          const masses = steps.map(([gap, massG]) => [(days += gap), massG] as const);
          const sorted = meals.toSorted(([a], [b]) => (a < b ? -1 : 1));
          const found = alarm(kind, masses, { meals: sorted, sheds });
          // The drop itself, and the five things that it may be.
          expect(found.speaks ? found.because.length : 6).toBe(6);
          expect(found.speaks ? found.drop.lostG : 1).toBeGreaterThan(0);
        },
      ),
      runs(200),
    );
  });

  test('is silent for whoever only gains', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 80 }), { minLength: 1, maxLength: 10 }),
        (gains) => {
          let massG = 200;
          const found = alarm(
            'other',
            gains.map((gain, i) => [20 * i, (massG += gain)] as const),
          );
          expect(causes(found)).toEqual([]);
        },
      ),
      runs(60),
    );
  });
});
