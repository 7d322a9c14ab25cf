import type { Day } from '../domain/core/calendar.ts';

const WEEKDAY = new Intl.DateTimeFormat('en-GB', { weekday: 'short', timeZone: 'UTC' });
const MONTH = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', timeZone: 'UTC' });
const FULL = new Intl.DateTimeFormat('en-GB', {
  day: 'numeric',
  month: 'short',
  year: 'numeric',
  timeZone: 'UTC',
});

const noon = (day: Day): Date => new Date(`${day}T12:00:00Z`);

/** @example nightWords('2026-11-24') //=> 'Tue 24 Nov' */
export const nightWords = (day: Day): string =>
  `${WEEKDAY.format(noon(day))} ${MONTH.format(noon(day))}`;

/** With the year, for histories that go back. */
export const dayWords = (day: Day): string => FULL.format(noon(day));

/** Minutes that this device's clock is ahead of UTC on a day. */
export const offsetMinOn = (day: Day): number => -new Date(`${day}T21:00:00`).getTimezoneOffset();
