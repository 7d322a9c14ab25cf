import { daysBetween, type Day } from '../core/calendar.ts';
import type { WeightReading } from './reading.ts';

export interface PreyShare {
  /** Mass of the meal by body mass. */
  readonly share: number;
  /** The weight it is held against, and how old that is. */
  readonly weight: WeightReading;
  readonly weightDays: number;
}

/** How large a meal is for the animal, by its last weight up to that night. Unit: grams. */
export function preyShare(
  mealG: number,
  night: Day,
  readings: readonly WeightReading[],
): PreyShare | undefined {
  const weight = readings.findLast((reading) => reading.night <= night);
  return (
    weight && {
      share: mealG / weight.massG,
      weight,
      weightDays: daysBetween(weight.night, night),
    }
  );
}
