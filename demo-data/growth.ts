import type { Chance } from './random.ts';
import { isRecovering } from './season.ts';
import { ageNights, type Snake } from './world.ts';

const HATCH_G = 66;

/** About what an animal of an age weighs before its records start. Unit: grams, days. */
export const guessedMassG = (ageDays: number, adultG: number): number =>
  Math.max(HATCH_G, adultG * (1 - Math.exp(-Math.max(0, ageDays) / 620)));

/** Hatchlings of 60 to 75 g [common practice, no source]. */
export const hatchMassG = (chance: Chance): number => chance.between(60, 75);

/**
 * Share of a meal that stays as body mass: nearly half in the young, and at adult mass just what
 * the days between two meals use up; a female that has laid puts on again what the eggs took.
 * Invented to give the growth curves keepers know.
 */
export function keptShare(snake: Snake, night: number): number {
  const grown = snake.massG / snake.casting.adultG;
  const regains = isRecovering(snake, night) ? 0.25 : 0;
  return Math.max(0.08, 0.5 - 0.22 * grown - 0.14 * Math.max(0, grown - 0.9)) + regains;
}

/** A day without food costs 0.05 to 0.17 % of mass [common practice, no source]. */
export function liveOneDay(snake: Snake, night: number): void {
  const young = ageNights(snake, night) < 150 ? 1.3 : 1;
  snake.massG -= snake.massG * snake.dailyLoss * young;
}

/** What the scale shows: within 1 % and a few grams, in the steps such a scale has. */
export function scaleReadingG(massG: number, chance: Chance): number {
  const shownG = massG * chance.between(0.995, 1.005) + chance.between(-1, 1);
  return massG < 300 ? Math.round(shownG * 10) / 10 : Math.round(shownG);
}
