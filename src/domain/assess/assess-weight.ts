import { showGrams } from '../core/units.ts';
import { daysBetween } from '../core/calendar.ts';
import type { Draft } from '../events/event.ts';
import type { Picture } from '../picture/picture.ts';
import { preyG } from '../protocol/planned-meal.ts';
import type { Animal } from '../state/animal.ts';
import type { Verdict } from './doubt.ts';
import { weightSlips } from './weight-slips.ts';

type Weighed = Extract<Draft, { type: 'weighed' }>;

const LIMITS_G = { low: 15, high: 6_000 };

/** Objections to a mass. `previous` is what was weighed just before it, if anything. */
export function assessWeight(
  { massG }: Weighed,
  animal: Animal,
  picture: Picture,
  previous: { readonly name: string; readonly massG: number } | undefined,
): Verdict {
  const { facts } = picture;
  const agoDays = (at: Parameters<typeof facts.nightOf>[0]) =>
    daysBetween(facts.nightOf(at), facts.night);
  const last = lastTrusted(animal);
  const meal = animal.offers.findLast(({ outcome }) => outcome === 'ate');
  const { doubts, notes } = weightSlips({
    massG,
    last: last && { massG: last.massG, daysAgo: agoDays(last.at) },
    ageDays: animal.hatchedDay && daysBetween(animal.hatchedDay, facts.night),
    sex: animal.sex,
    lastMeal: meal && { massG: preyG(meal.prey) ?? 0, daysAgo: agoDays(meal.at) },
    taresG: taresOf(animal),
    previousEntry: previous,
    neighbours: neighboursOf(animal, picture),
  });
  if (massG >= LIMITS_G.low && massG <= LIMITS_G.high) return { refusals: [], doubts, notes };
  return {
    refusals: [
      {
        code: 'mass-out-of-range',
        message: `${showGrams(massG)} cannot be a ball python: ${showGrams(LIMITS_G.low)} to ${showGrams(LIMITS_G.high)}.`,
      },
    ],
    doubts,
    notes,
  };
}

/**
 * The last mass; where that one was doubted when it was written, the middle of the last three, or
 * the one before it where there are only two.
 */
function lastTrusted(
  animal: Animal,
): { readonly massG: number; readonly at: Animal['weighings'][number]['at'] } | undefined {
  const last = animal.weighings.at(-1);
  if (!last?.doubt) return last;
  const three = animal.weighings.slice(-3);
  if (three.length < 3) return three[0];
  const [, middle = last] = three.toSorted((a, b) => a.massG - b.massG);
  return { massG: middle.massG, at: last.at };
}

function taresOf(animal: Animal): readonly number[] {
  return animal.recent.flatMap((event) =>
    event.type === 'weighed' && event.tareG !== undefined ? [event.tareG] : [],
  );
}

/** Those in the same rack row, who are the usual mix-up. */
function neighboursOf(animal: Animal, picture: Picture) {
  const own = animal.tub === undefined ? undefined : picture.tub(animal.tub);
  if (!own) return [];
  return picture
    .walk()
    .filter((tub) => tub.rack === own.rack && tub.id !== own.id && Math.abs(tub.row - own.row) <= 1)
    .flatMap((tub) => picture.ownersOf(tub.id))
    .flatMap(({ name, weighings }) => {
      const massG = weighings.at(-1)?.massG;
      return massG === undefined ? [] : [{ name, massG }];
    });
}
