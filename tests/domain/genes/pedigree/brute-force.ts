import { genotypeCount, genotypeOf, numberOf } from '../../../../src/domain/genes/genotype.ts';
import type { GeneSex, Locus } from '../../../../src/domain/genes/locus.ts';
import type { Evidence } from '../../../../src/domain/genes/pedigree/evidence.ts';
import type { PedigreeAnimal } from '../../../../src/domain/genes/pedigree/pedigree.ts';
import type { RandomCase } from './random-pedigree.ts';

// The definition itself, slowly: every genotype, sex and father of every animal is tried, and the
// weights of all trials are added. Meiosis is drawn allele by allele; only the numbering of genotypes
// is shared with the code under test.

interface Tried {
  readonly sex: GeneSex;
  readonly number: number;
}

const sexes = ['female', 'male'] as const;

const everything = (locus: Locus): readonly Tried[] =>
  sexes.flatMap((sex) =>
    Array.from({ length: genotypeCount(locus, sex) }, (_, number) => ({ sex, number })),
  );

function survives(locus: Locus, { sex, number }: Tried): number {
  const ids = genotypeOf(locus, sex, number).map((allele) => locus.alleles[allele]!.id);
  const pair = locus.pairs.find(
    ({ alleles }) => alleles.toSorted().join() === ids.toSorted().join(),
  );
  return pair?.survival ? Number(pair.survival.share.n) / Number(pair.survival.share.d) : 1;
}

/** Chance of each hatched young, by `sex` and number as `f0`, `m3`. */
function hatchlings(
  locus: Locus,
  apart: number,
  dam: number,
  sire: number | undefined,
): ReadonlyMap<string, number> {
  const chances = new Map<string, number>();
  const add = (sex: GeneSex, alleles: readonly [number, number], chance: number): void => {
    const number = numberOf(locus, sex, alleles);
    const key = `${sex}${number}`;
    const weight = chance * survives(locus, { sex, number });
    chances.set(key, (chances.get(key) ?? 0) + weight);
  };
  const mother = genotypeOf(locus, 'female', dam);
  if (sire === undefined) {
    // The two products that fuse are sisters: alike, but where the alleles part at the second division.
    add('female', [mother[0], mother[0]], (1 - apart) / 2);
    add('female', [mother[1], mother[1]], (1 - apart) / 2);
    add('female', mother, apart);
  } else {
    const father = genotypeOf(locus, 'male', sire);
    for (const fromDam of mother) {
      for (const sex of sexes) {
        father.forEach((fromSire, side) => {
          let chance = 0.5;
          if (locus.linkage.kind === 'sex-linked') {
            const r = Number(locus.linkage.recombination.n) / Number(locus.linkage.recombination.d);
            chance = (side === 0) === (sex === 'female') ? 1 - r : r;
          }
          add(sex, [fromDam, fromSire], 0.5 * 0.5 * chance);
        });
      }
    }
  }
  const all = [...chances.values()].reduce((sum, chance) => sum + chance, 0);
  return new Map([...chances].map(([key, chance]) => [key, all > 0 ? chance / all : 0]));
}

export interface Enumerated {
  /** Weight of everything; 0 where the evidence contradicts itself. */
  readonly total: number;
  /** By animal, then by `female0`, `male3` …; not yet divided by the total. */
  readonly of: ReadonlyMap<string, ReadonlyMap<string, number>>;
  /** Of two animals, keys joined by a space. */
  readonly together: ReadonlyMap<string, number>;
  /** By clutch, weight of each of its fathers as given; clutches one of several fathered whole only. */
  readonly fathers: ReadonlyMap<string, readonly number[]>;
}

