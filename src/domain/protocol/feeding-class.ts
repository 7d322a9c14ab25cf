import { daysBetween, type Day } from '../core/calendar.ts';
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
