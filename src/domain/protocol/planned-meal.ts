import { showGrams } from '../core/units.ts';
import type { Prey } from '../events/feeding.ts';
import type { Animal } from '../state/animal.ts';
import { mealShares, preySizes, type PreySize } from './prey-sizes.ts';

const RAT_FROM_G = 200;
/** A meal this far from the aim is still "the same as last time". */
const NEAR = { low: 0.65, high: 1.45 };

/** What a meal is chosen by, besides the animal itself. */
export interface MealChoice {
  /** Of body mass, in the place of the usual share: as after a regurgitation. */
  readonly share?: number | undefined;
  /** Of the usual meal. */
  readonly portion?: number;
  /** Sizes in use. */
  readonly sizes?: readonly (PreySize & { readonly isOwn?: boolean })[];
  /** What the keeper laid down for this one. */
  readonly own?:
    | {
        readonly kind?: Prey['kind'] | undefined;
        readonly size?: string | undefined;
        readonly count?: number | undefined;
      }
    | undefined;
}

/**
 * The meal to offer: what it ate last, moved to the size that fits its body mass today.
 *
 * Without a weight it is what was offered last, or a small one to begin with.
 */
export function plannedMeal(animal: Animal, choice: MealChoice = {}): Prey {
  const { share, portion = 1, sizes = preySizes, own } = choice;
  const last = lastMeal(animal, sizes, own?.kind);
  const massG = animal.weighings.at(-1)?.massG;
  const aimG = massG === undefined ? undefined : massG * (share ?? portion * mealShare(massG));
  if (own?.kind !== undefined || own?.size !== undefined || own?.count !== undefined) {
    return ownMeal(own, last, aimG, sizes);
  }
  if (aimG === undefined || massG === undefined) return last ?? prey('rat', 'small', 65);
  const isAsBefore = share === undefined && last !== undefined && isBought(last, sizes);
  if (isAsBefore && isNear((last.eachG ?? 0) * last.count, aimG)) return last;

  const kind = last?.kind ?? (massG < RAT_FROM_G ? 'mouse' : 'rat');
  // Rats come in every size: the smallest is the plan where even that is more than the aim.
  const closest = closestSize(sizes, kind, aimG, 2.5) ?? closestSize(sizes, 'rat', aimG, Infinity);
  return { ...prey(kind, 'small', 65), ...closest, state: last?.state ?? 'thawed' };
}

/** What it ate last, else what it was offered, weighed by the keeper's own table. */
function lastMeal(
  { offers }: Animal,
  sizes: NonNullable<MealChoice['sizes']>,
  kind: Prey['kind'] | undefined,
): Prey | undefined {
  const ofKind = kind === undefined ? offers : offers.filter(({ prey }) => prey.kind === kind);
  const eaten = ofKind.findLast(({ outcome }) => outcome === 'ate');
  const last = (eaten ?? ofKind.at(-1))?.prey;
  const stated = sizes.find((size) => size.kind === last?.kind && size.size === last.size);
  return last && stated?.isOwn ? { ...last, eachG: stated.eachG } : last;
}

/** A size with a name of its own is bought, unless it was taken off the usual list. */
const isBought = (meal: Prey, sizes: readonly PreySize[]): boolean => {
  const isIt = ({ kind, size }: PreySize): boolean => kind === meal.kind && size === meal.size;
  return sizes.some(isIt) || !preySizes.some(isIt);
};

const MOST_PIECES = 3;

/** A meal as it was laid down, filled up by what fits its mass. */
function ownMeal(
  own: NonNullable<MealChoice['own']>,
  last: Prey | undefined,
  aimG: number | undefined,
  sizes: readonly PreySize[],
): Prey {
  const kind = own.kind ?? last?.kind ?? 'rat';
  const wanted = own.size ?? (aimG === undefined ? last?.size : undefined);
  const named = sizes.find((size) => size.kind === kind && size.size === wanted);
  const size =
    own.size !== undefined && !named
      ? { size: own.size, eachG: last?.eachG }
      : (named ?? closestSize(sizes, kind, aimG ?? 65, Infinity) ?? { size: 'small', eachG: 65 });
  const { eachG } = size;
  const fitting = aimG === undefined || eachG === undefined ? 1 : Math.round(aimG / eachG);
  const count = own.count ?? Math.min(MOST_PIECES, Math.max(1, fitting));
  return {
    kind,
    size: size.size,
    ...(eachG === undefined ? {} : { eachG }),
    count,
    state: last?.state ?? 'thawed',
  };
}

export const mealShare = (massG: number): number =>
  mealShares.find(({ belowG }) => massG < belowG)?.share ?? 0;

const isNear = (mealG: number, aimG: number): boolean =>
  mealG >= aimG * NEAR.low && mealG <= aimG * NEAR.high;

function closestSize(
  sizes: readonly PreySize[],
  kind: Prey['kind'],
  aimG: number,
  mostTimesOff: number,
): PreySize | undefined {
  const off = (eachG: number) => Math.abs(Math.log(eachG / aimG));
  const sized = sizes.filter((size) => size.kind === kind);
  const [best] = sized.toSorted((a, b) => off(a.eachG) - off(b.eachG));
  // An adult mouse is no meal for a large python, however often it took one.
  return best && off(best.eachG) < Math.log(mostTimesOff)
    ? { kind: best.kind, size: best.size, eachG: best.eachG }
    : undefined;
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
