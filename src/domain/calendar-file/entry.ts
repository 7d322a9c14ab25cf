import type { Day } from '../core/calendar.ts';

interface Dated {
  /**
   * Names the thing itself, not this file: the same in each export, so that taking the file in again
   * moves the entry instead of doubling it. Unique in the world, as the ids of animals are.
   */
  readonly uid: string;
  /** "Sorrel: lay". The days are put behind it. */
  readonly title: string;
  /** What it rests on, in plain sentences. */
  readonly details: string;
  readonly firstDay: Day;
  /** The last day that belongs to it; not before the first. */
  readonly lastDay: Day;
}

/** Whole days on which something is expected or due. */
export interface WindowEntry extends Dated {
  readonly kind: 'window';
  readonly likelyDay?: Day | undefined;
  /** When to ring, in the local time of wherever the calendar is. `hour` is 0 to 23. */
  readonly alarmAt?: { readonly day: Day; readonly hour: number } | undefined;
}

/** A look at the same local hour of each of its days; rings at that hour. */
export interface LookEntry extends Dated {
  readonly kind: 'look';
  /** 0 to 23. */
  readonly hour: number;
}

export type CalendarEntry = WindowEntry | LookEntry;
