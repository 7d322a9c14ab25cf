import type { Day } from '../domain/core/calendar.ts';
import { dayAndMonthWords } from '../domain/core/day-words.ts';

// Said with our own words: the browser's take a quarter of a slow phone's start to get ready.
const WEEKDAYS = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'] as const;

/** @example nightWords('2026-11-24') //=> 'Tue 24 Nov' */
export const nightWords = (day: Day): string =>
  `${WEEKDAYS[new Date(`${day}T12:00:00Z`).getUTCDay()] ?? ''} ${dayAndMonthWords(day)}`;

/** Minutes that this device's clock is ahead of UTC on a day. */
export const offsetMinOn = (day: Day): number => -new Date(`${day}T21:00:00`).getTimezoneOffset();
