import { daysBetween, type Day } from '../core/calendar.ts';
import type { Protocol } from '../protocol/values.ts';
import type { WeightReading } from '../weight/reading.ts';
import type { Mark } from './follow.ts';

/** A night's weight without what may be in the gut. */
export interface NightMark extends Mark {
  readonly night: Day;
}

/** A meal of unknown mass, as a share of body mass. Source: mealShare. */
const USUAL_MEAL_SHARE = 0.1;
/** SD of a value of which only the two ends are known, as a share of the range. */
const EVEN_SPREAD = 1 / Math.sqrt(12);

/**
 * The weights as marks to run a course through, one a night. Of a meal that may be in the gut, half is
 * taken off, and the mark is as much less certain; the scale's and the body's own noise is in every mark.
 */
export function marksOf(
  readings: readonly WeightReading[],
  protocol: Protocol,
): readonly NightMark[] {
  const [first] = readings;
  const marks = readings.map((reading) => {
    const { night } = reading;
    const { takenOffG, spreadG } = gutOf(reading);
    const massG = reading.massG - takenOffG;
    const error = Math.hypot(protocol.weightNoiseShare, spreadG / massG);
    const days = daysBetween(first?.night ?? night, night);
    return { night, massG, days, error };
  });
  // Of several in one night, the last.
  return marks.filter(({ night }, i) => marks[i + 1]?.night !== night);
}

function gutOf({ gut, massG }: WeightReading): { takenOffG: number; spreadG: number } {
  if (gut.kind === 'empty') return { takenOffG: 0, spreadG: 0 };
  const usualG = USUAL_MEAL_SHARE * massG;
  // Where no meals are kept, nothing is taken off: it would be taken off every weight.
  if (gut.kind === 'unknown') return { takenOffG: 0, spreadG: EVEN_SPREAD * usualG };
  // No more than a third of the body: beyond that, the meal's mass must be wrong.
  const mealG = Math.min(gut.mealG ?? usualG, massG / 3);
  return { takenOffG: mealG / 2, spreadG: EVEN_SPREAD * mealG };
}
