import { expect, test } from 'vitest';
import { calendarEntries } from '../../../src/domain/views/calendar-view.ts';
import { anEvent, aPicture, day, moment, nightsAgo } from '../../make.ts';
import { animalId, tubId } from '../../make-ids.ts';
import { arrivals as bothOfThem, her, on, scan, upTo, wholeSeason } from '../season/make-season.ts';

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

const seasonUntil = (night: string) =>
  calendarEntries(aPicture([...bothOfThem, ...upTo(night, wholeSeason)], on(night)));

test('the windows of a season are whole days, with what they hang on', () => {
  const [eggs, pip, ...more] = seasonUntil('2027-02-25');
  expect(more).toEqual([]);
  // From the pre-lay shed of 24 February; 26, 30 and 36 days: common practice, no source.
  expect(eggs).toMatchObject({
    kind: 'window',
    title: 'Sorrel: eggs',
    firstDay: '2027-03-22',
    likelyDay: '2027-03-26',
    lastDay: '2027-04-01',
    alarmAt: { day: '2027-03-21', hour: 19 },
  });
  expect(eggs?.details).toMatch(/^From the pre-lay shed on 24 Feb; no own cycle yet/);
  expect(pip?.title).toBe('Sorrel: first pip');
});

test('a window moves under its name as facts come in, and the next season has other names', () => {
  const uidOf = (night: string, events = upTo(night, wholeSeason)) =>
    calendarEntries(aPicture([...bothOfThem, ...events], on(night))).find(({ title }) =>
      title.endsWith('eggs'),
    )?.uid;
  const first = uidOf('2027-01-25');
  expect(first).toBeDefined();
  expect(uidOf('2027-02-06')).toBe(first);
  expect(uidOf('2027-02-25')).toBe(first);
  const next = [...wholeSeason, scan('2027-12-01', 16), scan('2028-01-01', 30)];
  const second = uidOf('2028-01-02', next);
  expect(second).toBeDefined();
  expect(second).not.toBe(first);
});

test('all that a season brings has a name of its own', () => {
  const entries = seasonUntil('2027-01-25');
  expect(entries.map(({ title }) => title)).toEqual([
    'Sorrel: ovulation',
    'Sorrel: pre-lay shed',
    'Sorrel: eggs',
    'Sorrel: first pip',
  ]);
  expect(new Set(entries.map(({ uid }) => uid)).size).toBe(entries.length);
});

test('it rings on the evening before, while that evening is to come; later it no longer rings', () => {
  const events = upTo('2027-02-25', wholeSeason);
  const alarmOn = (night: string) => {
    const [eggs] = calendarEntries(aPicture([...bothOfThem, ...events], on(night)));
    return eggs?.kind === 'window' ? eggs.alarmAt : 'no window';
  };
  expect(alarmOn('2027-03-21')).toEqual({ day: '2027-03-21', hour: 19 });
  expect(alarmOn('2027-03-22')).toBeUndefined();
  expect(alarmOn('2027-04-01')).toBeUndefined();
});

test('a window that is over, or whose dates clash, is in no file', () => {
  const events = upTo('2027-02-25', wholeSeason);
  const titlesOn = (night: string, ...more: Parameters<typeof aPicture>[0]) =>
    calendarEntries(aPicture([...bothOfThem, ...events, ...more], on(night))).map(
      ({ title }) => title,
    );
  expect(titlesOn('2027-04-02')).toEqual(['Sorrel: first pip']);
  // Eggs come at most 55 days after the shed: windowLimits, common practice.
  const looked = anEvent('nothing-yet', { animal: her, lookedFor: 'eggs', at: on('2027-05-10') });
  expect(titlesOn('2027-05-10', looked)).not.toContain('Sorrel: eggs');
});
