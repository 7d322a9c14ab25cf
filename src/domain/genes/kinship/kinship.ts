import { generationsKnown } from './known-depth.ts';
import type { Lineage } from './lineage.ts';
import { relationshipsIn } from './relationships.ts';
import type { Chromosomes } from './shares.ts';

/** Wright's F of an animal, or what the young of a pair would have: the chance of two equal copies by descent. */
export interface Inbreeding {
  /** Nothing is counted through ancestors that are not known, so it can only be more. */
  readonly atLeast: number;
  /** Generations back that are known (see `generationsKnown`); of a pair, the lesser. */
  readonly generations: number;
  /**
   * Of an animal: a parent is not known. Of a pair: nothing is known of one's parents, and it is no
   * ancestor of the other. Then 0 does not mean unrelated.
   */
  readonly unknown: boolean;
}

export interface Kinships {
  /** Throws a RangeError for an animal that is not in the lineage, as all do. */
  inbreeding(animal: string): Inbreeding;
  /** The kinship of two, which is the inbreeding of their young. */
  between(a: string, b: string): Inbreeding;
  /** Every one with every other, in the order given: a row for each of the first. */
  ofPairs(first: readonly string[], second: readonly string[]): readonly (readonly Inbreeding[])[];
}

/**
 * Kinship and inbreeding by descent. Founders are taken for unrelated and not inbred where nothing
 * else is known; each answer says how much is known. On the X (`x`), an inbreeding is that of
 * daughters, and every sex must be known, else a RangeError is thrown.
 */
export function kinshipsIn(lineage: Lineage, chromosomes: Chromosomes = 'autosomes'): Kinships {
  const { animals, indexOf } = lineage;
  const relationships = relationshipsIn(lineage, chromosomes);
  const known = generationsKnown(lineage);
  const place = (id: string): number => {
    const index = indexOf.get(id);
    if (index === undefined) throw new RangeError(`No animal ${id} is in the lineage.`);
    return index;
  };
  const isFounder = (index: number): boolean => (known[index] ?? 0) === 0;
  const row = (first: string, second: readonly string[]): readonly Inbreeding[] => {
    const a = place(first);
    const related = relationships.to(a);
    return second.map((id) => {
      const b = place(id);
      const atLeast = (related[b] ?? 0) / 2;
      const generations = Math.min(known[a] ?? 0, known[b] ?? 0);
      return { atLeast, generations, unknown: atLeast === 0 && (isFounder(a) || isFounder(b)) };
    });
  };
  return {
    inbreeding(id) {
      const index = place(id);
      const { dam, sire, apart, sex } = animals[index] ?? {};
      const oneCopy = chromosomes === 'x' && sex === 'male';
      const parentMissing = dam === undefined || (sire === undefined && apart === undefined);
      return {
        atLeast: oneCopy ? 0 : (relationships.self[index] ?? 1) - 1,
        generations: known[index] ?? 0,
        unknown: parentMissing && !oneCopy,
      };
    },
    between(a, b) {
      const [only] = row(a, [b]);
      if (!only) throw new Error('A row has as many as were asked for.');
      return only;
    },
    ofPairs(first, second) {
      const flip = first.length > second.length;
      const [few, many] = flip ? [second, first] : [first, second];
      const rows = few.map((id) => row(id, many));
      return flip ? first.map((_, n) => rows.flatMap((each) => each[n] ?? [])) : rows;
    },
  };
}
