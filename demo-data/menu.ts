import type { Prey } from '../src/domain/events/feeding.ts';
import { isCoolMonth, isLeanMonth } from './nights.ts';
import type { Chance } from './random.ts';
import { isGravid, isRecovering } from './season.ts';
import { ageNights, type Snake } from './world.ts';

/** Below this a snake is fed as a youngster, whatever its age. */
const ADULT_AGE = { male: 540, female: 900 };

export const isAdult = (snake: Snake, night: number): boolean =>
  ageNights(snake, night) >= ADULT_AGE[snake.casting.sex === 'male' ? 'male' : 'female'];

/** Nights between two meals, by class and month [common practice, no source]. */
export function mealInterval(snake: Snake, night: number, month: number): number {
  if (snake.massG < 150) return 6;
  if (snake.massG < 700) return 7;
  if (snake.casting.sex === 'male') return isCoolMonth(month) ? 14 : 12;
  return isLeanMonth(month) && !isRecovering(snake, night) ? 14 : 8;
}

/** Prey as a share of body mass: smaller meals for larger animals [common practice, no source]. */
function preyShare(massG: number): number {
  if (massG < 200) return 0.125;
  if (massG < 350) return 0.105;
  if (massG < 500) return 0.085;
  if (massG < 1000) return 0.065;
  return massG < 1500 ? 0.058 : 0.05;
}

/** Rodents as they are sold, by the mass of one in grams. */
function sizeOf(eachG: number): string {
  if (eachG < 14) return 'fuzzy';
  if (eachG < 25) return 'pup';
  if (eachG < 45) return 'weaned';
  return eachG < 82 ? 'small' : 'medium';
}

export function preyFor(snake: Snake, night: number, month: number, chance: Chance): Prey {
  const pairing = isAdult(snake, night) && isCoolMonth(month);
  const smaller = pairing ? 0.85 : 1;
  const share = preyShare(snake.massG) * (snake.halfMeal ? 0.5 : smaller);
  const wantedG = snake.massG * share * chance.between(0.9, 1.1);
  const eachG = Math.max(6, Math.min(140, Math.round(wantedG)));
  // A new hatchling is tempted with what moves and smells of mouse.
  if (snake.offers < 3 && eachG < 14) {
    return { kind: 'mouse', size: 'hopper', eachG, count: 1, state: 'fresh' };
  }
  const refusing = snake.casting.closing.scene === 'refusing' && chance.happens(0.4);
  if (refusing)
    return { kind: 'soft-furred rat', size: sizeOf(eachG), eachG, count: 1, state: 'thawed' };
  // Two small ones when the right size is out of stock.
  if (eachG > 40 && eachG < 90 && !isGravid(snake, night) && chance.happens(0.03)) {
    const halfG = Math.round(eachG / 2);
    return { kind: 'rat', size: sizeOf(halfG), eachG: halfG, count: 2, state: 'thawed' };
  }
  return { kind: 'rat', size: sizeOf(eachG), eachG, count: 1, state: 'thawed' };
}
