import { describe, expect, test } from 'vitest';
import type { RackEvent } from '../../../src/domain/events/event.ts';
import type { Moment } from '../../../src/domain/core/calendar.ts';
import { anEvent, day, nightsAgo } from '../../make.ts';
import { asked } from './asked.ts';

const refused = (...ago: readonly number[]): readonly RackEvent[] =>
  ago.map((nights) => anEvent('meal-offered', { outcome: 'refused', at: nightsAgo(nights) }));

const weighed = (massG: number, ago: number) => anEvent('weighed', { massG, at: nightsAgo(ago) });

const arrived = (sex: 'female' | 'male' | 'unknown', ago = 300) =>
  anEvent('arrived', { sex, at: nightsAgo(ago) });

const hatchling = [
  anEvent('arrived', { sex: 'unknown', hatchedDay: day('2026-09-20'), at: nightsAgo(64) }),
  weighed(65, 60),
  anEvent('shed', { at: nightsAgo(54) }),
];

// The ladder of a hatchling that does not eat: leave it alone after one refusal, look round from the second,
// other prey from the fourth, weigh and ask from the fifth or −8 to −10 %, a vet at −12 to −15 %. Common
// practice, no source.
describe('[F3] a hatchling that does not eat', () => {
  const young = (ago: number) => [
    anEvent('arrived', { sex: 'unknown', hatchedDay: day('2026-10-26'), at: nightsAgo(25) }),
    weighed(65, 25),
    anEvent('shed', { at: nightsAgo(ago) }),
  ];

  test('is left alone after the first refusal', () => {
    expect(asked('F3', [...young(14), ...refused(2)])).toBeUndefined();
  });

  test('is looked round from the second on, and says its weight beside it', () => {
    const task = asked('F3', [...young(16), ...refused(9, 2), weighed(64, 1)]);
    expect(task).toMatchObject({ act: 'check', alarm: false });
    expect(task?.asks).toContain('N1');
    expect(task?.because.join(' ')).toMatch(/Refused 2 times.*1\.5 % below its hatch weight/);
  });

  test('is a vet’s matter when it has lost an eighth of its hatch weight', () => {
    const task = asked('F3', [...hatchling, ...refused(30, 22, 14, 6), weighed(56, 2)]);
    expect(task).toMatchObject({ act: 'call', alarm: true });
  });

  test('an assisted meal is no meal of its own, and no refusal', () => {
    const helped = anEvent('meal-offered', { how: 'assisted', at: nightsAgo(4) });
    const task = asked('F3', [...young(16), ...refused(9, 6), helped]);
    expect(task?.because.join(' ')).toContain('Refused 2 times');
    const alone = anEvent('meal-offered', { how: 'tongs', at: nightsAgo(4) });
    expect(asked('F3', [...young(16), ...refused(9, 6), alone])).toBeUndefined();
  });
});

// Refusals by stage, season and weight: usual for a male in winter, not for a grower in summer. Common practice, no source.
describe('[F4] refusals in their context', () => {
  test('a grown male that fasts in November with steady weight is as usual', () => {
    const male = [arrived('male'), weighed(900, 60), weighed(890, 3), ...refused(42, 28, 14)];
    expect(asked('F4', male)).toBeUndefined();
  });

  test('the same male is a vet’s matter when he has lost more than a tenth', () => {
    const ate = anEvent('meal-offered', { at: nightsAgo(70) });
    const thin = [arrived('male'), weighed(900, 75), ate, ...refused(56, 42, 28), weighed(770, 3)];
    expect(asked('F4', thin)).toMatchObject({ act: 'call' });
  });

  test('a grower that refuses three times in July is looked into, and a fed one is not', () => {
    const at = '2026-07-10T22:00:00+02:00';
    const july = (d: number, outcome: 'ate' | 'refused') =>
      anEvent('meal-offered', { outcome, at: `2026-07-0${d}T21:00:00+02:00` as Moment });
    const grower = [
      anEvent('arrived', { sex: 'female', at: '2026-01-10T21:00:00+01:00' as Moment }),
      anEvent('weighed', { massG: 350, at: '2026-06-28T21:00:00+02:00' as Moment }),
      ...[1, 4, 7].map((d) => july(d, 'refused')),
    ];
    const task = asked('F4', grower, { at });
    expect(task?.because.join(' ')).toContain('Refused 3 times in a row');
    expect(asked('F4', [...grower, july(9, 'ate')], { at })).toBeUndefined();
  });

  test('passed over, it is quiet until it refuses again', () => {
    const adult = [arrived('female'), weighed(1_700, 60), ...refused(50, 40, 30, 20, 10)];
    expect(asked('F4', adult)).toBeDefined();
    const passed = anEvent('passed-over', { rule: 'F4', reason: 'I know', at: nightsAgo(5) });
    expect(asked('F4', [...adult, passed])).toBeUndefined();
    expect(asked('F4', [...adult, passed, ...refused(1)])).toBeDefined();
  });
});

