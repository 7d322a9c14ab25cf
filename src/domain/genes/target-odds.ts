import { locusOf } from './catalogue.ts';
import type { Case, ClutchOdds, LocusCross, Way } from './clutch-odds.ts';
import { add, isChance, keyOf, over, sum, times, ZERO, type Fraction } from './fraction.ts';
import { WILD } from './genotype.ts';
import { survivalOf } from './inheritance.ts';
import type { GeneSex, Locus } from './locus.ts';
import { meets, type Target } from './target.ts';

/**
 * One possible set of parents' genotypes, and the chance that what is counted is a female, or a male,
 * that meets the target. Eggs are independent within a case, and only there.
 */
export interface TargetCase {
  readonly weight: Fraction;
  readonly female: Fraction;
  readonly male: Fraction;
}

/** What n counts. Eggs may also fail for other reasons than their genes, at the keeper's own rate. */
export type Counted =
  | { readonly of: 'hatchlings' }
  | { readonly of: 'eggs'; readonly hatchRate: Fraction }
  /** At conception, whether it can live or not. */
  | { readonly of: 'conceptions' };

/**
 * Exact. Throws a RangeError for a locus or an allele the catalogue does not have, and for a hatch
 * rate that is no chance.
 */
export function targetCases(
  odds: ClutchOdds,
  target: Target,
  counted: Counted,
): readonly TargetCase[] {
  if (counted.of === 'eggs' && !isChance(counted.hatchRate)) {
    throw new RangeError('A hatch rate lies between 0 and 1.');
  }
  const cases = new Map<string, TargetCase>();
  for (const way of odds.ways) {
    for (const { weight, fathers } of drawsOf(odds, way, target, counted.of !== 'conceptions')) {
      const of = (pick: (state: FatherState) => Fraction) =>
        sum(fathers.map((state, n) => times(way.fathers[n] ?? ZERO, pick(state))));
      const hatch = of((state) => add(state.hatch.female, state.hatch.male));
      const scaled = (chance: Fraction): Fraction => {
        if (counted.of === 'conceptions' || chance.n === 0n) return chance;
        return counted.of === 'eggs' ? times(chance, counted.hatchRate) : over(chance, hatch);
      };
      const female = scaled(of((state) => state.met.female));
      const male = scaled(of((state) => state.met.male));
      const key = `${keyOf(female)} ${keyOf(male)}`;
      const before = cases.get(key)?.weight ?? ZERO;
      cases.set(key, { weight: add(before, times(way.weight, weight)), female, male });
    }
  }
  return [...cases.values()];
}

/** The chance that one of what is counted meets the target. */
export const chanceOf = (cases: readonly TargetCase[]): Fraction =>
  sum(cases.map(({ weight, female, male }) => times(weight, add(female, male))));

type SexShares = Readonly<Record<GeneSex, Fraction>>;

/** Share of all conceptions by one father that meets the target and lives, and that lives at all. */
interface FatherState {
  readonly met: SexShares;
  readonly hatch: SexShares;
}
interface Draw {
  readonly weight: Fraction;
  readonly fathers: readonly FatherState[];
}

/** Locus by locus; sets of genotypes that come to the same are taken together at once. */
function drawsOf(odds: ClutchOdds, way: Way, target: Target, dying: boolean): readonly Draw[] {
  const { female, male } = odds.sexes;
  const sexes = { female, male };
  const met = {
    female: target.sex === 'male' ? ZERO : female,
    male: target.sex === 'female' ? ZERO : male,
  };
  const possible = !hasHopeless(odds, way, target);
  const start = { met: possible ? met : { female: ZERO, male: ZERO }, hatch: sexes };
  let draws: readonly Draw[] = [
    { weight: { n: 1n, d: 1n }, fathers: way.fathers.map(() => start) },
  ];
  for (const cross of way.crosses) {
    const wanted = target.wants.filter(({ locus }) => locus === cross.locus.id);
    if (wanted.length === 0 && !(dying && mayDie(cross.locus))) continue;
    const shares = cross.cases.map((each) => sharesOf(each, cross, target, dying));
    draws = combined(draws, shares);
  }
  return draws;
}

/** A want at a locus at which both parents are wild type, and that wild type does not meet. */
const hasHopeless = (odds: ClutchOdds, way: Way, { wants }: Target): boolean =>
  wants.some((want) => {
    const locus = locusOf(odds.catalogue, want.locus);
    const met = meets(want, locus, 'female', WILD);
    return !met && way.crosses.every((cross) => cross.locus.id !== want.locus);
  });

const mayDie = ({ pairs }: Locus): boolean => pairs.some(({ survival }) => survival !== undefined);

/** The factors by which one case of one locus scales each father's shares. */
function sharesOf({ weight, broods }: Case, { locus }: LocusCross, target: Target, dying: boolean) {
  const wants = target.wants.filter((want) => want.locus === locus.id);
  const fathers = broods.map((brood): FatherState => {
    const share = (sex: GeneSex, met: boolean) =>
      sum(
        [...brood[sex]]
          .filter(([genotype]) => !met || wants.every((want) => meets(want, locus, sex, genotype)))
          .map(([genotype, chance]) =>
            dying ? times(chance, survivalOf(locus, sex, genotype)) : chance,
          ),
      );
    return {
      met: { female: share('female', true), male: share('male', true) },
      hatch: { female: share('female', false), male: share('male', false) },
    };
  });
  return { weight, fathers };
}

function combined(draws: readonly Draw[], shares: readonly Draw[]): readonly Draw[] {
  const next = new Map<string, Draw>();
  for (const draw of draws) {
    for (const share of shares) {
      const fathers = draw.fathers.map((state, n) => scaledBy(state, share.fathers[n] ?? state));
      const key = fathers.map(stateKey).join(' ');
      const weight = add(next.get(key)?.weight ?? ZERO, times(draw.weight, share.weight));
      next.set(key, { weight, fathers });
    }
  }
  return [...next.values()];
}

const scaledBy = (state: FatherState, by: FatherState): FatherState => ({
  met: bothTimes(state.met, by.met),
  hatch: bothTimes(state.hatch, by.hatch),
});
const bothTimes = (a: SexShares, b: SexShares): SexShares => ({
  female: times(a.female, b.female),
  male: times(a.male, b.male),
});
const stateKey = ({ met, hatch }: FatherState): string =>
  [met.female, met.male, hatch.female, hatch.male].map(keyOf).join(' ');
