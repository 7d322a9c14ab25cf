import { describe, expect, test } from 'vitest';
import type { RackEvent } from '../../../src/domain/events/event.ts';
import { readinessLines } from '../../../src/domain/views/readiness-lines.ts';
import { anEvent, aPicture, day, moment } from '../../make.ts';
import { animalId, clutchId } from '../../make-ids.ts';

// Reasons for a year without eggs, and the clocks after laying: common practice, no source.

const animal = animalId(1);
const at = (on: string) => moment(`${on}T21:00:00+02:00`);
const weighed = (on: string, massG: number) => anEvent('weighed', { animal, massG, at: at(on) });
const arrived = (hatched: string) =>
  anEvent('arrived', { animal, sex: 'female', hatchedDay: day(hatched), at: at('2024-01-02') });

const season = (year: number, good: number, slugs: number): readonly RackEvent[] => [
  weighed(`${year - 1}-10-20`, 1_800),
  anEvent('follicles-scanned', { animal, at: at(`${year}-01-05`) }),
  anEvent('laid', { animal, clutch: clutchId(year), good, slugs, at: at(`${year}-04-10`) }),
];
const BACK = weighed('2026-09-20', 1_790);
const NOW = '2026-10-01T21:00:00+02:00';

const line = (what: string, events: readonly RackEvent[], now = NOW) =>
  readinessLines(aPicture(events, now).animal(animal)!, aPicture(events, now)).find(
    (each) => each.what === what,
  );

describe('advice for an off year', () => {
  const young = arrived('2021-07-01');

  test('is silent for one that is back, though she laid two years running', () => {
    expect(line('Off year', [young, ...season(2025, 6, 0), ...season(2026, 6, 0), BACK])).toBe(
      undefined,
    );
    expect(line('Off year', [young, BACK])).toBeUndefined();
  });

  test.each([
    {
      why: 'laid twice and not back',
      events: [young, ...season(2025, 6, 0), ...season(2026, 6, 0), weighed('2026-09-20', 1_500)],
      says: /83 % of the 1,800\sg.*Laid in Apr 2025 and in Apr 2026\./,
    },
    {
      why: 'slugs twice',
      events: [young, ...season(2025, 2, 3), ...season(2026, 1, 4), BACK],
      says: /Over 50 % slugs in each of her last two clutches/,
    },
    {
      why: 'eggs left in her',
      events: [
        young,
        ...season(2026, 6, 0),
        anEvent('eggs-felt', { animal, left: 'some', at: at('2026-04-11') }),
        BACK,
      ],
      says: /Eggs were left in her/,
    },
    {
      why: 'her age',
      events: [arrived('2013-07-01'), ...season(2026, 6, 0), BACK],
      says: /13 years/,
    },
  ])('$why', ({ events, says }) => {
    const told = line('Off year', events);
    expect(told?.says).toMatch(says);
    expect(told?.says).toContain('you decide');
    expect(told?.isMet).toBeUndefined();
  });
});

describe('the clock of her first meal', () => {
  const laid = [arrived('2021-07-01'), ...season(2026, 6, 0)];

  test('runs until day 21, and then is late', () => {
    expect(line('First meal', laid, at('2026-04-20'))).toEqual({
      what: 'First meal',
      says: 'None since laying, day 10; late from day 21.',
    });
    expect(line('First meal', laid, at('2026-05-01'))).toMatchObject({ isMet: false });
  });

  test('stops with a meal', () => {
    const ate = anEvent('meal-offered', { animal, outcome: 'ate', at: at('2026-04-17') });
    expect(line('First meal', [...laid, ate], at('2026-05-01'))).toEqual({
      what: 'First meal',
      says: 'Ate 7 days after laying.',
      isMet: true,
    });
  });

  test('says beside it when most are back', () => {
    const light = [...laid, weighed('2026-06-01', 1_300)];
    expect(line('Last clutch', light, at('2026-06-02'))?.says).toMatch(
      /72 % of the 1,800\sg before her last season\. Most are back to \d+ % within \d+ days\./,
    );
  });
});
