import { addDays, daysBetween, type Day } from '../core/calendar.ts';
import type { WeightReading } from './reading.ts';

/**
 * The day a mass is reached again, in a straight line between the two weights around it; the first of them
 * where she is there already. Undefined while she is not.
 *
 * `readings` begin with the weight to recover from, as the first after laying.
 */
export function regainedOn(readings: readonly WeightReading[], massG: number): Day | undefined {
  const at = readings.findIndex((reading) => reading.massG >= massG);
  const after = readings[at];
  const before = readings[at - 1];
  if (!after || !before) return after?.night;
  const share = (massG - before.massG) / (after.massG - before.massG);
  return addDays(before.night, Math.floor(share * daysBetween(before.night, after.night)));
}
