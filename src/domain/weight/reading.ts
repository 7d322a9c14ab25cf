import { daysBetween, instantMs, type Day, type Moment } from '../core/calendar.ts';
import { preyG } from '../protocol/planned-meal.ts';
import type { Protocol } from '../protocol/values.ts';
import type { Animal } from '../state/animal.ts';

/** What of a weight may be a meal that is not yet digested. */
export type Gut =
  | { readonly kind: 'empty' }
  /** `mealG` is what was eaten within `gutDays`: no more than that can be gut; absent where a meal has no mass. */
  | { readonly kind: 'may be full'; readonly mealG?: number | undefined }
  /** The record of meals does not reach back far enough to say. */
  | { readonly kind: 'unknown' };

/** One weight, and what has to be known to compare it with another. */
export interface WeightReading {
  readonly id: string;
  readonly at: Moment;
  readonly night: Day;
  readonly massG: number;
  /** Nights since it last ate, by the records; undefined where no meal is on record before. */
  readonly daysSinceMeal?: number | undefined;
  readonly gut: Gut;
}

export type WeightSources = Pick<Animal, 'weighings' | 'offers' | 'regurgitations' | 'hatchedDay'>;

type Offer = Animal['offers'][number];

/** A hatchling is not offered food before its first shed, and lives on yolk. Source: firstFood. */
const ON_YOLK_DAYS = 14;

/**
 * The weights of one animal, from the oldest to the newest.
 *
 * A meal that was left overnight may have been eaten, so it may be in the gut, and still is no meal.
 * What was brought up again is not in it. A weight and a meal of the same moment: weighed first.
 */
export function weightReadings(
  { weighings, offers, regurgitations, hatchedDay }: WeightSources,
  nightOf: (moment: Moment) => Day,
  protocol: Protocol,
): readonly WeightReading[] {
  return weighings.map(({ id, at, massG }) => {
    const night = nightOf(at);
    const time = instantMs(at);
    const before = offers.filter((offer) => instantMs(offer.at) < time);
    const broughtUp = regurgitations.findLast((moment) => instantMs(moment) <= time);
    const swallowed = before.filter(
      (offer) =>
        offer.outcome !== 'refused' &&
        (broughtUp === undefined || instantMs(offer.at) > instantMs(broughtUp)),
    );
    const daysAgo = (offer: Offer): number => daysBetween(nightOf(offer.at), night);
    const meal = swallowed.findLast(({ outcome }) => outcome !== 'left');
    const recent = swallowed.filter((offer) => daysAgo(offer) <= protocol.gutDays);
    const [first] = before;
    const isKnown = first !== undefined && daysAgo(first) > protocol.gutDays;
    const onYolk = hatchedDay !== undefined && daysBetween(hatchedDay, night) <= ON_YOLK_DAYS;
    return {
      id,
      at,
      night,
      massG,
      daysSinceMeal: meal && daysAgo(meal),
      gut: gutOf(recent, isKnown || onYolk),
    };
  });
}

function gutOf(recent: readonly Offer[], isKnown: boolean): Gut {
  if (recent.length === 0) return { kind: isKnown ? 'empty' : 'unknown' };
  const masses = recent.map(({ prey }) => preyG(prey));
  const mealG = masses.every((massG) => massG !== undefined)
    ? masses.reduce((sum, massG) => sum + massG, 0)
    : undefined;
  return { kind: 'may be full', mealG };
}

/** Weights that may be compared, and whether a full gut had to be let in for want of others. */
export interface Alike {
  readonly readings: readonly WeightReading[];
  readonly isMixed: boolean;
}

/**
 * Like compared with like: the weights of an empty gut where there are `atLeast` so many nights of
 * them, else all.
 */
export function alike(readings: readonly WeightReading[], atLeast: number): Alike {
  const empty = readings.filter(({ gut }) => gut.kind !== 'may be full');
  return new Set(empty.map(({ night }) => night)).size >= atLeast
    ? { readings: empty, isMixed: false }
    : { readings, isMixed: empty.length < readings.length };
}
