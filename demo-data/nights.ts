import { addDays, daysBetween, instantMs, monthOf } from '../src/domain/core/calendar.ts';
import type { Day, Moment } from '../src/domain/core/calendar.ts';

export const DAY_MS = 86_400_000;

/** The room nights of a history, numbered from 0; number `total` is the last night, not yet worked. */
export interface Nights {
  readonly total: number;
  /** Also for numbers below 0, long before the history. */
  day(night: number): Day;
  month(night: number): number;
  /** The first of September at or before a night: where a breeding season is counted from. */
  seasonStart(night: number): number;
  /** Milliseconds since 1970 UTC of a local time. Unit: minutes since the local midnight before. */
  ms(night: number, minute: number): number;
}

export function nightsUpTo(lastNight: Day, total: number, offsetMin: number): Nights {
  const first = addDays(lastNight, -total);
  const firstMidnightMs = instantMs(`${first}T00:00:00Z` as Moment) - offsetMin * 60_000;
  const days = Array.from({ length: total + 1 }, (_, night) => addDays(first, night));
  const day = (night: number): Day => days[night] ?? addDays(first, night);
  return {
    total,
    day,
    month: (night) => monthOf(day(night)),
    seasonStart(night) {
      const today = day(night);
      const year = Number(today.slice(0, 4)) - (monthOf(today) < 9 ? 1 : 0);
      return night - daysBetween(`${year}-09-01` as Day, today);
    },
    ms: (night, minute) => firstMidnightMs + night * DAY_MS + minute * 60_000,
  };
}

/** April to July, when a female that laid no eggs is only kept in condition. */
export const isLeanMonth = (month: number): boolean => month >= 4 && month <= 7;

/** October to March: the months of cool nights, pairing and slow appetites. */
export const isCoolMonth = (month: number): boolean => month >= 10 || month <= 3;
