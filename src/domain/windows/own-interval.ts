import { daysBetween, type Day } from '../core/calendar.ts';
import type { AnimalId } from '../core/ids.ts';

/** Whole days that one link took in one cycle. Known only between two looks, it is a range. */
export interface OwnInterval {
  readonly female: AnimalId;
  readonly earliestDays: number;
  readonly latestDays: number;
}

/** The first and the last day that an event may have happened on. The same day where it was seen. */
export interface Dated {
  readonly first: Day;
  readonly last: Day;
}

/** From one event to the next. Undefined where the second can only have come before the first. */
export function ownInterval(female: AnimalId, start: Dated, end: Dated): OwnInterval | undefined {
  const latestDays = daysBetween(start.first, end.last);
  if (latestDays < 0) return undefined;
  return { female, earliestDays: Math.max(0, daysBetween(start.last, end.first)), latestDays };
}
