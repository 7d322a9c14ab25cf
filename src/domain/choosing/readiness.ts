import {
  ageMonths,
  breedingFloor,
  notGrown,
  notRecovered,
  poorCondition,
} from '../season/fitness.ts';
import type { Picture } from '../picture/picture.ts';
import type { Animal } from '../state/animal.ts';

/** Below this part of the age the keeper breeds from, an animal is no candidate. An assumption. */
const CANDIDATE_FROM = 1 / 2;

/** Of either sex, living, and not a young one: size and age are told as reasons, and exclude nobody. */
export function candidatesIn(picture: Picture): {
  readonly females: readonly Animal[];
  readonly males: readonly Animal[];
} {
  const { facts } = picture;
  const grown = picture.living().filter((animal) => {
    const { fromMonths } = breedingFloor(animal, facts.protocol);
    const months = ageMonths(animal, facts);
    return months === undefined || months >= fromMonths * CANDIDATE_FROM;
  });
  return {
    females: grown.filter(({ sex }) => sex === 'female'),
    males: grown.filter(({ sex }) => sex === 'male'),
  };
}

/** What speaks against breeding from it now, a sentence each. */
export function notReady(animal: Animal, { facts }: Picture): readonly string[] {
  const reasons = [
    ...notGrown(animal, facts),
    poorCondition(animal),
    animal.sex === 'female' ? notRecovered(animal, facts) : undefined,
    animal.quarantine ? 'In quarantine.' : undefined,
    animal.graveSign ? `A grave sign is on record: ${animal.graveSign.system}.` : undefined,
  ];
  return reasons.filter((each) => each !== undefined);
}
