import { instantMs, type Moment } from '../core/calendar.ts';
import { preyG } from '../protocol/planned-meal.ts';
import type { Animal } from '../state/animal.ts';

export interface FoodBalance {
  readonly gainedG: number;
  /** Of the meals eaten from the first weight on and before the last one. */
  readonly eatenG: number;
  /** Gain by food; undefined where nothing was eaten. */
  readonly ratio?: number | undefined;
  /** More was gained than food can give: meals are missing from the record. */
  readonly mealsMissing: boolean;
}

type Weight = { readonly at: Moment; readonly massG: number };

/** No snake turns half its food into itself: 0.19–0.37 in the open record. Source: openRecord. */
const MOST_RATIO = 0.5;
/** What a weight may gain by drinking. */
const WATER_SHARE = 0.05;

/**
 * What was gained between two weights for what was eaten. A check of the record, and no measure of merit.
 *
 * Undefined where a meal has no mass.
 */
export function foodBalance(
  from: Weight,
  to: Weight,
  offers: Animal['offers'],
): FoodBalance | undefined {
  const eaten = offers.filter(
    ({ at, outcome }) =>
      outcome === 'ate' && instantMs(at) >= instantMs(from.at) && instantMs(at) < instantMs(to.at),
  );
  const masses = eaten.map(({ prey }) => preyG(prey));
  if (!masses.every((massG) => massG !== undefined)) return undefined;
  const eatenG = masses.reduce((sum, massG) => sum + massG, 0);
  const gainedG = to.massG - from.massG;
  return {
    gainedG,
    eatenG,
    ratio: eatenG > 0 ? gainedG / eatenG : undefined,
    mealsMissing: gainedG > MOST_RATIO * eatenG + WATER_SHARE * from.massG,
  };
}
