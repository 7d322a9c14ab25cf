import { instantMs, type Moment } from '../core/calendar.ts';
import type { WeightReading } from './reading.ts';

/** A laying, as far as weights need it. */
export interface Laying {
  readonly at: Moment;
  /** The last look that found no eggs: the laying was after it. */
  readonly notBefore?: Moment | undefined;
  readonly clutchMassG?: number | undefined;
}

export const isAfter = ({ at }: WeightReading, laying: Laying): boolean =>
  instantMs(at) >= instantMs(laying.at);

/** A weight between the last look that found none and the eggs is neither before nor after. */
const isBefore = ({ at }: WeightReading, laying: Laying): boolean =>
  instantMs(at) < instantMs(laying.notBefore ?? laying.at);

/** The weights since the last laying: no line and no maximum runs across one. */
export function sinceLaying(
  readings: readonly WeightReading[],
  layings: readonly Laying[],
): readonly WeightReading[] {
  return readings.filter((reading) => layings.every((laying) => isAfter(reading, laying)));
}

/** The laying that lies between two weights, or may. */
export const layingBetween = (
  before: WeightReading,
  after: WeightReading,
  layings: readonly Laying[],
): Laying | undefined =>
  layings.findLast((laying) => !isAfter(before, laying) && !isBefore(after, laying));

/**
 * How far the eggs and the mother after laying are from the mother before it.
 *
 * Unit: grams; positive where the parts weigh more than the whole, as where she drank in between.
 */
export const layingBalanceG = (beforeG: number, afterG: number, clutchMassG: number): number =>
  afterG + clutchMassG - beforeG;
