import { DAY_MIN, UNREAD, type Warmth } from './daily-warmth.ts';

/**
 * Development of each night and day, in days as at 31.5 °C: what is known of it, and what is only
 * taken for granted because nobody read, or because it is still to come.
 */
export interface Progress {
  readonly known: readonly number[];
  readonly taken: readonly number[];
}

/** What is not known is taken to have gone at this pace; `days` in all. */
export function progressOf(warmth: readonly Warmth[], days: number, pace: number): Progress {
  const known: number[] = [];
  const taken: number[] = [];
  for (let day = 0; day < days; day += 1) {
    const { knownMin, effectiveMin } = warmth[day] ?? UNREAD;
    known.push(effectiveMin / DAY_MIN);
    taken.push((1 - knownMin / DAY_MIN) * pace);
  }
  return { known, taken };
}

/** Days whose warmth says what the ones without readings were like. */
const RECENT_DAYS = 14;
/** So much of it must be known. */
const LEAST_MIN = DAY_MIN;

/** The pace of the last days that were read; `otherwise` where too little was. */
export function recentPace(warmth: readonly Warmth[], otherwise: number): number {
  const read = warmth.filter(({ knownMin }) => knownMin > 0).slice(-RECENT_DAYS);
  const knownMin = read.reduce((sum, each) => sum + each.knownMin, 0);
  if (knownMin < LEAST_MIN) return otherwise;
  return read.reduce((sum, each) => sum + each.effectiveMin, 0) / knownMin;
}

/**
 * Development from the middle of one night and day to the middle of another, in days as at 31.5 °C.
 * `factor` stretches what is taken for granted.
 */
export function between({ known, taken }: Progress, from: number, to: number, factor = 1): number {
  const of = (day: number): number => (known[day] ?? 0) + factor * (taken[day] ?? 0);
  if (from === to) return 0;
  let sum = (of(from) + of(to)) / 2;
  for (let day = from + 1; day < to; day += 1) sum += of(day);
  return sum;
}