// Twice in 60 days: a vet. Common practice, no source.
describe('[F5] two meals brought up', () => {
  const broughtUp = (...ago: readonly number[]) => [
    arrived('female'),
    ...ago.map((nights) => anEvent('regurgitated', { at: nightsAgo(nights) })),
  ];

  test('within two months are a vet’s matter, at the top of the list', () => {
    expect(asked('F5', broughtUp(50, 3))).toMatchObject({ act: 'call', alarm: true });
  });

  test('one, or two far apart, are not', () => {
    expect(asked('F5', broughtUp(3))).toBeUndefined();
    expect(asked('F5', broughtUp(90, 3))).toBeUndefined();
  });
});

// 15 % is a vet's matter, 5 % faster than a fast deserves a look. Common practice, no source; the pace of a fast is
// McCue M.D. 2007, Zoology 110:318–327.
describe('[W2] a loss of weight', () => {
  const fasting = (...masses: readonly (readonly [number, number])[]) => [
    arrived('female', 400),
    anEvent('meal-offered', { at: nightsAgo(200) }),
    ...masses.map(([ago, massG]) => weighed(massG, ago)),
  ];

  test('of a sixth is an alarm, and says each cause it looked at', () => {
    const task = asked('W2', fasting([120, 1_800], [40, 1_650], [2, 1_490]));
    expect(task).toMatchObject({ act: 'call', alarm: true });
    const said = task?.because.join(' ');
    for (const cause of ['laying', 'shed', 'gut', 'without food']) expect(said).toContain(cause);
  });

  test('no more than a fast costs says nothing', () => {
    expect(asked('W2', fasting([60, 1_800], [2, 1_710]))).toBeUndefined();
  });

  test('eggs are no loss', () => {
    const laid = anEvent('laid', { clutchMassG: 480, at: nightsAgo(20) });
    expect(asked('W2', [...fasting([60, 1_800], [2, 1_300]), laid])).toBeUndefined();
  });
});

// Over 12 % a month from 700 g on. Common practice, no source.
describe('[W3] fed too well', () => {
  test('a grown one that gains over an eighth in a month is said, once', () => {
    const fast = [arrived('female', 400), weighed(1_000, 35), weighed(1_200, 1)];
    const empty = anEvent('meal-offered', { at: nightsAgo(60) });
    expect(asked('W3', [empty, ...fast])?.because.join(' ')).toContain('over 12 % a month');
    const slow = [arrived('female', 400), weighed(1_000, 35), weighed(1_060, 1)];
    expect(asked('W3', [empty, ...slow])).toBeUndefined();
  });

  test('a full body is flagged while it is only kept, and not while she is fed up', () => {
    const full = [
      arrived('female', 400),
      weighed(1_900, 3),
      anEvent('condition-judged', { score: 5, at: nightsAgo(2) }),
    ];
    expect(asked('W3', full)).toBeUndefined();
    const july = (what: 'weighed' | 'condition-judged') =>
      what === 'weighed'
        ? anEvent('weighed', { massG: 1_900, at: '2026-07-08T21:00:00+02:00' as Moment })
        : anEvent('condition-judged', { score: 5, at: '2026-07-09T21:00:00+02:00' as Moment });
    const kept = [
      anEvent('arrived', { sex: 'female', at: '2025-07-08T21:00:00+02:00' as Moment }),
      july('weighed'),
      july('condition-judged'),
    ];
    expect(asked('W3', kept, { at: '2026-07-10T22:00:00+02:00' })).toBeDefined();
  });
});
