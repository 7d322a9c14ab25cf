import type { AnimalId } from '../core/ids.ts';
import type { Parents } from './stated-parents.ts';

/** One ancestor, or the gap where one is not known, in the order of reading: each followed by its own. */
export interface Forebear {
  /** Its way up: `d` dam, `s` sire, `s2` the second of several possible sires. */
  readonly path: string;
  readonly generation: number;
  readonly role: 'dam' | 'sire';
  /** Absent: not known. */
  readonly id?: AnimalId;
  readonly of: AnimalId;
  /** Of how many possible fathers this is one; 1 for a parent that is stated. */
  readonly oneOf: number;
  /** The chance of being this ancestor at all: one for each of possible fathers, all alike. */
  readonly sure: number;
  /** Stands further up already; its own ancestors are not told again. */
  readonly again: boolean;
  /** Neither of its parents is known. */
  readonly isFounder: boolean;
}

/** Below this chance what lies behind a possible father is left to his own page. */
const TOLD_FROM = 1 / 8;

/** Ancestors up to so many generations: the dam and hers first, then the sire, or each possible one. */
export function forebearsOf(
  animal: AnimalId,
  of: ReadonlyMap<AnimalId, Parents>,
  generations = 4,
): readonly Forebear[] {
  const told: Forebear[] = [];
  const met = new Set<AnimalId>();
  const tell = (child: AnimalId, path: string, generation: number, before: number): void => {
    const { dam, sires = [] } = of.get(child) ?? {};
    if (generation > generations || before < TOLD_FROM) return;
    if (dam === undefined && sires.length === 0) return;
    const one = (role: Forebear['role'], step: string, id: AnimalId | undefined, oneOf: number) => {
      const isAgain = id !== undefined && met.has(id);
      const parents = id === undefined ? undefined : of.get(id);
      const here = { path: `${path}${step}`, generation, role, of: child, oneOf };
      const sure = before / oneOf;
      const isFounder = parents?.dam === undefined && !parents?.sires.length;
      told.push({ ...here, ...(id && { id }), sure, again: isAgain, isFounder });
      if (id === undefined || isAgain) return;
      met.add(id);
      tell(id, here.path, generation + 1, sure);
    };
    one('dam', 'd', dam, 1);
    if (sires.length === 0) one('sire', 's', undefined, 1);
    sires.forEach((sire, n) => one('sire', n === 0 ? 's' : `s${n + 1}`, sire, sires.length));
  };
  tell(animal, '', 1, 1);
  return told;
}

/** Ancestors on both sides, by whom it may be inbred: the nearest, not all those behind them too. */
export function commonForebears(
  animal: AnimalId,
  of: ReadonlyMap<AnimalId, Parents>,
): readonly AnimalId[] {
  const { dam, sires = [] } = of.get(animal) ?? {};
  const through = (ids: readonly AnimalId[]): ReadonlySet<AnimalId> => {
    const met = new Set(ids);
    for (const id of met) {
      const { dam: mother, sires: fathers = [] } = of.get(id) ?? {};
      for (const up of mother === undefined ? fathers : [mother, ...fathers]) met.add(up);
    }
    return met;
  };
  const [hers, his] = [through(dam === undefined ? [] : [dam]), through(sires)];
  const both = new Set([...hers].filter((id) => his.has(id)));
  const sides = new Set([...hers, ...his].filter((id) => !both.has(id)));
  const isNear = (id: AnimalId): boolean =>
    id === dam ||
    sires.includes(id) ||
    [...sides].some((young) => {
      const parents = of.get(young);
      return parents?.dam === id || parents?.sires.includes(id) === true;
    });
  return [...both].filter(isNear).toSorted();
}
