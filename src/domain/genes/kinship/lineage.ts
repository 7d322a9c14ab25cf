import type { Result } from '../../core/result.ts';
import type { GeneSex } from '../locus.ts';
import { oldestFirst } from '../pedigree/oldest-first.ts';

/** An animal and its parents. A parent that is not known is left out, and is no claim of being unrelated. */
export interface Kin {
  readonly id: string;
  readonly sex?: GeneSex;
  readonly dam?: string;
  readonly sire?: string;
  /** She has a mother only (parthenogenesis): how often two alleles stay apart, see `fatherlessChances`. */
  readonly fatherless?: { readonly apart: number };
}

/** By place in the lineage; parents come before their young. */
export interface Descent {
  readonly id: string;
  readonly sex?: GeneSex;
  readonly dam?: number;
  readonly sire?: number;
  readonly apart?: number;
}

export interface Lineage {
  readonly animals: readonly Descent[];
  readonly indexOf: ReadonlyMap<string, number>;
}

export interface LineageFault {
  readonly code: 'same-id' | 'missing' | 'both-parents' | 'two-roles' | 'ring' | 'fatherless';
  readonly message: string;
  /** The animals it is about; of a ring, each is followed by a parent of it. */
  readonly about: readonly string[];
}

const fault = (
  code: LineageFault['code'],
  message: string,
  about: readonly string[],
): Result<never, LineageFault> => ({ ok: false, problem: { code, message, about } });

/** Sorts and checks animals given in any order. */
export function readLineage(kin: readonly Kin[]): Result<Lineage, LineageFault> {
  const byId = new Map<string, Kin>();
  for (const each of kin) {
    if (byId.has(each.id)) return fault('same-id', 'Two animals have the same id.', [each.id]);
    byId.set(each.id, each);
  }
  const missing = new Set(kin.flatMap(parentsOf).filter((id) => !byId.has(id)));
  if (missing.size > 0) return fault('missing', 'A parent is not given.', [...missing]);
  const selfed = kin.find(({ dam, sire }) => dam !== undefined && dam === sire);
  if (selfed) {
    return fault('both-parents', 'One animal is given as both parents.', [selfed.id]);
  }
  const dams = new Set(kin.map(({ dam }) => dam));
  const sires = new Set(kin.map(({ sire }) => sire));
  const twoRoles = kin.find(
    ({ id, sex }) =>
      (dams.has(id) && (sires.has(id) || sex === 'male')) || (sires.has(id) && sex === 'female'),
  );
  if (twoRoles)
    return fault('two-roles', 'A mother cannot be male, nor a father female.', [twoRoles.id]);
  const odd = kin.find(
    ({ dam, sire, sex, fatherless }) =>
      fatherless &&
      (dam === undefined ||
        sire !== undefined ||
        sex === 'male' ||
        !(fatherless.apart >= 0 && fatherless.apart <= 1)),
  );
  if (odd)
    return fault('fatherless', 'A daughter without a father has a mother and no sire.', [odd.id]);

  const sorted = oldestFirst([...byId.keys()], (id) => parentsOf(byId.get(id)));
  if (!sorted.ok) return fault('ring', 'An animal is its own ancestor.', sorted.ring);
  const indexOf = new Map(sorted.order.map((id, index) => [id, index]));
  const animals = sorted.order.map((id): Descent => {
    const { sex, dam, sire, fatherless } = byId.get(id) ?? { id };
    const [damIndex, sireIndex] = [indexOf.get(dam ?? ''), indexOf.get(sire ?? '')];
    const known =
      sex ?? (dams.has(id) || fatherless ? 'female' : sires.has(id) ? 'male' : undefined);
    return {
      id,
      ...(known === undefined ? {} : { sex: known }),
      ...(dam === undefined || damIndex === undefined ? {} : { dam: damIndex }),
      ...(sire === undefined || sireIndex === undefined ? {} : { sire: sireIndex }),
      ...(fatherless ? { apart: fatherless.apart } : {}),
    };
  });
  return { ok: true, value: { animals, indexOf } };
}

const parentsOf = (kin: Kin | undefined): readonly string[] =>
  [kin?.dam, kin?.sire].filter((id) => id !== undefined);
