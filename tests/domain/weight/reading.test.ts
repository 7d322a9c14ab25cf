import { describe, expect, test } from 'vitest';
import { aWeightStory, type StoryParts } from './weight-story.ts';

const one = (parts: Omit<StoryParts, 'masses'>) =>
  aWeightStory({ masses: [['2026-03-20', 900]], ...parts }).readings[0];

describe('a weight knows of its last meal', () => {
  test.each<[string, Omit<StoryParts, 'masses'>, number | undefined, object]>([
    ['no meal on record', {}, undefined, { kind: 'unknown' }],
    [
      'a meal 3 days before',
      { meals: [['2026-03-17', 60]] },
      3,
      { kind: 'may be full', mealG: 60 },
    ],
    ['one 10 days before', { meals: [['2026-03-10', 60]] }, 10, { kind: 'may be full', mealG: 60 }],
    ['one 11 days before', { meals: [['2026-03-09', 60]] }, 11, { kind: 'empty' }],
    [
      'two within ten days',
      {
        meals: [
          ['2026-03-12', 50],
          ['2026-03-18', 60],
        ],
      },
      2,
      { kind: 'may be full', mealG: 110 },
    ],
    [
      'a meal the same evening, after it',
      { meals: [['2026-03-20', 60]] },
      undefined,
      { kind: 'unknown' },
    ],
    [
      'offers refused for weeks',
      {
        meals: [
          ['2026-03-01', 60, 'refused'],
          ['2026-03-14', 60, 'refused'],
        ],
      },
      undefined,
      { kind: 'empty' },
    ],
    [
      'a meal left overnight, of which nobody knows',
      {
        meals: [
          ['2026-03-01', 60],
          ['2026-03-18', 60, 'left'],
        ],
      },
      19,
      { kind: 'may be full', mealG: 60 },
    ],
    [
      'a meal brought up again',
      {
        meals: [
          ['2026-02-20', 60],
          ['2026-03-16', 60],
        ],
        regurgitated: ['2026-03-17'],
      },
      undefined,
      { kind: 'empty' },
    ],
    ['hatched eight days ago', { hatched: '2026-03-12' }, undefined, { kind: 'empty' }],
  ])('with %s', (_name, parts, daysSinceMeal, gut) => {
    const reading = one(parts);
    expect(reading?.daysSinceMeal).toBe(daysSinceMeal);
    expect(reading?.gut).toEqual(gut);
  });
});
