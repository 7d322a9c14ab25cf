import type { Day } from '../core/calendar.ts';
import type { Outcome } from '../events/feeding.ts';

export interface OfferNight {
  readonly night: Day;
  readonly outcome: Outcome;
  /** It was helped to eat: no meal of its own, and no refusal either. */
  readonly isAssisted?: boolean | undefined;
}

export interface RefusalRun {
  /** Refusals in a row since the last meal it took unaided. */
  readonly refusals: number;
  /** The night of that meal; undefined where none is on record. */
  readonly lastMeal?: Day | undefined;
  readonly firstRefusal?: Day | undefined;
  /** Times it was helped since. */
  readonly assisted: number;
}

/** The run of refusals under way. A meal left overnight is neither; one taken in part is a meal. Offers run from oldest to newest. */
export function refusalRun(offers: readonly OfferNight[]): RefusalRun {
  const at = offers.findLastIndex(
    ({ outcome, isAssisted }) => isAssisted !== true && (outcome === 'ate' || outcome === 'partly'),
  );
  const since = offers.slice(at + 1);
  const refused = since.filter(
    ({ outcome, isAssisted }) => isAssisted !== true && outcome === 'refused',
  );
  return {
    refusals: refused.length,
    lastMeal: offers[at]?.night,
    firstRefusal: refused[0]?.night,
    assisted: since.filter(({ isAssisted }) => isAssisted === true).length,
  };
}
