import { daysBetween, monthOf, type Day, type Moment } from './calendar.ts';
import { monthName } from './month-names.ts';

/** @example agoWords('2026-11-20', '2026-11-24') //=> '4 days ago' */
export function agoWords(then: Day, night: Day): string {
  const days = daysBetween(then, night);
  if (days === 0) return 'tonight';
  if (days === 1) return 'last night';
  return days > 0 ? `${days} days ago` : `in ${-days} days`;
}

/** @example daysWords(2) //=> '2 days' */
export const daysWords = (n: number): string => (n === 1 ? '1 day' : `${n} days`);

/** @example dayAndMonthWords('2026-11-24') //=> '24 Nov' */
export const dayAndMonthWords = (day: Day): string =>
  `${Number(day.slice(8))} ${monthName(monthOf(day))}`;

/** With the year, for what goes far back. @example dateWords('2026-11-24') //=> '24 Nov 2026' */
export const dateWords = (day: Day): string => `${dayAndMonthWords(day)} ${day.slice(0, 4)}`;

/** By the clock of the place it was written at. @example momentWords('2026-11-24T21:58:00+01:00') //=> '24 Nov 2026, 21:58' */
export const momentWords = (moment: Moment): string =>
  `${dateWords(moment.slice(0, 10) as Day)}, ${moment.slice(11, 16)}`;
