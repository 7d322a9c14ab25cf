import { locusOf, type Catalogue } from './catalogue.ts';
import { blended, certainly, type Chances } from './chances.ts';
import { HALF, isChance, ONE, same, sum, times, ZERO, type Fraction } from './fraction.ts';
import { WILD } from './genotype.ts';
import { childChances, fatherlessChances } from './inheritance.ts';
import type { BySex, GeneSex, Locus } from './locus.ts';

/** What is known of a parent: chances by locus. It is wild type wherever nothing is said. */
export type Parent = ReadonlyMap<string, Chances>;

export interface PossibleSire {
  readonly sire: Parent;
  readonly weight: Fraction;
}

/** Both parents at one locus at once, where earlier young tie what is known of one to the other. */
export interface BothParents {
  readonly chance: Fraction;
  readonly dam: number;
  readonly sire: number;
}

export interface Paternity {
  /** Of several males, was one the father of all, or did each egg draw its own? Default: one. */
  readonly fathers?: 'one' | 'each egg its own';
  /** By locus, in place of what is said of each; for one sire only. */
  readonly together?: ReadonlyMap<string, readonly BothParents[]>;
}

/** Chances of a daughter's and of a son's genotype at conception, each summing to 1. */
export type Brood = BySex<Chances>;

/** One possible set of parents' genotypes, shared by all eggs: a brood for each male in question. */
export interface Case {
  readonly weight: Fraction;
  readonly broods: readonly Brood[];
}

export interface LocusCross {
  readonly locus: Locus;
  readonly cases: readonly Case[];
}

/** One way it can have come about. Within it loci are independent, and eggs are, given the cases. */
export interface Way {
  readonly weight: Fraction;
  /** Chance of each male in question to have fathered an egg. */
  readonly fathers: readonly Fraction[];
  readonly crosses: readonly LocusCross[];
}

/** All that follows from two parents; nothing is multiplied out until it is asked for. */
export interface ClutchOdds {
  readonly catalogue: Catalogue;
  readonly sexes: BySex<Fraction>;
  readonly ways: readonly Way[];
}

/**
 * What a clutch can be. Exact; uncertain parents are one draw for the whole clutch and not one for
 * each egg. Throws a RangeError for chances that do not sum to 1, a locus or genotype there is not,
 * no sire at all, or `together` beside several sires.
 */
export function clutchOdds(
  dam: Parent,
  sires: readonly PossibleSire[],
  catalogue: Catalogue,
  { fathers = 'one', together = new Map() }: Paternity = {},
): ClutchOdds {
  mustSumToOne(
    sires.map(({ weight }) => weight),
    'sires',
  );
  if (together.size > 0 && sires.length > 1) {
    throw new RangeError('What ties two parents together cannot be said of several sires.');
  }
  const males = sires.map(({ sire }) => sire);
  const wayOf = (weight: Fraction, of: readonly Parent[], shares: readonly Fraction[]): Way => ({
    weight,
    fathers: shares,
    crosses: crossesOf(dam, of, catalogue, together),
  });
  const ways =
    fathers === 'one'
      ? sires.map(({ sire, weight }) => wayOf(weight, [sire], [ONE]))
      : [
          wayOf(
            ONE,
            males,
            sires.map(({ weight }) => weight),
          ),
        ];
  return { catalogue, sexes: { female: HALF, male: HALF }, ways };
}

/** A clutch without a sire: all daughters. For `apart` see `fatherlessChances`; same throws. */
export function fatherlessOdds(dam: Parent, catalogue: Catalogue, apart: Fraction): ClutchOdds {
  if (!isChance(apart)) throw new RangeError('A share lies between 0 and 1.');
  const crosses = [...dam].map(([id, chances]): LocusCross => {
    const locus = locusOf(catalogue, id);
    mustSumToOne([...chances.values()], locus.name);
    const cases = [...chances].map(([genotype, weight]): Case => {
      const daughters = fatherlessChances(locus, genotype, apart);
      return { weight, broods: [{ female: daughters, male: certainly(WILD) }] };
    });
    return { locus, cases };
  });
  return {
    catalogue,
    sexes: { female: ONE, male: ZERO },
    ways: [{ weight: ONE, fathers: [ONE], crosses }],
  };
}

function crossesOf(
  dam: Parent,
  sires: readonly Parent[],
  catalogue: Catalogue,
  together: ReadonlyMap<string, readonly BothParents[]>,
): readonly LocusCross[] {
  const ids = new Set([dam, together, ...sires].flatMap((each) => [...each.keys()]));
  return [...ids].map((id): LocusCross => {
    const locus = locusOf(catalogue, id);
    const both = together.get(id);
    const draws = both
      ? both.map(({ chance, dam: female, sire }) => [chance, [female, sire]] as const)
      : product([dam, ...sires].map((parent) => parent.get(id) ?? certainly(WILD)));
    mustSumToOne(
      draws.map(([chance]) => chance),
      locus.name,
    );
    const cases = draws.map(([weight, [female = WILD, ...males]]): Case => {
      const broods = males.map((male) => ({
        female: childChances(locus, 'female', female, male),
        male: childChances(locus, 'male', female, male),
      }));
      return { weight, broods };
    });
    return { locus, cases };
  });
}

type Draw = readonly [Fraction, readonly number[]];

const product = (parents: readonly Chances[]): readonly Draw[] =>
  parents.reduce<readonly Draw[]>(
    (draws, chances) =>
      draws.flatMap(([weight, drawn]) =>
        [...chances].map(
          ([genotype, chance]) => [times(weight, chance), [...drawn, genotype]] as const,
        ),
      ),
    [[ONE, []]],
  );

function mustSumToOne(chances: readonly Fraction[], what: string): void {
  if (!same(sum(chances), ONE) || chances.some(({ n }) => n < 0n)) {
    throw new RangeError(`The chances of the ${what} do not sum to 1.`);
  }
}

/** Chance that an egg is a daughter, or a son, of each genotype at a locus; all of both sum to 1. */
export function eggChances(odds: ClutchOdds, locus: string): Brood {
  const ofSex = (sex: GeneSex): Chances => {
    const parts = odds.ways.flatMap((way) => {
      const cross = way.crosses.find((each) => each.locus.id === locus);
      const share = times(way.weight, odds.sexes[sex]);
      if (!cross) return [[share, certainly(WILD)] as const];
      return cross.cases.flatMap(({ weight, broods }) =>
        broods.map((brood, male) => {
          const father = way.fathers[male] ?? ZERO;
          return [times(times(share, weight), father), brood[sex]] as const;
        }),
      );
    });
    return blended(parts);
  };
  return { female: ofSex('female'), male: ofSex('male') };
}
