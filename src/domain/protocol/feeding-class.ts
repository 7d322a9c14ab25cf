import { daysBetween, monthOf, type Day } from '../core/calendar.ts';
import type { Animal } from '../state/animal.ts';
import type { Protocol } from './values.ts';

export type FeedingClass = 'hatchling' | 'grower' | 'male' | 'female';

const HATCHLING_DAYS = 180;
const GROWING_DAYS = 900;

/**
 * How an animal is fed: by its last mass, or by its age where it was never weighed.
 *
 * One whose sex is not known is fed as a female outside the season.
 */
export function feedingClass(animal: Animal, night: Day, protocol: Protocol): FeedingClass {
  const massG = animal.weighings.at(-1)?.massG;
  if (massG !== undefined) {
    if (massG < protocol.hatchlingBelowG) return 'hatchling';
    if (massG < protocol.adultFromG) return 'grower';
  } else if (animal.hatchedDay !== undefined) {
    const ageDays = daysBetween(animal.hatchedDay, night);
    if (ageDays < HATCHLING_DAYS) return 'hatchling';
    if (ageDays < GROWING_DAYS) return 'grower';
  }
  return animal.sex === 'male' ? 'male' : 'female';
}

const isSeasonForMales = (night: Day): boolean => monthOf(night) >= 10 || monthOf(night) <= 3;
const isSeasonForFemales = (night: Day): boolean => monthOf(night) >= 8 || monthOf(night) <= 3;

/** Days from one offer to the next, and the rhythm in words. */
export function feedingInterval(
  animal: Animal,
  night: Day,
  protocol: Protocol,
): { readonly days: number; readonly words: string } {
  switch (feedingClass(animal, night, protocol)) {
    case 'hatchling':
      return { days: protocol.feedHatchlingDays, words: 'a hatchling' };
    case 'grower':
      return { days: protocol.feedGrowerDays, words: 'a grower' };
    case 'male':
      return isSeasonForMales(night)
        ? { days: protocol.feedMaleSeasonDays, words: 'an adult male in the season' }
        : { days: protocol.feedMaleDays, words: 'an adult male in summer' };
    case 'female':
      return animal.sex === 'female' && isSeasonForFemales(night)
        ? { days: protocol.feedFemaleSeasonDays, words: 'an adult female in the season' }
        : { days: protocol.feedFemaleDays, words: 'an adult on maintenance' };
  }
}

/** Days from one weighing to the next. */
export function weighingInterval(animal: Animal, night: Day, protocol: Protocol): number {
  const kind = feedingClass(animal, night, protocol);
  return kind === 'hatchling' || (kind === 'male' && isSeasonForMales(night))
    ? protocol.weighOftenDays
    : protocol.weighDays;
}
