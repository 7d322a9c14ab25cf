import { daysBetween, type Day } from './calendar.ts';

/** @example agoWords('2026-11-20', '2026-11-24') //=> '4 days ago' */
export function agoWords(then: Day, night: Day): string {
  const days = daysBetween(then, night);
  if (days === 0) return 'tonight';
  if (days === 1) return 'last night';
  return days > 0 ? `${days} days ago` : `in ${-days} days`;
}

/** @example daysWords(2) //=> '2 days' */
export const daysWords = (n: number): string => (n === 1 ? '1 day' : `${n} days`);
