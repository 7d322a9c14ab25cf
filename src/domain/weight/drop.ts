import { daysBetween, type Day } from '../core/calendar.ts';
import { sinceLaying, type Laying } from './laying.ts';
import type { WeightReading } from './reading.ts';

export type Since = 'the weight before' | 'its highest weight' | 'its weight before the season';

/** From an earlier weight to the newest one. */
export interface Drop {
  readonly since: Since;
  readonly before: WeightReading;
  readonly after: WeightReading;
  readonly days: number;
  /** Negative where it has gained. */
  readonly lostG: number;
  /** Of the earlier mass. */
  readonly share: number;
}

/** So far above both its neighbours, within so many days each, a weight is taken for a slip. */
const ALONE = { share: 0.25, days: 60 };

/**
 * Whether a weight towers above the ones before and after it, as a wrong entry does: it is no maximum
 * then. The first and the newest weight never do, for nothing stands on their other side.
 */
export function standsAlone(
  reading: WeightReading,
  readings: readonly WeightReading[],
): { readonly before: WeightReading; readonly after: WeightReading } | undefined {
  const at = readings.indexOf(reading);
  const before = readings[at - 1];
  const after = readings[at + 1];
  if (!before || !after) return undefined;
  const isFar = (other: WeightReading): boolean =>
    reading.massG > other.massG * (1 + ALONE.share) &&
    Math.abs(daysBetween(reading.night, other.night)) <= ALONE.days;
  return isFar(before) && isFar(after) ? { before, after } : undefined;
}

export function dropBetween(since: Since, before: WeightReading, after: WeightReading): Drop {
  const lostG = before.massG - after.massG;
  const days = daysBetween(before.night, after.night);
  return { since, before, after, days, lostG, share: lostG / before.massG };
}

/** From the weight before the newest one, laying or not. */
export function lastDrop(readings: readonly WeightReading[]): Drop | undefined {
  const [before, after] = readings.slice(-2);
  return before && after && dropBetween('the weight before', before, after);
}

/**
 * From the running maximum: the highest weight of the last `withinDays`, since the last laying, that does
 * not stand alone. The newest of several equal ones.
 */
export function peakDrop(
  readings: readonly WeightReading[],
  layings: readonly Laying[],
  withinDays: number,
): Drop | undefined {
  const after = readings.at(-1);
  if (!after) return undefined;
  let peak: WeightReading | undefined;
  for (const reading of sinceLaying(readings.slice(0, -1), layings)) {
    const isRecent = daysBetween(reading.night, after.night) <= withinDays;
    const isHighest = reading.massG >= (peak?.massG ?? 0);
    if (isRecent && isHighest && !standsAlone(reading, readings)) peak = reading;
  }
  return peak && dropBetween('its highest weight', peak, after);
}

/** From the last weight before the season opened. */
export function seasonDrop(readings: readonly WeightReading[], openedNight: Day): Drop | undefined {
  const before = readings.findLast(({ night }) => night <= openedNight);
  const after = readings.at(-1);
  return before && after && after !== before
    ? dropBetween('its weight before the season', before, after)
    : undefined;
}
