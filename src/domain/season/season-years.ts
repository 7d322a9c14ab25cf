import { monthOf, type Day } from '../core/calendar.ts';

const SEASON_TURNS_IN = 7;

/** A season runs from one summer to the next. @example seasonYears('2027-03-26') //=> '2026/27' */
export function seasonYears(day: Day): string {
  const year = Number(day.slice(0, 4)) - (monthOf(day) < SEASON_TURNS_IN ? 1 : 0);
  return `${year}/${String((year + 1) % 100).padStart(2, '0')}`;
}
