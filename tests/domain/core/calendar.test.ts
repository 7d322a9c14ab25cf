import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import {
  addDays,
  daysBetween,
  eveningOf,
  instantMs,
  momentOf,
  roomNight,
} from '../../../src/domain/core/calendar.ts';
import { day, moment } from '../../make.ts';
import { runs } from '../../arbitrary.ts';

const NOON = 12;

// Each zone's summer offset in July, in minutes behind UTC, shows that the zone took effect.
// Source: IANA tz database, rules for 2026.
describe.each([
  { zone: 'UTC', julyBehindMin: 0 },
  { zone: 'Europe/Berlin', julyBehindMin: -120 },
  { zone: 'America/New_York', julyBehindMin: 240 },
  { zone: 'Asia/Kolkata', julyBehindMin: -330 },
  { zone: 'Australia/Lord_Howe', julyBehindMin: -630 },
  { zone: 'America/Santiago', julyBehindMin: 240 }, // Its clocks change at midnight.
])('on a device in $zone', ({ zone, julyBehindMin }) => {
  beforeEach(() => {
    vi.stubEnv('TZ', zone);
  });
  afterEach(() => {
    vi.unstubAllEnvs();
  });

  test('the zone is in force', () => {
    expect(new Date(2026, 6, 1).getTimezoneOffset()).toBe(julyBehindMin);
  });

  test.each([
    { at: '2026-11-24T23:50:00+01:00', night: '2026-11-24', why: 'before midnight' },
    { at: '2026-11-25T00:20:00+01:00', night: '2026-11-24', why: 'after midnight, still at work' },
    { at: '2026-11-25T11:59:59+01:00', night: '2026-11-24', why: 'the morning after' },
    { at: '2026-11-25T12:00:00+01:00', night: '2026-11-25', why: 'from noon on it is the next' },
    { at: '2026-11-25T00:20:00-08:00', night: '2026-11-24', why: 'written far away' },
    { at: '2026-11-25T00:20:00+05:45', night: '2026-11-24', why: 'odd offsets' },
    { at: '2026-11-25T00:20:00Z', night: '2026-11-24', why: 'UTC, written short' },
    { at: '2026-11-25T23:20:00.250Z', night: '2026-11-25', why: 'with parts of a second' },
    { at: '2027-01-01T01:00:00+01:00', night: '2026-12-31', why: 'over the new year' },
    { at: '2028-03-01T01:00:00+01:00', night: '2028-02-29', why: 'into a leap day' },
    // Clocks go forward at 02:00 on 2026-03-29 and back at 03:00 on 2026-10-25 in the EU.
    { at: '2026-03-29T03:10:00+02:00', night: '2026-03-28', why: 'the night that lost an hour' },
    { at: '2026-10-25T02:30:00+02:00', night: '2026-10-24', why: 'the first 02:30 of that night' },
    { at: '2026-10-25T02:30:00+01:00', night: '2026-10-24', why: 'the second 02:30 of it' },
  ])('$at belongs to the night of $night: $why', ({ at, night }) => {
    expect(roomNight(moment(at), NOON)).toBe(night);
  });

  test('an earlier rollover hour ends the night sooner', () => {
    expect(roomNight(moment('2026-11-25T05:00:00+01:00'), 5)).toBe('2026-11-25');
    expect(roomNight(moment('2026-11-25T04:59:00+01:00'), 5)).toBe('2026-11-24');
  });

  test.each([
    { from: '2026-03-28', to: '2026-03-30', days: 2, why: 'EU clocks go forward' },
    { from: '2026-10-24', to: '2026-10-26', days: 2, why: 'EU clocks go back' },
    { from: '2026-03-07', to: '2026-03-09', days: 2, why: 'US clocks go forward' },
    { from: '2026-04-04', to: '2026-04-06', days: 2, why: 'Lord Howe’s half hour' },
    { from: '2026-09-05', to: '2026-09-06', days: 1, why: 'a midnight that is not, in Santiago' },
    { from: '2028-02-28', to: '2028-03-01', days: 2, why: 'a leap day' },
    { from: '2026-03-01', to: '2026-02-27', days: -2, why: 'backwards' },
  ])('$from to $to is $days days: $why', ({ from, to, days }) => {
    expect(daysBetween(day(from), day(to))).toBe(days);
    expect(addDays(day(from), days)).toBe(to);
  });

  test('days added are days between, over any stretch of years', () => {
    const anyDay = fc.integer({ min: 0, max: 20_000 }).map((n) => addDays(day('1990-01-01'), n));
    fc.assert(
      fc.property(anyDay, fc.integer({ min: -4_000, max: 4_000 }), (from, days) => {
        expect(daysBetween(from, addDays(from, days))).toBe(days);
      }),
      runs(200),
    );
  });
});

describe('a moment', () => {
  // RFC 3339 §5.6 and §5.8: local time, then the offset it was read with.
  test.each([
    { offsetMin: 60, text: '1970-01-01T01:00:00+01:00' },
    { offsetMin: 0, text: '1970-01-01T00:00:00+00:00' },
    { offsetMin: -210, text: '1969-12-31T20:30:00-03:30' },
    { offsetMin: 345, text: '1970-01-01T05:45:00+05:45' },
  ])('of the same instant reads $text', ({ offsetMin, text }) => {
    expect(momentOf({ ms: 0, offsetMin })).toBe(text);
  });

  test('keeps its instant, to the second, whatever the offset', () => {
    const seconds = fc.integer({ min: 0, max: 4_000_000_000 });
    fc.assert(
      fc.property(seconds, fc.integer({ min: -720, max: 840 }), (second, offsetMin) => {
        expect(instantMs(momentOf({ ms: second * 1_000, offsetMin }))).toBe(second * 1_000);
      }),
      runs(200),
    );
  });

  test.each([-600, 0, 60, 345, 780])(
    'that stands for a whole evening lies in its night, at offset %d',
    (offsetMin) => {
      const evening = eveningOf(day('2026-03-28'), offsetMin);
      expect(roomNight(evening, NOON)).toBe('2026-03-28');
      expect(evening.slice(0, 10)).toBe('2026-03-28');
    },
  );
});
