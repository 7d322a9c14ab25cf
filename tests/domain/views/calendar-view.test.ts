import { expect, test } from 'vitest';
import { calendarEntries } from '../../../src/domain/views/calendar-view.ts';
import { anEvent, aPicture, day, moment, nightsAgo } from '../../make.ts';
import { animalId, tubId } from '../../make-ids.ts';

const sorrel = animalId(1);
const flint = animalId(2);
const arrivals = [
  anEvent('arrived', { animal: sorrel, name: 'Sorrel', sex: 'female', at: nightsAgo(40) }),
  anEvent('arrived', { animal: flint, name: 'Flint', sex: 'male', at: nightsAgo(40) }),
];
const together = (at: string) =>
  anEvent('introduced', { male: flint, female: sorrel, tub: tubId(1), at: moment(at) });

test('meals and weighings are not in it: each one moves the next', () => {
  expect(calendarEntries(aPicture(arrivals))).toEqual([]);
});

test('a male goes home after his stay, on the evening of that day', () => {
  // Three days, the default of "maleStay" in the protocol, from the night of 23 November.
  const [entry, ...more] = calendarEntries(
    aPicture([...arrivals, together('2026-11-24T00:30:00+01:00')]),
  );
  expect(more).toEqual([]);
  expect(entry).toMatchObject({
    kind: 'window',
    title: 'Take Flint out of Sorrel’s tub',
    firstDay: '2026-11-26',
    lastDay: '2026-11-26',
    alarmAt: { day: '2026-11-26', hour: 19 },
  });
});

test('the same visit keeps its name in later files, and another one has another', () => {
  const visit = together('2026-11-23T21:00:00+01:00');
  const uidOn = (at: string, ...events: Parameters<typeof aPicture>[0]) =>
    calendarEntries(aPicture([...arrivals, ...events], at))[0]?.uid;
  const first = uidOn('2026-11-24T20:00:00+01:00', visit);
  expect(first).toBeDefined();
  expect(uidOn('2026-11-26T20:00:00+01:00', visit)).toBe(first);
  const out = anEvent('taken-out', { male: flint, female: sorrel, at: nightsAgo(0) });
  const again = together('2026-11-25T21:00:00+01:00');
  expect(uidOn('2026-11-25T22:00:00+01:00', visit, out, again)).not.toBe(first);
});

test('what is past is left to tonight’s list, and what has ended is gone', () => {
  const visit = together('2026-11-18T21:00:00+01:00');
  expect(calendarEntries(aPicture([...arrivals, visit]))).toEqual([]);
  const fresh = together('2026-11-23T21:00:00+01:00');
  const out = anEvent('taken-out', { male: flint, female: sorrel });
  expect(calendarEntries(aPicture([...arrivals, fresh, out]))).toEqual([]);
});

test('a quarantine ends on its day', () => {
  const until = day('2027-02-20');
  const start = anEvent('quarantine-started', { animal: sorrel, until, at: nightsAgo(3) });
  expect(calendarEntries(aPicture([...arrivals, start]))).toMatchObject([
    { title: 'Sorrel: quarantine ends', firstDay: until, lastDay: until },
  ]);
  const openEnded = anEvent('quarantine-started', { animal: sorrel, at: nightsAgo(3) });
  expect(calendarEntries(aPicture([...arrivals, openEnded]))).toEqual([]);
});

test('what comes first stands first', () => {
  const start = (animal: typeof sorrel, until: string) =>
    anEvent('quarantine-started', { animal, until: day(until), at: nightsAgo(3) });
  const picture = aPicture([...arrivals, start(sorrel, '2027-02-20'), start(flint, '2026-12-24')]);
  expect(calendarEntries(picture).map(({ firstDay }) => firstDay)).toEqual([
    '2026-12-24',
    '2027-02-20',
  ]);
});

test('a snake that has left is in no calendar', () => {
  const until = day('2027-02-20');
  const start = anEvent('quarantine-started', { animal: sorrel, until, at: nightsAgo(3) });
  const left = anEvent('left', { animal: sorrel, how: 'returned' });
  expect(calendarEntries(aPicture([...arrivals, start, left]))).toEqual([]);
});
