import { daysBetween, type Day } from '../core/calendar.ts';
import type { AnimalId } from '../core/ids.ts';
import type { Dated, OwnInterval } from '../windows/own-interval.ts';
import { between, type Progress } from './progress.ts';

/**
 * What a clutch that has pipped teaches of the next: days as at 31.5 °C from laying to the first pip.
 * `progress` begins with `laid.first`. Undefined where the pip can only have come before the eggs.
 */
export function ownPip(
  female: AnimalId,
  laid: Dated,
  pipped: Dated,
  progress: Progress,
): OwnInterval | undefined {
  const day = (date: Day): number => daysBetween(laid.first, date);
  if (day(pipped.last) < 0) return undefined;
  const least = between(progress, day(laid.last), Math.max(day(laid.last), day(pipped.first)));
  const most = between(progress, 0, day(pipped.last));
  return { female, earliestDays: Math.round(least), latestDays: Math.round(most) };
}
