import fc from 'fast-check';
import { expect, test } from 'vitest';
import { addDays, type Day } from '../../../src/domain/core/calendar.ts';
import type { RackEvent } from '../../../src/domain/events/event.ts';
import { isWithin, staysOf } from '../../../src/domain/register/stays.ts';
import { runs } from '../../arbitrary.ts';
import { anEvent, day } from '../../make.ts';
import { animalId } from '../../make-ids.ts';

const animal = animalId(1);
const on = (text: string): string => `${text}T12:00:00+01:00`;

test('hatched here, it is in the register from the day it hatched', () => {
  const events = [
    anEvent('arrived', {
      animal,
      origin: 'own',
      hatchedDay: day('2026-07-01'),
      at: on('2026-07-04'),
    }),
    anEvent('left', { animal, how: 'sold', at: on('2026-10-02') }),
  ];
  expect(staysOf(animal, events)).toEqual([
    { animal, from: '2026-07-01', came: 'hatched here', to: '2026-10-02', left: 'sold' },
  ]);
});

test('bought, it says from whom; brought back, it has a second stay', () => {
  const events = [
    anEvent('arrived', { animal, origin: 'bought', from: 'a show', at: on('2026-01-05') }),
    anEvent('left', { animal, how: 'sold', at: on('2026-03-01') }),
    anEvent('came-back', { animal, at: on('2026-03-09') }),
    anEvent('left', { animal, how: 'died', at: on('2026-05-01') }),
  ];
  expect(
    staysOf(animal, events).map(({ from, came, source, to, left }) => [
      from,
      came,
      source,
      to,
      left,
    ]),
  ).toEqual([
    ['2026-01-05', 'bought', 'a show', '2026-03-01', 'sold'],
    ['2026-03-09', 'came back', undefined, '2026-05-01', 'died'],
  ]);
});

// After midnight it is another day for an inspector, though the same night in the room.
test('days are those of the calendar', () => {
  const left = anEvent('left', { animal, how: 'sold', at: '2026-11-25T00:20:00+01:00' });
  const arrived = anEvent('arrived', { animal, at: on('2026-11-01') });
  expect(staysOf(animal, [arrived, left])[0]?.to).toBe('2026-11-25');
});

/** Day by day: here after an arrival or a return, gone after a leaving. */
function keptDayByDay(events: readonly RackEvent[], from: Day, to: Day): boolean {
  let isHere = false;
  let was = false;
  const daysOf = (each: Day) => events.filter(({ at }) => at.slice(0, 10) === each);
  for (let each = day('2026-01-01'); each <= to; each = addDays(each, 1)) {
    let onThisDay = isHere;
    for (const { type } of daysOf(each)) {
      isHere = type !== 'left';
      onThisDay ||= isHere;
    }
    if (each >= from) was ||= onThisDay;
  }
  return was;
}

test('it was kept in a span exactly when it was here on a day of it', () => {
  const story = fc.uniqueArray(fc.integer({ min: 0, max: 60 }), { minLength: 1, maxLength: 6 });
  const span = fc.tuple(fc.integer({ min: 0, max: 70 }), fc.integer({ min: 0, max: 30 }));
  fc.assert(
    fc.property(story, span, (days, [start, length]) => {
      const events = days
        .toSorted((a, b) => a - b)
        .map((each, n) => {
          const at = on(addDays(day('2026-01-01'), each));
          if (n % 2 === 1) return anEvent('left', { animal, how: 'lent', at });
          return n === 0
            ? anEvent('arrived', { animal, at })
            : anEvent('came-back', { animal, at });
        });
      const from = addDays(day('2026-01-01'), start);
      const to = addDays(from, length);
      const kept = staysOf(animal, events).some((stay) => isWithin(stay, from, to));
      expect(kept).toBe(keptDayByDay(events, from, to));
    }),
    runs(300),
  );
});
