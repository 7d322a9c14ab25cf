import type { Picture } from '../picture/picture.ts';
import { kinBook, type KinBook } from './relatedness.ts';
import { statedParents, type Born, type StatedParents } from './stated-parents.ts';

/** Who descends from whom in a collection, and how closely all are related. */
export interface FamilyTree extends StatedParents {
  readonly kin: KinBook;
}

/** From animals in any order. */
export function growTree(animals: readonly Born[]): FamilyTree {
  const stated = statedParents(animals);
  return { ...stated, kin: kinBook(animals, stated.of) };
}

interface Kept {
  readonly animals: readonly Born[];
  readonly tree: FamilyTree;
}
const kept = new WeakMap<Picture['ledger'], Kept>();

/** The tree of a picture: the same one for as long as no record of parents, sex or hatching is added. */
export function familyTree(picture: Picture): FamilyTree {
  const animals = picture.animals();
  const before = kept.get(picture.ledger);
  if (before && before.animals.length === animals.length) {
    const isSame = animals.every((each, n) => isAlike(each, before.animals[n]));
    if (isSame) return before.tree;
  }
  const tree = growTree(animals);
  kept.set(picture.ledger, { animals, tree });
  return tree;
}

const isAlike = (a: Born, b: Born | undefined): boolean =>
  b !== undefined &&
  a.id === b.id &&
  a.sex === b.sex &&
  a.hatchedDay === b.hatchedDay &&
  a.dam === b.dam &&
  a.sires === b.sires;
