import type { AnimalId } from '../core/ids.ts';
import type { Animal } from '../state/animal.ts';
import { ringThrough } from './rings.ts';

/** What lineage reads of an animal. */
export type Born = Pick<Animal, 'id' | 'sex' | 'hatchedDay' | 'dam' | 'sires'>;

/** A dam, and every male that may be the father: one is taken for the father, several are open. */
export interface Parents {
  readonly dam?: AnimalId;
  readonly sires: readonly AnimalId[];
}

/** A statement of parents that cannot be so, or that names somebody not on record. */
export interface Slip {
  readonly kind:
    'own ancestor' | 'both parents' | 'male dam' | 'female sire' | 'both roles' | 'not on record';
  /** Whose parents were stated. */
  readonly young: AnimalId;
  /** Whom it is about. Of a ring: the young, then each followed by a parent of it. */
  readonly about: readonly AnimalId[];
}

export interface StatedParents {
  /** Without what cannot be so. Of all that are on record, or named as a parent. */
  readonly of: ReadonlyMap<AnimalId, Parents>;
  readonly slips: readonly Slip[];
}

const NOBODY: Parents = { sires: [] };

/**
 * The parents of a collection as far as they can be so; what cannot be is left out and told. It hangs
 * neither on the order of the animals nor on those that are no kin.
 */
export function statedParents(animals: readonly Born[]): StatedParents {
  const slips: Slip[] = [];
  const sexes = new Map(animals.map(({ id, sex }) => [id, sex]));
  const dams = new Set(animals.map(({ dam }) => dam));
  const sires = new Set(animals.flatMap((each) => each.sires));
  const of = new Map<AnimalId, Parents>();
  for (const { id, dam, sires: males } of animals.toSorted((a, b) => (a.id < b.id ? -1 : 1))) {
    const slip = (kind: Slip['kind'], parent: AnimalId) => {
      slips.push({ kind, young: id, about: [parent] });
    };
    const mayBe = (parent: AnimalId, role: 'dam' | 'sire'): boolean => {
      const sex = sexes.get(parent) ?? 'unknown';
      if (role === 'dam' && males.includes(parent)) {
        slip('both parents', parent);
        return sex === 'female';
      }
      if (role === 'sire' && parent === dam) return sex === 'male';
      if (sex === 'unknown' && dams.has(parent) && sires.has(parent)) {
        slip('both roles', parent);
        return false;
      }
      if (sex === (role === 'dam' ? 'male' : 'female')) {
        slip(role === 'dam' ? 'male dam' : 'female sire', parent);
        return false;
      }
      if (!sexes.has(parent)) slip('not on record', parent);
      return true;
    };
    const fathers = [...new Set(males)].toSorted().filter((male) => mayBe(male, 'sire'));
    of.set(id, { ...(dam && mayBe(dam, 'dam') ? { dam } : {}), sires: fathers });
  }
  for (const parent of [...of.values()].flatMap(parentsOf)) {
    if (!of.has(parent)) of.set(parent, NOBODY);
  }
  return withoutRings(of, slips);
}

export const parentsOf = ({ dam, sires }: Parents): readonly AnimalId[] =>
  dam === undefined ? sires : [dam, ...sires];

/** Every link of a ring is left out: none of them is more to be doubted than the others. */
function withoutRings(of: Map<AnimalId, Parents>, slips: Slip[]): StatedParents {
  const ups = (id: AnimalId) => parentsOf(of.get(id) ?? NOBODY);
  const cuts: (readonly [AnimalId, AnimalId])[] = [];
  for (const id of notFromFounders(of)) {
    for (const parent of ups(id)) {
      const ring = ringThrough(id, parent, ups);
      if (!ring) continue;
      cuts.push([id, parent]);
      slips.push({ kind: 'own ancestor', young: id, about: ring });
    }
  }
  for (const [id, parent] of cuts) {
    const { dam, sires } = of.get(id) ?? NOBODY;
    const rest = sires.filter((sire) => sire !== parent);
    of.set(id, { ...(dam === undefined || dam === parent ? {} : { dam }), sires: rest });
  }
  return { of, slips };
}

/** Those of whom an ancestor leads back to itself: all that is left once founders and their young are taken away. */
function notFromFounders(of: ReadonlyMap<AnimalId, Parents>): readonly AnimalId[] {
  const waitsFor = new Map<AnimalId, number>();
  const young = new Map<AnimalId, AnimalId[]>();
  for (const [id, parents] of of) {
    const ups = parentsOf(parents);
    waitsFor.set(id, ups.length);
    for (const parent of ups) young.set(parent, [...(young.get(parent) ?? []), id]);
  }
  const ready = [...of.keys()].filter((id) => waitsFor.get(id) === 0);
  for (const id of ready) {
    for (const each of young.get(id) ?? []) {
      const left = (waitsFor.get(each) ?? 0) - 1;
      waitsFor.set(each, left);
      if (left === 0) ready.push(each);
    }
  }
  return [...of.keys()].filter((id) => (waitsFor.get(id) ?? 0) > 0);
}
