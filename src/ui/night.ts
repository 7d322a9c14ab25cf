import type { Day } from '../domain/core/calendar.ts';
import { monthName } from '../domain/core/month-names.ts';

// Said with our own words: the browser's take a quarter of a slow phone's start to get ready.
const WEEKDAYS = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'] as const;

const noon = (day: Day): Date => new Date(`${day}T12:00:00Z`);
const dayAndMonth = (date: Date): string =>
  `${date.getUTCDate()} ${monthName(date.getUTCMonth() + 1)}`;

/** @example nightWords('2026-11-24') //=> 'Tue 24 Nov' */
export const nightWords = (day: Day): string => {
  const date = noon(day);
  return `${WEEKDAYS[date.getUTCDay()] ?? ''} ${dayAndMonth(date)}`;
};

/** @example dayAndMonthWords('2026-11-24') //=> '24 Nov' */
export const dayAndMonthWords = (day: Day): string => dayAndMonth(noon(day));

/** With the year, for histories that go back. */
export const dayWords = (day: Day): string => {
  const date = noon(day);
  return `${dayAndMonth(date)} ${date.getUTCFullYear()}`;
};

/** Minutes that this device's clock is ahead of UTC on a day. */
export const offsetMinOn = (day: Day): number => -new Date(`${day}T21:00:00`).getTimezoneOffset();
