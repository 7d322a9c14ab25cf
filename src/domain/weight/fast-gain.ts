import { daysBetween } from '../core/calendar.ts';
import { showGrams } from '../core/units.ts';
import type { Protocol } from '../protocol/values.ts';
import { sinceLaying, type Laying } from './laying.ts';
import type { WeightReading } from './reading.ts';
import { daysWords } from '../core/day-words.ts';
import { percentWords } from './words.ts';

export interface FastGain {
  readonly before: WeightReading;
  readonly after: WeightReading;
  /** Share of body mass gained in 30 days, at the least: what may be gut is taken off. */
  readonly monthlyShare: number;
  readonly caution: string;
}

/** Over less than this, a gain is a meal. */
const AT_LEAST_DAYS = 28;
const AT_MOST_DAYS = 92;

/**
 * Growing too fast: over four weeks to three months up to the newest weight, from `adultFromG` on. A female that
 * regains what her eggs took is told apart by `layings`: give the ones she is still recovering from, and nothing is
 * said until she has her weight before them again.
 *
 * Source: powerFeeding.
 */
export function fastGain(
  readings: readonly WeightReading[],
  layings: readonly Laying[],
  protocol: Protocol,
): FastGain | undefined {
  const after = readings.at(-1);
  if (!after || isRegaining(readings, layings)) return undefined;
  const gutG = after.gut.kind === 'may be full' ? after.gut.mealG : 0;
  const before = sinceLaying(readings, layings).findLast(({ night }) => {
    return daysBetween(night, after.night) >= AT_LEAST_DAYS;
  });
  if (!before || gutG === undefined || before.massG < protocol.adultFromG) return undefined;
  const days = daysBetween(before.night, after.night);
  if (days > AT_MOST_DAYS) return undefined;
  const monthlyShare = ((after.massG - gutG) / before.massG) ** (30 / days) - 1;
  if (monthlyShare <= protocol.fastGainShare) return undefined;
  return {
    before,
    after,
    monthlyShare,
    caution: `From ${showGrams(before.massG)} to ${showGrams(after.massG)} in ${daysWords(days)}: over ${percentWords(protocol.fastGainShare)} a month makes fat animals. Smaller or fewer meals; judge its condition by eye and hand.`,
  };
}

function isRegaining(readings: readonly WeightReading[], layings: readonly Laying[]): boolean {
  const since = sinceLaying(readings, layings);
  const before = readings.filter((reading) => !since.includes(reading)).at(-1);
  return (since.at(-1)?.massG ?? Infinity) < (before?.massG ?? 0);
}
