import type { Result } from '../../core/result.ts';
import type { GeneSex } from '../locus.ts';
import { oldestFirst } from './oldest-first.ts';

export interface PedigreeAnimal {
  readonly id: string;
  /** Absent: not known, but for what it was bred as. */
  readonly sex?: GeneSex;
  /** The clutch it hatched from. Absent: its parents are not in the pedigree. */
  readonly clutch?: string;
}

/** Who may have fathered a clutch, and how likely before the young were looked at; need not sum to 1. */
export type PossibleFather =
  | { readonly sire: string; readonly weight: number }
  /** She bred alone (parthenogenesis). */
  | { readonly fatherless: true; readonly weight: number };

/** Parents are animals of the pedigree. An outside or unknown male is an animal with no more than a prior. */
export interface PedigreeClutch {
  readonly id: string;
  readonly dam: string;
  readonly fathers: readonly PossibleFather[];
  /** Of several males, was one the father of all, or did each egg draw its own? Default: one. */
  readonly fathered?: 'one' | 'each egg its own';
}

export interface Member {
  readonly id: string;
  readonly sex?: GeneSex;
  /** Index into `clutches`. */
  readonly clutch?: number;
}

export interface Father {
  /** Index into `members`. Absent: none at all. */
  readonly sire?: number;
  /** All of a clutch sum to 1. */
  readonly weight: number;
}

export interface Brood {
  readonly id: string;
  readonly dam: number;
  readonly fathers: readonly Father[];
  readonly eachItsOwn: boolean;
}

/** A pedigree that holds together: every parent before its young, no rings, sexes as they bred. */
export interface Pedigree {
  readonly members: readonly Member[];
  readonly clutches: readonly Brood[];
  readonly indexOf: ReadonlyMap<string, number>;
}

export interface PedigreeFault {
  readonly code:
    | 'same-id'
    | 'missing'
    | 'ring'
    | 'dam-is-male'
    | 'sire-is-female'
    | 'no-father'
    | 'son-without-father';
  readonly message: string;
  /** The animals or clutches that it is about; of a ring, each is followed by a parent of it. */
  readonly about: readonly string[];
}

const fault = (
  code: PedigreeFault['code'],
  message: string,
  about: readonly string[],
): Result<never, PedigreeFault> => ({ ok: false, problem: { code, message, about } });

/** Sorts and checks a pedigree, given in any order. */
export function readPedigree(
  animals: readonly PedigreeAnimal[],
  clutches: readonly PedigreeClutch[],
): Result<Pedigree, PedigreeFault> {
  const twice = repeated(animals) ?? repeated(clutches);
  if (twice !== undefined) return fault('same-id', 'Two records have the same id.', [twice]);
  const byId = new Map(animals.map((animal) => [animal.id, animal]));
  const clutchOf = new Map(clutches.map((clutch) => [clutch.id, clutch]));
  const bred = clutches.flatMap((clutch) => [clutch.dam, ...siresOf(clutch)]);
  const missing = [
    ...bred.filter((id) => !byId.has(id)),
    ...animals.flatMap(({ clutch }) =>
      clutch === undefined || clutchOf.has(clutch) ? [] : [clutch],
    ),
  ];
  if (missing.length > 0) return fault('missing', 'A parent or clutch is not given.', missing);

  const parentsOf = (id: string): readonly string[] => {
    const clutch = clutchOf.get(byId.get(id)?.clutch ?? '');
    return clutch ? [...new Set([clutch.dam, ...siresOf(clutch)])] : [];
  };
  const sorted = oldestFirst([...byId.keys()], parentsOf);
  if (!sorted.ok) return fault('ring', 'An animal is its own ancestor.', sorted.ring);

  const wrong = wrongRoles(byId, clutches);
  if (wrong) return wrong;
  const dams = new Set(clutches.map(({ dam }) => dam));
  const sires = new Set(clutches.flatMap(siresOf));
  const indexOf = new Map(sorted.order.map((id, index) => [id, index]));
  const at = (id: string): number => indexOf.get(id) ?? 0;
  const clutchIndex = new Map(clutches.map(({ id }, index) => [id, index]));
  const members = sorted.order.map((id): Member => {
    const { sex = asBred(id, dams, sires), clutch } = byId.get(id) ?? {};
    const index = clutchIndex.get(clutch ?? '');
    return {
      id,
      ...(sex === undefined ? {} : { sex }),
      ...(index === undefined ? {} : { clutch: index }),
    };
  });
  const broods = clutches.map((clutch): Brood => ({
    id: clutch.id,
    dam: at(clutch.dam),
    fathers: fathersOf(clutch, at),
    eachItsOwn: clutch.fathered === 'each egg its own',
  }));
  return { ok: true, value: { members, clutches: broods, indexOf } };
}

const siresOf = ({ fathers }: PedigreeClutch): readonly string[] =>
  fathers.flatMap((father) => ('sire' in father ? [father.sire] : []));

function repeated(all: readonly { readonly id: string }[]): string | undefined {
  const seen = new Set<string>();
  return all.find(({ id }) => seen.has(id) || !seen.add(id))?.id;
}

const asBred = (
  id: string,
  dams: ReadonlySet<string>,
  sires: ReadonlySet<string>,
): GeneSex | undefined => {
  if (dams.has(id)) return 'female';
  return sires.has(id) ? 'male' : undefined;
};

function wrongRoles(
  byId: ReadonlyMap<string, PedigreeAnimal>,
  clutches: readonly PedigreeClutch[],
): Result<never, PedigreeFault> | undefined {
  const dams = new Set(clutches.map(({ dam }) => dam));
  for (const clutch of clutches) {
    const { id, dam, fathers } = clutch;
    const weights = fathers.map(({ weight }) => weight);
    const total = weights.reduce((sum, weight) => sum + weight, 0);
    if (!(total > 0 && total < Infinity) || weights.some((weight) => weight < 0)) {
      return fault('no-father', 'The weights of the possible fathers are no chances.', [id]);
    }
    if (byId.get(dam)?.sex === 'male') return fault('dam-is-male', 'A male laid.', [dam]);
    const female = siresOf(clutch).find((sire) => byId.get(sire)?.sex === 'female');
    const both = female ?? siresOf(clutch).find((sire) => dams.has(sire));
    if (both !== undefined) {
      return fault('sire-is-female', 'A female is named as a sire.', [both]);
    }
    if (siresOf(clutch).length > 0) continue;
    const son = [...byId.values()].find((animal) => animal.clutch === id && animal.sex === 'male');
    if (son) return fault('son-without-father', 'Without a father all are daughters.', [son.id]);
  }
  return undefined;
}

/** A male named twice counts once, with both weights. */
function fathersOf({ fathers }: PedigreeClutch, at: (id: string) => number): readonly Father[] {
  const total = fathers.reduce((sum, { weight }) => sum + weight, 0);
  const weights = new Map<number | undefined, number>();
  for (const father of fathers) {
    const sire = 'sire' in father ? at(father.sire) : undefined;
    weights.set(sire, (weights.get(sire) ?? 0) + father.weight / total);
  }
  return [...weights].map(([sire, weight]) => (sire === undefined ? { weight } : { sire, weight }));
}
