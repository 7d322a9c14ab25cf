import type { Prey } from '../events/feeding.ts';

export interface PreySize {
  readonly kind: Prey['kind'];
  readonly size: string;
  /** Usual mass of one, in grams. Source: preySizes. */
  readonly eachG: number;
}

/** What the freezer holds, by the names the trade uses, lightest first within a kind. */
export const preySizes: readonly PreySize[] = [
  { kind: 'rat', size: 'pink', eachG: 6 },
  { kind: 'rat', size: 'fuzzy', eachG: 11 },
  { kind: 'rat', size: 'pup', eachG: 22 },
  { kind: 'rat', size: 'weaned', eachG: 40 },
  { kind: 'rat', size: 'small', eachG: 65 },
  { kind: 'rat', size: 'medium', eachG: 100 },
  { kind: 'rat', size: 'large', eachG: 150 },
  { kind: 'mouse', size: 'hopper', eachG: 9 },
  { kind: 'mouse', size: 'adult', eachG: 22 },
];

/** A size in use, and whether the keeper said himself what one weighs. */
export interface KnownSize extends PreySize {
  readonly isOwn: boolean;
}

const isSame = (a: Omit<PreySize, 'eachG'>, b: Omit<PreySize, 'eachG'>): boolean =>
  a.kind === b.kind && a.size === b.size;

/** The usual sizes with the keeper's own in their place, lightest first within a kind; null: no longer bought. */
export function preySizesWith(
  own: readonly {
    readonly kind: Prey['kind'];
    readonly size: string;
    readonly eachG: number | null;
  }[],
): readonly KnownSize[] {
  const usual = preySizes.filter((size) => !own.some((each) => isSame(each, size)));
  const bought = own.flatMap(({ kind, size, eachG }) =>
    eachG === null ? [] : [{ kind, size, eachG, isOwn: true }],
  );
  return [...usual.map((size) => ({ ...size, isOwn: false })), ...bought].toSorted((a, b) =>
    a.kind === b.kind ? a.eachG - b.eachG : a.kind < b.kind ? -1 : 1,
  );
}

/** Upper end of body mass in grams, and the share of it that makes a meal. Source: mealShare. */
export const mealShares: readonly { readonly belowG: number; readonly share: number }[] = [
  { belowG: 200, share: 0.12 },
  { belowG: 350, share: 0.1 },
  { belowG: 500, share: 0.085 },
  { belowG: 1_000, share: 0.065 },
  { belowG: 1_500, share: 0.06 },
  { belowG: Number.POSITIVE_INFINITY, share: 0.045 },
];
