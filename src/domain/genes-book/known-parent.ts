import type { AnimalId } from '../core/ids.ts';
import { chancesFrom, normalised, type Chances } from '../genes/chances.ts';
import type { BothParents, Parent } from '../genes/clutch-odds.ts';
import { nearestFraction } from '../genes/fraction.ts';
import type { GeneSex } from '../genes/locus.ts';
import type { GenesBook } from './genes-book.ts';

/** What the records say of it; loci at which it is surely wild type are left out. */
export function knownParent(animal: AnimalId, sex: GeneSex, book: GenesBook): Parent {
  const parent = new Map<string, Chances>();
  for (const locus of book.loci) {
    const chances = book.chances(animal, locus)?.[sex];
    const total = chances?.reduce((all, chance) => all + chance, 0) ?? 0;
    if (chances && total > 0 && (chances[0] ?? 0) < total) {
      parent.set(locus, chancesFrom(chances.map((chance) => Math.min(1, chance / total))));
    }
  }
  return parent;
}

/** A female and a male of the collection. */
export interface OwnPair {
  readonly dam: AnimalId;
  readonly sire: AnimalId;
}

/** Both parents at once, at those of the loci where neither is sure: young and ancestors tie them. */
export function tiesBetween(
  loci: Iterable<string>,
  her: Parent,
  his: Parent,
  { dam, sire }: OwnPair,
  book: GenesBook,
): ReadonlyMap<string, readonly BothParents[]> {
  const ties = new Map<string, readonly BothParents[]>();
  for (const locus of loci) {
    const areOpen = (her.get(locus)?.size ?? 0) > 1 && (his.get(locus)?.size ?? 0) > 1;
    if (!areOpen || ties.has(locus)) continue;
    const both = book.together(dam, sire, locus);
    if (both.kind !== 'together') continue;
    const chances = normalised(
      both.chances.map(({ chance }, n) => [n, nearestFraction(chance)] as const),
    );
    ties.set(
      locus,
      both.chances.flatMap(({ a, b }, n) => {
        const chance = chances.get(n);
        return chance ? [{ chance, dam: a.genotype, sire: b.genotype }] : [];
      }),
    );
  }
  return ties;
}
