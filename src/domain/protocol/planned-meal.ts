import { showGrams } from '../core/units.ts';
import type { Prey } from '../events/feeding.ts';
import type { Animal } from '../state/animal.ts';
import { mealShares, preySizes } from './prey-sizes.ts';

const RAT_FROM_G = 200;
/** A meal this far from the aim is still "the same as last time". */
const NEAR = { low: 0.65, high: 1.45 };

/**
 * The meal to offer: what it ate last, moved to the size that fits its body mass today.
 *
 * `share` overrides the share of body mass, as after a regurgitation. Without a weight it is what
 * was offered last, or a small one to begin with.
 */
export function plannedMeal(animal: Animal, share?: number): Prey {
  const eaten = animal.offers.findLast(({ outcome }) => outcome === 'ate')?.prey;
  const last = eaten ?? animal.offers.at(-1)?.prey;
  const massG = animal.weighings.at(-1)?.massG;
  if (massG === undefined) return last ?? prey('rat', 'small', 65);

  const aimG = massG * (share ?? mealShare(massG));
  if (last && share === undefined && isNear((last.eachG ?? 0) * last.count, aimG)) return last;

  const kind = last?.kind ?? (massG < RAT_FROM_G ? 'mouse' : 'rat');
  // Rats come in every size: the smallest is the plan where even that is more than the aim.
  const closest = closestSize(kind, aimG, 2.5) ?? closestSize('rat', aimG, Infinity);
  return { ...prey(kind, 'small', 65), ...closest, state: last?.state ?? 'thawed' };
}

export const mealShare = (massG: number): number =>
  mealShares.find(({ belowG }) => massG < belowG)?.share ?? 0;

const isNear = (mealG: number, aimG: number): boolean =>
  mealG >= aimG * NEAR.low && mealG <= aimG * NEAR.high;

function closestSize(kind: Prey['kind'], aimG: number, mostTimesOff: number) {
  const off = (eachG: number) => Math.abs(Math.log(eachG / aimG));
  const sized = preySizes.filter((size) => size.kind === kind);
  const [best] = sized.toSorted((a, b) => off(a.eachG) - off(b.eachG));
  // An adult mouse is no meal for a large python, however often it took one.
  return best && off(best.eachG) < Math.log(mostTimesOff) ? best : undefined;
}

const prey = (kind: Prey['kind'], size: string, eachG: number): Prey => ({
  kind,
  size,
  eachG,
  count: 1,
  state: 'thawed',
});

/** @example showPrey({ kind: 'rat', size: 'small', eachG: 65, count: 1, … }) //=> '1 small rat' */
export function showPrey({ kind, size, count }: Prey): string {
  const name = kind === 'other' ? size : `${size} ${kind}`;
  return `${count} ${name}${count > 1 ? (kind === 'mouse' ? '' : 's') : ''}`.replace(
    /^(\d+) (.*)mouse$/,
    (_all, n: string, before: string) => `${n} ${before}${n === '1' ? 'mouse' : 'mice'}`,
  );
}

export const preyG = ({ eachG, count }: Prey): number | undefined =>
  eachG === undefined ? undefined : eachG * count;

/** @example showMeal(…) //=> '1 small rat, 65 g' */
export function showMeal(meal: Prey): string {
  const massG = preyG(meal);
  return massG === undefined ? showPrey(meal) : `${showPrey(meal)}, ${showGrams(massG)}`;
}
