import ICAL from 'ical.js';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { writeCalendar } from '../../../src/domain/calendar-file/write-calendar.ts';
import { clockAt, day } from '../../make.ts';

// What a calendar on a device in some zone makes of the file: ical.js reads it, and the platform's
// own clock turns its local times into instants. The offsets are the law's:
// Berlin: +01:00, from 28 March 2027, 01:00 UTC, +02:00 (Directive 2000/84/EC, last Sunday of March);
// New York: −05:00, from 14 March 2027, 02:00, −04:00 (15 U.S.C. §260a, second Sunday of March);
// Kathmandu: +05:45 all year.
const zones = [
  {
    zone: 'Europe/Berlin',
    firstDay: '2027-03-26',
    nights: ['26T20:00', '27T20:00', '28T19:00', '29T19:00'],
    windowBegins: '2027-03-25T23:00',
    windowEnds: '2027-03-29T22:00',
    alarm: '2027-03-25T17:00',
  },
  {
    zone: 'America/New_York',
    firstDay: '2027-03-12',
    nights: ['13T02:00', '14T02:00', '15T01:00', '16T01:00'],
    windowBegins: '2027-03-12T05:00',
    windowEnds: '2027-03-16T04:00',
    alarm: '2027-03-11T23:00',
  },
  {
    zone: 'Asia/Kathmandu',
    firstDay: '2027-03-26',
    nights: ['26T15:15', '27T15:15', '28T15:15', '29T15:15'],
    windowBegins: '2027-03-25T18:15',
    windowEnds: '2027-03-29T18:15',
    alarm: '2027-03-25T12:15',
  },
] as const;

const utc = (time: ICAL.Time): string => time.toJSDate().toISOString().slice(0, 16);

function filed(firstDay: string, days: number): ICAL.Event[] {
  const first = day(firstDay);
  const lastDay = day(
    new Date(Date.parse(`${firstDay}T12:00Z`) + (days - 1) * 86_400_000).toISOString().slice(0, 10),
  );
  const evenBefore = day(
    new Date(Date.parse(`${firstDay}T12:00Z`) - 86_400_000).toISOString().slice(0, 10),
  );
  const text = writeCalendar(
    [
      { kind: 'look', uid: 'a', title: 'Eggs', details: '', firstDay: first, lastDay, hour: 21 },
      {
        kind: 'window',
        uid: 'b',
        title: 'Sorrel: lay',
        details: '',
        firstDay: first,
        lastDay,
        alarmAt: { day: evenBefore, hour: 18 },
      },
    ],
    clockAt('2027-03-01T20:15:00+01:00'),
  );
  return new ICAL.Component(ICAL.parse(text) as unknown[])
    .getAllSubcomponents('vevent')
    .map((component) => new ICAL.Event(component));
}

describe.each(zones)('across a change of the clocks, in $zone', (each) => {
  afterEach(() => vi.unstubAllEnvs());

  test('a nightly look stays at 21:00 of the wall clock', () => {
    vi.stubEnv('TZ', each.zone);
    const [look] = filed(each.firstDay, each.nights.length);
    const iterator = look!.iterator();
    const instants = each.nights.map(() => utc(iterator.next()));
    expect(instants).toEqual(each.nights.map((night) => `2027-03-${night}`));
    expect(iterator.next()).toBeFalsy();
  });

  test('a window begins and ends at its own midnights, and its alarm rings at 18:00', () => {
    vi.stubEnv('TZ', each.zone);
    const [, window] = filed(each.firstDay, 4);
    expect(utc(window!.startDate)).toBe(each.windowBegins);
    expect(utc(window!.endDate)).toBe(each.windowEnds);
    const trigger = window!.component
      .getFirstSubcomponent('valarm')!
      .getFirstPropertyValue('trigger') as ICAL.Duration;
    // Counted in exact hours from that midnight, as the strictest calendar would.
    const rings = window!.startDate.toJSDate().getTime() + trigger.toSeconds() * 1_000;
    expect(new Date(rings).toISOString().slice(0, 16)).toBe(each.alarm);
  });
});
