import { addDays, daysBetween, type Day } from '../core/calendar.ts';

/** A chance for each whole day from `from` on: none negative, together 1. */
export interface DayChances {
  readonly from: Day;
  readonly chances: readonly number[];
}

/** A chance for each number of whole days from `fromDays` on: none negative, together 1. */
export interface LagChances {
  readonly fromDays: number;
  readonly chances: readonly number[];
}

/** The days an event falls in with four chances in five, both ends included, and the likeliest. */
export interface Window {
  readonly from: Day;
  readonly likely: Day;
  readonly to: Day;
}

/** Left out at each end of a window. */
const TAIL = 0.1;
/** Sums of chances are this exact, and no better. */
const EXACT = 1e-9;

export const onDay = (day: Day): DayChances => ({ from: day, chances: [1] });

/**
 * An event that nobody saw happen: as likely on each day from the last look that found nothing to
 * the look that found it, both included, for it may have come the same evening.
 *
 * Errors: RangeError where `last` is before `first`.
 */
export function between(first: Day, last: Day): DayChances {
  const days = daysBetween(first, last) + 1;
  if (days < 1) throw new RangeError(`${last} is before ${first}.`);
  return { from: first, chances: Array.from({ length: days }, () => 1 / days) };
}

/** When the next event falls: each day the first may have fallen on, and each lag after it. */
export function convolve(start: DayChances, lag: LagChances): DayChances {
  const [days, lags] = [start.chances, lag.chances];
  const chances: number[] = [];
  for (let day = 0; day < days.length + lags.length - 1; day += 1) {
    const last = Math.min(day, days.length - 1);
    let sum = 0;
    for (let n = Math.max(0, day - lags.length + 1); n <= last; n += 1) {
      sum += (days[n] ?? 0) * (lags[day - n] ?? 0);
    }
    chances.push(sum);
  }
  return { from: addDays(start.from, lag.fromDays), chances };
}

/**
 * The same after a look on `day` that found it had not happened yet. It may still come that day.
 *
 * Undefined where no day is left: then a date before it must be wrong.
 */
export function notBefore(day: Day, chances: DayChances): DayChances | undefined {
  const gone = daysBetween(chances.from, day);
  if (gone <= 0) return chances;
  const left = chances.chances.slice(gone);
  const share = sum(left);
  return share > 0 ? { from: day, chances: left.map((chance) => chance / share) } : undefined;
}

/**
 * The 80 % window: at most one chance in ten before it and one in ten after, in whole days, so that
 * it holds 80 % or somewhat more. It reaches to the likeliest day where that lies outside, as it
 * does when she is overdue.
 */
export function window({ from, chances }: DayChances): Window {
  const likely = likeliest(chances);
  return {
    from: addDays(from, Math.min(likely, firstReaching(TAIL, chances))),
    likely: addDays(from, likely),
    to: addDays(from, Math.max(likely, lastReaching(TAIL, chances))),
  };
}

/** The chance that it has happened by the end of `day`. */
export function chanceBy(day: Day, { from, chances }: DayChances): number {
  const days = daysBetween(from, day) + 1;
  return days <= 0 ? 0 : Math.min(1, sum(chances.slice(0, days)));
}

const sum = (chances: readonly number[]): number => chances.reduce((a, b) => a + b, 0);

function firstReaching(share: number, chances: readonly number[]): number {
  let reached = 0;
  return chances.findIndex((chance) => (reached += chance) >= share - EXACT);
}

function lastReaching(share: number, chances: readonly number[]): number {
  let reached = 0;
  return chances.findLastIndex((chance) => (reached += chance) >= share - EXACT);
}

/** The first day that nothing beats, or the middle of several in a row. */
function likeliest(chances: readonly number[]): number {
  const most = Math.max(...chances) * (1 - EXACT);
  const first = chances.findIndex((chance) => chance >= most);
  let last = first;
  while ((chances[last + 1] ?? 0) >= most) last += 1;
  return Math.floor((first + last) / 2);
}
