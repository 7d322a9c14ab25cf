import { blended, type Chances } from './chances.ts';
import type { Brood, ClutchOdds, LocusCross, Way } from './clutch-odds.ts';
import { add, fraction, ONE, over, sum, times, type Fraction } from './fraction.ts';
import { survivalOf } from './inheritance.ts';
import type { BySex, GeneSex, Locus } from './locus.ts';
import { lookOf } from './look.ts';

// The table of looks is a sum of products. A term is one father in one set of parents' genotypes at
// the loci that cost eggs; within it, loci multiply. Where nothing is lost and one male is meant,
// there is a single term.

/** A look at a locus: its share among a father's young of a sex, and the genotypes it is made of. */
export interface TermLook {
  readonly share: BySex<Fraction>;
  /** Chances that live, by genotype; they sum to the share. */
  readonly genotypes: BySex<ReadonlyMap<number, Fraction>>;
}

export interface LookTerm {
  /** Of all hatchlings and of all eggs, the sex's share in it. */
  readonly weight: BySex<Fraction>;
  readonly eggWeight: BySex<Fraction>;
  /** By locus, by look. */
  readonly loci: readonly (readonly TermLook[])[];
}

export interface TermLocus {
  readonly locus: Locus;
  /** Names of looks; the wild look is empty. */
  readonly looks: readonly string[];
  /** Some of its eggs do not live. */
  readonly loses: boolean;
}

/** Loci at which parents carry anything, in the catalogue's order, and the terms over them. */
export function lookTerms(odds: ClutchOdds) {
  const contexts = odds.ways.flatMap((way) => contextsOf(odds, way));
  const loci = odds.catalogue.loci.flatMap((locus): readonly TermLocus[] => {
    const crosses = odds.ways.flatMap((way) =>
      way.crosses.filter((cross) => cross.locus.id === locus.id),
    );
    if (crosses.length === 0) return [];
    const broods = crosses.flatMap(({ cases }) => cases.flatMap((each) => each.broods));
    return [{ locus, looks: looksOf(odds, locus, broods), loses: crosses.some(losesEggs) }];
  });
  const terms = contexts.flatMap((context) => termsOf(odds, context, loci));
  const hatch = sum(contexts.map(({ weight, hatch: share }) => times(weight, share)));
  // All hatchlings together: 1, but for parents of whom nothing lives.
  const whole = sum(contexts.filter((each) => each.hatch.n > 0n).map(({ weight }) => weight));
  return { loci, terms, hatch, whole };
}

/** A way, with one case chosen at each locus that costs eggs. */
interface Context {
  readonly way: Way;
  readonly weight: Fraction;
  readonly chosen: ReadonlyMap<string, readonly Brood[]>;
  /** Share of eggs that live. */
  readonly hatch: Fraction;
}

function contextsOf(odds: ClutchOdds, way: Way): readonly Context[] {
  const costly = way.crosses.filter(losesEggs);
  let picks: readonly { weight: Fraction; chosen: ReadonlyMap<string, readonly Brood[]> }[] = [
    { weight: way.weight, chosen: new Map() },
  ];
  for (const { locus, cases } of costly) {
    picks = picks.flatMap(({ weight, chosen }) =>
      cases.map((each) => ({
        weight: times(weight, each.weight),
        chosen: new Map([...chosen, [locus.id, each.broods]]),
      })),
    );
  }
  return picks.map(({ weight, chosen }) => {
    const hatch = sum(
      way.fathers.map((father, n) => {
        const living = (sex: GeneSex) =>
          costly.reduce((share, { locus }) => {
            const brood = chosen.get(locus.id)?.[n];
            return times(share, brood ? sum(survivors(locus, sex, brood[sex]).values()) : ONE);
          }, odds.sexes[sex]);
        return times(father, add(living('female'), living('male')));
      }),
    );
    return { way, weight, chosen, hatch };
  });
}

const survivors = (locus: Locus, sex: GeneSex, chances: Chances): Map<number, Fraction> =>
  new Map(
    [...chances]
      .map(
        ([genotype, chance]) =>
          [genotype, times(chance, survivalOf(locus, sex, genotype))] as const,
      )
      .filter(([, chance]) => chance.n > 0n),
  );

const losesEggs = ({ locus, cases }: LocusCross): boolean =>
  cases.some(({ broods }) =>
    broods.some((brood) =>
      (['female', 'male'] as const).some((sex) =>
        [...brood[sex].keys()].some((genotype) => {
          const share = survivalOf(locus, sex, genotype);
          return share.n < share.d;
        }),
      ),
    ),
  );

function looksOf(odds: ClutchOdds, locus: Locus, broods: readonly Brood[]): readonly string[] {
  const names = broods.flatMap((brood) =>
    (['female', 'male'] as const)
      .filter((sex) => odds.sexes[sex].n > 0n)
      .flatMap((sex) =>
        [...survivors(locus, sex, brood[sex]).keys()].map(
          (genotype) => lookOf(locus, sex, genotype).name,
        ),
      ),
  );
  return [...new Set(names)];
}

function termsOf(
  odds: ClutchOdds,
  { way, weight, chosen, hatch }: Context,
  loci: readonly TermLocus[],
): readonly LookTerm[] {
  if (hatch.n === 0n) return [];
  return way.fathers.map((father, n) => {
    const egg = (sex: GeneSex) => times(times(weight, father), odds.sexes[sex]);
    const eggWeight = { female: egg('female'), male: egg('male') };
    return {
      eggWeight,
      weight: { female: over(eggWeight.female, hatch), male: over(eggWeight.male, hatch) },
      loci: loci.map(({ locus, looks }) => {
        const cross = way.crosses.find((each) => each.locus.id === locus.id);
        const broods = chosen.get(locus.id);
        const cases = cross?.cases ?? [];
        const ofSex = (sex: GeneSex) => {
          if (broods) return survivors(locus, sex, broods[n]?.[sex] ?? new Map());
          if (!cross) return new Map([[0, fraction(1)]]);
          return blended(
            cases.map((each) => [each.weight, each.broods[n]?.[sex] ?? new Map()] as const),
          );
        };
        const brood = { female: ofSex('female'), male: ofSex('male') };
        return looks.map((look) => lookAmong(locus, look, brood));
      }),
    };
  });
}

function lookAmong(locus: Locus, name: string, brood: BySex<ReadonlyMap<number, Fraction>>) {
  const of = (sex: GeneSex) =>
    new Map([...brood[sex]].filter(([genotype]) => lookOf(locus, sex, genotype).name === name));
  const genotypes = { female: of('female'), male: of('male') };
  const share = (sex: GeneSex) => sum(genotypes[sex].values());
  return { genotypes, share: { female: share('female'), male: share('male') } };
}
