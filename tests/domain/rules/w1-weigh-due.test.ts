import { expect, test } from 'vitest';
import { anEvent, nightsAgo } from '../../make.ts';
import { asked } from './asked.ts';

const weighed = (nights: number, massG: number, sex: 'male' | 'female' = 'female') => [
  anEvent('arrived', { sex, at: nightsAgo(90) }),
  anEvent('weighed', { massG, at: nightsAgo(nights) }),
];

// Adults monthly, hatchlings and males in the season every two weeks: common practice, no source.
test.each([
  { who: 'an adult female', massG: 1_700, sex: 'female', days: 30 },
  { who: 'a grower', massG: 400, sex: 'female', days: 30 },
  { who: 'a hatchling', massG: 90, sex: 'female', days: 14 },
  { who: 'a male in the season', massG: 800, sex: 'male', days: 14 },
] as const)('[W1] $who is weighed every $days days', ({ massG, sex, days }) => {
  expect(asked('W1', weighed(days - 1, massG, sex))).toBeUndefined();
  expect(asked('W1', weighed(days, massG, sex))).toMatchObject({ act: 'weigh', state: 'due' });
  expect(asked('W1', weighed(days * 2, massG, sex))?.state).toBe('overdue');
});

test('[W1] one that was never weighed is asked for, and says so', () => {
  expect(asked('W1', [anEvent('arrived')])?.because[0]).toBe('Never weighed yet.');
});

test('[W1] a replaced weight is the one that is shown', () => {
  const [arrived, first] = weighed(40, 1_700);
  const replaces = { id: first!.id, reason: 'digits swapped' };
  const mended = anEvent('weighed', { massG: 1_070, at: nightsAgo(40), replaces });
  expect(asked('W1', [arrived!, first!, mended])?.because[0]).toContain('1,070\u00A0g');
});

test('[W1] it is not asked for while he is on a visit', () => {
  const { male } = anEvent('introduced');
  const events = [
    anEvent('arrived', { animal: male, name: 'Cedar', sex: 'male', at: nightsAgo(90) }),
    anEvent('introduced', { at: nightsAgo(1) }),
  ];
  expect(asked('W1', events, { animal: male })?.blocked).toContain('on a visit');
});

test('[W1] passing it over starts the clock again', () => {
  const passed = anEvent('passed-over', { rule: 'W1', at: nightsAgo(2) });
  expect(asked('W1', [...weighed(50, 1_700), passed])).toBeUndefined();
});
