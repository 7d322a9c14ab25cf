import { daysBetween, instantMs } from '../core/calendar.ts';
import { agoWords } from '../core/day-words.ts';
import { preyG } from '../protocol/planned-meal.ts';
import type { Animal } from '../state/animal.ts';
import type { RoomFacts } from './rule.ts';

/** What it ate last; undefined where that came up again. */
function lastMeal({ offers, regurgitations }: Animal) {
  const meal = offers.findLast(({ outcome }) => outcome === 'ate' || outcome === 'partly');
  const broughtUp = regurgitations.at(-1);
  const isKept = meal && !(broughtUp && instantMs(broughtUp) >= instantMs(meal.at));
  return isKept ? meal : undefined;
}

/** Nights that a meal as large as the last one asks for, beyond what any meal does. Source: digestion. */
export function largeMealNights(animal: Animal, restDays: number, { protocol }: RoomFacts): number {
  const meal = lastMeal(animal);
  const mealG = meal && preyG(meal.prey);
  const massG = animal.weighings.at(-1)?.massG;
  const isLarge =
    mealG !== undefined && massG !== undefined && mealG >= massG * protocol.largeMealShare;
  return isLarge ? Math.max(0, protocol.largeMealRestDays - restDays) : 0;
}

/** That it still digests, in words, where any meal asks for so many days of rest. Source: digestion. */
export function digesting(animal: Animal, restDays: number, room: RoomFacts): string | undefined {
  const meal = lastMeal(animal);
  if (!meal) return undefined;
  const night = room.nightOf(meal.at);
  const extra = largeMealNights(animal, restDays, room);
  if (daysBetween(night, room.night) >= restDays + extra) return undefined;
  return `digesting${extra > 0 ? ' a large meal' : ''}, ate ${agoWords(night, room.night)}`;
}