export function enumerate(
  { locus, apart, animals, clutches }: RandomCase,
  { priors, findings }: Evidence,
  [a, b]: readonly [string, string],
): Enumerated {
  const all = everything(locus);
  const place = new Map(animals.map(({ id }, n) => [id, n]));
  const clutchOf = new Map(clutches.map((clutch) => [clutch.id, clutch]));
  const dams = new Set(clutches.map(({ dam }) => dam));
  const sires = new Set(clutches.flatMap((c) => c.fathers.map((f) => ('sire' in f ? f.sire : ''))));

  const rows = new Map<string, readonly number[]>();
  const row = (dam: number, sire: number | undefined): readonly number[] => {
    const key = `${dam},${sire}`;
    const known = rows.get(key);
    if (known) return known;
    const chances = hatchlings(locus, apart, dam, sire);
    const made = all.map(({ sex, number }) => chances.get(`${sex}${number}`) ?? 0);
    rows.set(key, made);
    return made;
  };

  /** What is tried at the moment: of each animal, a place in `all`; of each clutch, its father. */
  const is = animals.map(() => -1);
  const chosen = new Map<string, number>();

  /** Weighs young of a clutch by its father as chosen, or by each possible one. */
  const overFathers = (clutchId: string, chance: (young: readonly number[]) => number): number => {
    const { dam, fathers, fathered } = clutchOf.get(clutchId)!;
    const weights = fathers.reduce((sum, { weight }) => sum + weight, 0);
    const numberOfParent = (id: string): number => all[is[place.get(id)!]!]!.number;
    let sum = 0;
    fathers.forEach((father, n) => {
      const share = fathered ? father.weight / weights : chosen.get(clutchId) === n ? 1 : 0;
      if (share === 0) return;
      const male = 'sire' in father ? numberOfParent(father.sire) : undefined;
      sum += share * chance(row(numberOfParent(dam), male));
    });
    return sum;
  };

  const alone = animals.map(({ id, sex, clutch }) =>
    all.map((tried) => {
      if ((sex ?? tried.sex) !== tried.sex) return 0;
      if ((dams.has(id) && tried.sex === 'male') || (sires.has(id) && tried.sex === 'female'))
        return 0;
      let weight = 1;
      const prior = priors.get(id)?.[tried.sex];
      if (prior) weight *= prior[tried.number]! / prior.reduce((sum, each) => sum + each, 0);
      else if (clutch === undefined && tried.number > 0) return 0;
      for (const finding of findings) {
        if (finding.kind === 'young' || finding.animal !== id) continue;
        weight *= finding.likelihood[tried.sex][tried.number]!;
      }
      return weight;
    }),
  );
  const counted = findings.flatMap((finding) =>
    finding.kind === 'young'
      ? finding.young.map(({ count, likelihood }) => ({
          clutch: finding.clutch,
          count,
          seen: all.map(({ sex, number }) => likelihood[sex][number]!),
        }))
      : [],
  );

  const sums = animals.map(() => all.map(() => 0));
  const both = new Map<number, number>();
  const fathers = new Map(clutches.map((clutch) => [clutch.id, clutch.fathers.map(() => 0)]));
  let total = 0;
  const [first, second] = [place.get(a)!, place.get(b)!];

  const tally = (weight: number): void => {
    let product = weight;
    for (const { clutch, count, seen } of counted) {
      const chance = overFathers(clutch, (young) =>
        young.reduce((sum, each, n) => sum + each * seen[n]!, 0),
      );
      for (let n = 0; n < count; n += 1) product *= chance;
    }
    if (product === 0) return;
    total += product;
    is.forEach((state, animal) => (sums[animal]![state]! += product));
    const key = is[first]! * all.length + is[second]!;
    both.set(key, (both.get(key) ?? 0) + product);
    for (const [id, n] of chosen) fathers.get(id)![n]! += product;
  };

  const parentsFirst = sortByParents(animals, clutchOf);
  const go = (at: number, weight: number): void => {
    const animal = parentsFirst[at];
    if (!animal) {
      tally(weight);
      return;
    }
    const index = place.get(animal.id)!;
    all.forEach((_, state) => {
      let chance = alone[index]![state]!;
      if (chance > 0 && animal.clutch !== undefined) {
        chance *= overFathers(animal.clutch, (young) => young[state]!);
      }
      if (chance === 0) return;
      is[index] = state;
      go(at + 1, weight * chance);
    });
  };

  /** Fathers of whole clutches are tried first. */
  const choose = (at: number, weight: number): void => {
    const clutch = clutches[at];
    if (!clutch) {
      go(0, weight);
      return;
    }
    if (clutch.fathered) {
      choose(at + 1, weight);
      return;
    }
    const weights = clutch.fathers.reduce((sum, father) => sum + father.weight, 0);
    clutch.fathers.forEach((father, n) => {
      chosen.set(clutch.id, n);
      choose(at + 1, (weight * father.weight) / weights);
    });
  };
  choose(0, 1);

  const keyOf = (state: number): string => `${all[state]!.sex}${all[state]!.number}`;
  return {
    total,
    of: new Map(
      animals.map(({ id }, n) => [id, new Map(sums[n]!.map((sum, state) => [keyOf(state), sum]))]),
    ),
    together: new Map(
      [...both].map(([key, weight]) => [
        `${keyOf(Math.floor(key / all.length))} ${keyOf(key % all.length)}`,
        weight,
      ]),
    ),
    fathers,
  };
}

function sortByParents(
  animals: readonly PedigreeAnimal[],
  clutchOf: ReadonlyMap<string, RandomCase['clutches'][number]>,
): readonly PedigreeAnimal[] {
  const sorted: PedigreeAnimal[] = [];
  const isPlaced = (id: string): boolean => sorted.some((animal) => animal.id === id);
  while (sorted.length < animals.length) {
    for (const animal of animals) {
      const clutch = clutchOf.get(animal.clutch ?? '');
      const parents = clutch
        ? [clutch.dam, ...clutch.fathers.flatMap((f) => ('sire' in f ? [f.sire] : []))]
        : [];
      if (!isPlaced(animal.id) && parents.every(isPlaced)) sorted.push(animal);
    }
  }
  return sorted;
}
