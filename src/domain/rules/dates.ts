import { daysBetween, type Day } from '../core/calendar.ts';

/** @example agoWords('2026-11-20', '2026-11-24') //=> '4 days ago' */
export function agoWords(then: Day, night: Day): string {
  const days = daysBetween(then, night);
  if (days === 0) return 'tonight';
  if (days === 1) return 'last night';
  return days > 0 ? `${days} days ago` : `in ${-days} days`;
}

export const days = (n: number): string => (n === 1 ? '1 day' : `${n} days`);
