import type { AnimalId } from '../core/ids.ts';
import { kinshipsIn, type Inbreeding, type Kinships } from '../genes/kinship/kinship.ts';
import { readLineage, type Kin } from '../genes/kinship/lineage.ts';
import type { Born, Parents } from './stated-parents.ts';
import { parentsOf } from './stated-parents.ts';

/** One of several males is the father of all young of a clutch. */
export interface OpenFather {
  readonly young: readonly AnimalId[];
  readonly sires: readonly AnimalId[];
}

/** How closely bred an animal is, or the young of a pair would be, with what is not known. */
export interface Relatedness {
  /** F with the fathers that make it least. Ancestors who are not known could only add to it. */
  readonly atLeast: number;
  /** F with the fathers that make it most; undefined where there are too many to try. */
  readonly atMost: number | undefined;
  /** Generations back that are known, with the fathers that know least. */
  readonly generations: number;
  /** 0 does not mean unrelated: see `Inbreeding`. */
  readonly unknown: boolean;
  /** Fathers that are open among the ancestors. */
  readonly open: readonly OpenFather[];
}

export interface KinBook {
  inbreeding(animal: AnimalId): Relatedness;
  /** Of the young of two. */
  between(a: AnimalId, b: AnimalId): Relatedness;
  /** A row for each of the first, with open fathers taken for not known: quick, and the least. */
  leastOf(first: readonly AnimalId[], second: readonly AnimalId[]): readonly (readonly number[])[];
}

/** So many ways of settling the open fathers are tried, each a kinship of its own. */
const MOST_WAYS = 128;

/**
 * Kinship where some fathers are one of several. Each way of settling them is reckoned, and the least
 * and the most are told: an average would be true of none.
 */
export function kinBook(animals: readonly Born[], of: ReadonlyMap<AnimalId, Parents>): KinBook {
  const clutchOf = new Map(animals.map((each) => [each.id, clutchKey(each, of)]));
  let whole: Kinships | undefined;

  function related(ids: readonly AnimalId[], ask: (kinships: Kinships) => Inbreeding): Relatedness {
    const kin = withAncestors(ids, of);
    const groups = new Map<string, { young: AnimalId[]; sires: readonly AnimalId[] }>();
    for (const id of kin) {
      const { sires = [] } = of.get(id) ?? {};
      const key = clutchOf.get(id) ?? id;
      if (sires.length < 2) continue;
      groups.set(key, { young: [...(groups.get(key)?.young ?? []), id], sires });
    }
    const open = [...groups.values()];
    const ways = open.reduce((product, { sires }) => product * sires.length, 1);
    const tried = ways > MOST_WAYS ? [new Map<AnimalId, AnimalId>()] : settled(open);
    const answers = tried.map((fathers) => ask(kinshipsOf(kin, of, fathers)));
    const all = answers.map(({ atLeast }) => atLeast);
    return {
      atLeast: Math.min(...all),
      atMost: ways > MOST_WAYS ? undefined : Math.max(...all),
      generations: Math.min(...answers.map(({ generations }) => generations)),
      unknown: answers.some(({ unknown }) => unknown),
      open,
    };
  }
  return {
    inbreeding: (id) => related([id], (kinships) => kinships.inbreeding(id)),
    between: (a, b) => related([a, b], (kinships) => kinships.between(a, b)),
    leastOf(first, second) {
      whole ??= kinshipsOf([...of.keys()], of, new Map());
      return whole.ofPairs(first, second).map((row) => row.map(({ atLeast }) => atLeast));
    },
  };
}

/** Young of one dam and the same males that hatched in one year are of one clutch, by one father. */
function clutchKey({ id, hatchedDay }: Born, of: ReadonlyMap<AnimalId, Parents>): string {
  const { dam, sires = [] } = of.get(id) ?? {};
  if (dam === undefined || hatchedDay === undefined) return id;
  return [dam, hatchedDay.slice(0, 4), ...sires].join(' ');
}

export function withAncestors(
  ids: readonly AnimalId[],
  of: ReadonlyMap<AnimalId, Parents>,
): readonly AnimalId[] {
  const met = new Set(ids);
  for (const id of met) for (const up of parentsOf(of.get(id) ?? { sires: [] })) met.add(up);
  return [...met];
}

/** Every way of settling who the father was, by young. */
function settled(open: readonly OpenFather[]): readonly ReadonlyMap<AnimalId, AnimalId>[] {
  return open.reduce<readonly ReadonlyMap<AnimalId, AnimalId>[]>(
    (ways, { young, sires }) =>
      ways.flatMap((way) =>
        sires.map((sire) => new Map([...way, ...young.map((id) => [id, sire] as const)])),
      ),
    [new Map()],
  );
}

function kinshipsOf(
  ids: readonly AnimalId[],
  of: ReadonlyMap<AnimalId, Parents>,
  fathers: ReadonlyMap<AnimalId, AnimalId>,
): Kinships {
  const kin = ids.map((id): Kin => {
    const { dam, sires = [] } = of.get(id) ?? {};
    const sire = sires.length === 1 ? sires[0] : fathers.get(id);
    return {
      id,
      ...(dam === undefined ? {} : { dam }),
      ...(sire === undefined ? {} : { sire }),
    };
  });
  const read = readLineage(kin);
  if (!read.ok) throw new Error(`${read.problem.message} ${read.problem.about.join(' ')}`);
  return kinshipsIn(read.value);
}
