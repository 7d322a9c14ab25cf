import type { AnimalId } from '../core/ids.ts';
import type { Parents } from './stated-parents.ts';

/** What two have in common, as far as it is stated. */
export const shared = [
  'both parents',
  'the dam, and perhaps the sire',
  'the dam',
  'the sire',
  'perhaps the sire',
] as const;
export type Shared = (typeof shared)[number];

/** Brothers and sisters by what they share; groups without one are left out. */
export function siblingsOf(
  animal: AnimalId,
  of: ReadonlyMap<AnimalId, Parents>,
): ReadonlyMap<Shared, readonly AnimalId[]> {
  const own = of.get(animal);
  const groups = new Map<Shared, AnimalId[]>();
  if (!own) return groups;
  for (const [other, parents] of of) {
    const what = other === animal ? undefined : sharedBy(own, parents);
    if (what) groups.set(what, [...(groups.get(what) ?? []), other]);
  }
  return new Map(
    shared.flatMap((what) => {
      const found = groups.get(what);
      return found ? [[what, found.toSorted()] as const] : [];
    }),
  );
}

function sharedBy(a: Parents, b: Parents): Shared | undefined {
  const dam = a.dam !== undefined && a.dam === b.dam;
  const mayShare = a.sires.some((sire) => b.sires.includes(sire));
  const sire = mayShare && a.sires.length === 1 && b.sires.length === 1;
  if (dam && sire) return 'both parents';
  if (dam) return mayShare ? 'the dam, and perhaps the sire' : 'the dam';
  if (sire) return 'the sire';
  return mayShare ? 'perhaps the sire' : undefined;
}

export interface Brood {
  /** The other parent; undefined where it is not known. */
  readonly others: readonly AnimalId[];
  /** This one is a father among several. */
  readonly isPerhaps: boolean;
  readonly young: readonly AnimalId[];
}

/** Its young by the other parent. */
export function broodsOf(animal: AnimalId, of: ReadonlyMap<AnimalId, Parents>): readonly Brood[] {
  const broods = new Map<
    string,
    { others: readonly AnimalId[]; isPerhaps: boolean; young: AnimalId[] }
  >();
  for (const [young, { dam, sires }] of [...of].toSorted(([a], [b]) => (a < b ? -1 : 1))) {
    const isDam = dam === animal;
    if (!isDam && !sires.includes(animal)) continue;
    const others = isDam ? sires : dam === undefined ? [] : [dam];
    const isPerhaps = !isDam && sires.length > 1;
    const key = `${others.join(' ')} ${isPerhaps}`;
    const brood = broods.get(key) ?? { others, isPerhaps, young: [] };
    brood.young.push(young);
    broods.set(key, brood);
  }
  return [...broods.values()];
}
