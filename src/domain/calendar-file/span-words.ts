import { monthOf, type Day } from '../core/calendar.ts';

const MONTHS = 'Jan Feb Mar Apr May June July Aug Sept Oct Nov Dec'.split(' ');

const month = (day: Day): string => MONTHS[monthOf(day) - 1] ?? '';
const date = (day: Day): number => Number(day.slice(8, 10));

/** @example dayWords('2027-05-16') //=> '16 May' */
export const dayWords = (day: Day): string => `${date(day)} ${month(day)}`;

/** @example spanWords('2027-05-12', '2027-05-22') //=> '12–22 May' */
export const spanWords = (first: Day, last: Day): string =>
  first.slice(0, 7) === last.slice(0, 7)
    ? `${date(first)}–${dayWords(last)}`
    : `${dayWords(first)} – ${dayWords(last)}`;
