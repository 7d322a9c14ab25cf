import type { GeneSex } from '../locus.ts';
import type { State, TogetherState } from './joint-posterior.ts';
import { flat, statesOf, type ByGenotype, type PedigreeModel } from './states.ts';

export interface TestBreeding {
  /** What the tested animal (`a`) and the mate (`b`) are, together: see `jointPosterior`. */
  readonly pair: readonly TogetherState[];
  /** Whether a genotype of the tested animal is what is asked for, as a rule to carry the allele. */
  readonly carries: (sex: GeneSex, genotype: number) => boolean;
  /** The look that would show it, in the young: for each genotype 1 where it has that look, else 0. */
  readonly shows: ByGenotype;
  /** The chance to carry below which it counts as no carrier, say 0.05. */
  readonly below: number;
}

export interface Proof {
  /** Chance that it carries, after 0, 1, 2 … more young of which none shows, until it is below. */
  readonly ifNoneShow: readonly number[];
  /** Young needed for that. `never`: chance to carry falls no further than `floor`, above the bound. */
  readonly youngUntilBelow:
    | { readonly kind: 'young'; readonly count: number }
    | { readonly kind: 'never'; readonly floor: number }
    | { readonly kind: 'too-many'; readonly tried: number };
  /** If it carries: the chance of the next hatched young to show. 0 also where it cannot carry. */
  readonly chanceIfCarrier: number;
  /** If it carries: the chance that this mate can bring it to light at all. */
  readonly canShow: number;
  /** If it carries and the mate can: hatched young to the first that shows, on average. */
  readonly youngToProof: number | undefined;
  /** Chance that it carries, once one young shows. 1 is proof. Undefined where none can show. */
  readonly ifOneShows: number | undefined;
}

const MOST_YOUNG = 1_000;

/**
 * What more young from a mate would tell. Young are hatched and looked at: divide by the share of
 * eggs that hatch to have eggs. Parents' genotypes are one draw for all of the young.
 * Throws a RangeError for pairs without a dam and a sire, or `shows` that does not fit the model.
 */
export function whatWouldProve(
  model: PedigreeModel,
  { pair, carries, shows, below }: TestBreeding,
): Proof {
  const states = statesOf(model);
  const look = flat(states, shows, 'What would show it');
  const cases = pair
    .filter(({ chance }) => chance > 0)
    .map(({ chance, a, b }) => {
      const row = states.hatched(...damAndSire(a, b));
      const showing = row.reduce((sum, each, state) => sum + each * (look[state] ?? 0), 0);
      return { chance, showing, carrier: carries(a.sex, a.genotype) };
    });
  const carriers = cases.filter(({ carrier }) => carrier);
  const among = carriers.reduce((sum, { chance }) => sum + chance, 0);
  const able = carriers.filter(({ showing }) => showing > 0);
  const canShow = weightOf(able, () => 1) / (among || 1);

  const after = (young: number): number =>
    shareOf(cases, ({ showing }) => (1 - showing) ** young) ?? 0;
  const ifNoneShow = [after(0)];
  while (ifNoneShow.length <= MOST_YOUNG && !((ifNoneShow.at(-1) ?? 0) < below)) {
    ifNoneShow.push(after(ifNoneShow.length));
  }
  const reached = (ifNoneShow.at(-1) ?? 1) < below;
  // In the end only those are left that show least.
  const least = cases.reduce((so, { showing }) => Math.min(so, showing), 1);
  const floor = shareOf(cases, ({ showing }) => (showing === least ? 1 : 0)) ?? 0;
  return {
    ifNoneShow: floor >= below ? ifNoneShow.slice(0, 1) : ifNoneShow,
    youngUntilBelow: reached
      ? { kind: 'young', count: ifNoneShow.length - 1 }
      : floor >= below
        ? { kind: 'never', floor }
        : { kind: 'too-many', tried: MOST_YOUNG },
    chanceIfCarrier: weightOf(carriers, ({ showing }) => showing) / (among || 1),
    canShow,
    youngToProof:
      able.length === 0
        ? undefined
        : weightOf(able, ({ showing }) => 1 / showing) / weightOf(able, () => 1),
    ifOneShows: shareOf(cases, ({ showing }) => showing),
  };
}

interface Case {
  readonly chance: number;
  readonly showing: number;
  readonly carrier: boolean;
}

const weightOf = (cases: readonly Case[], likely: (each: Case) => number): number =>
  cases.reduce((sum, each) => sum + each.chance * likely(each), 0);

function shareOf(cases: readonly Case[], likely: (each: Case) => number): number | undefined {
  const all = weightOf(cases, likely);
  const carrying = weightOf(
    cases.filter(({ carrier }) => carrier),
    likely,
  );
  return all > 0 ? carrying / all : undefined;
}

function damAndSire(a: State, b: State): readonly [number, number] {
  if (a.sex === b.sex) throw new RangeError('A pair is a female and a male.');
  return a.sex === 'female' ? [a.genotype, b.genotype] : [b.genotype, a.genotype];
}
