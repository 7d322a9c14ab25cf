import { tenth } from '../core/tenth.ts';
import { daysBetween } from '../core/calendar.ts';
import { showGrams } from '../core/units.ts';
import { agoWords } from '../core/day-words.ts';
import type { Protocol } from '../protocol/values.ts';
import type { Animal } from '../state/animal.ts';
import type { StageFacts } from './standing.ts';

const DAYS_A_MONTH = 30.44;

/** An age in months, where the hatch day is known. */
export const ageMonths = (animal: Animal, { night }: StageFacts): number | undefined =>
  animal.hatchedDay === undefined
    ? undefined
    : daysBetween(animal.hatchedDay, night) / DAYS_A_MONTH;

/** @example yearsWords(30) //=> '2.5 years' */
function yearsWords(months: number): string {
  const years = tenth(months / 12);
  return years === 1 ? '1 year' : `${years} years`;
}

/** From what mass and age the keeper breeds one of its sex. */
export const breedingFloor = (
  { sex }: Animal,
  { maleFromG, maleFromMonths, femaleFromG, femaleFromMonths }: Protocol,
): { readonly fromG: number; readonly fromMonths: number } =>
  sex === 'male'
    ? { fromG: maleFromG, fromMonths: maleFromMonths }
    : { fromG: femaleFromG, fromMonths: femaleFromMonths };

/** A weight against the floor. */
export const massWords = (
  { massG, at }: Animal['weighings'][number],
  fromG: number,
  { nightOf, night }: Pick<StageFacts, 'nightOf' | 'night'>,
): string =>
  `${showGrams(massG)}, weighed ${agoWords(nightOf(at), night)}; your floor is ${showGrams(fromG)}.`;

/**
 * What says that a snake is not grown enough to breed, a sentence each; empty where nothing does.
 *
 * What is not known is not held against it. Source: readySize.
 */
export function notGrown(animal: Animal, facts: StageFacts): readonly string[] {
  const { fromG, fromMonths } = breedingFloor(animal, facts.protocol);
  const last = animal.weighings.at(-1);
  const months = ageMonths(animal, facts);
  const reasons: string[] = [];
  if (last && last.massG < fromG && !hasLaid(animal)) {
    reasons.push(massWords(last, fromG, facts));
  }
  if (months !== undefined && months < fromMonths) {
    reasons.push(`${yearsWords(months)} old; you breed from ${yearsWords(fromMonths)}.`);
  }
  return reasons;
}

export const hasLaid = ({ season, pastSeasons }: Animal): boolean =>
  [...pastSeasons, season].some((each) => each?.laid !== undefined);

// On the scale of five: 1 very thin, 3 good, 5 very fat.
const THIN = 2;
const VERY_FAT = 5;

/** What a condition on record says against breeding. Source: readySize. */
export function poorCondition(animal: Animal): string | undefined {
  const score = animal.condition?.score;
  if (score === undefined) return undefined;
  if (score <= THIN) return `Condition ${score} of 5: thin.`;
  return score >= VERY_FAT ? `Condition ${score} of 5: very fat.` : undefined;
}

/**
 * Why she has not recovered from her last clutch; undefined when she has, or never laid.
 *
 * Her last mass is held against the one before that season. Source: recovery.
 */
export function notRecovered(animal: Animal, facts: StageFacts): string | undefined {
  const { protocol, night, nightOf } = facts;
  const season = [...animal.pastSeasons, animal.season].findLast((each) => each?.laid);
  if (!season?.laid || season.closed?.why === 'recovered') return undefined;
  const laidOn = nightOf(season.laid.at);
  const last = animal.weighings.findLast(({ at }) => nightOf(at) > laidOn);
  if (last && season.baselineG !== undefined) {
    const share = last.massG / season.baselineG;
    return share < protocol.recoveredShare
      ? `${showGrams(last.massG)} is ${Math.floor(share * 100)} % of the ${showGrams(season.baselineG)} before her last season.`
      : undefined;
  }
  const since = daysBetween(laidOn, night);
  return since < protocol.recoveringDays
    ? `Laid ${agoWords(laidOn, night)}, and not weighed back since.`
    : undefined;
}
