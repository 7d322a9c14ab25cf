import type { Evidence } from './evidence.ts';
import { networkOf, type Network } from './network.ts';
import type { Pedigree } from './pedigree.ts';
import { networkGroups, solveGroup, type Unsolved } from './solve.ts';
import { bySex, type ByGenotype, type PedigreeModel } from './states.ts';
import { MOST_CELLS, type Limits, type Trouble } from './trouble.ts';
import { troublesOf } from './troubles.ts';

export interface Posteriors {
  /** Chances of each genotype; of both sexes together they sum to 1. Who is in trouble is missing. */
  readonly of: ReadonlyMap<string, ByGenotype>;
  /** Of clutches one of several fathered whole: each one's chance, in the order given, without repeats. */
  readonly fathers: ReadonlyMap<string, readonly number[]>;
  /** One trouble takes the answers from those it touches, not from the rest. */
  readonly troubles: readonly Trouble[];
}

/**
 * Exact chances of every animal's genotype at one locus, given all evidence.
 *
 * Assumed: parents as stated; founders independent; equal sexes at conception; young that hatch are
 * drawn alike but for `survival`; no new mutation. Good to about twelve places. Throws a RangeError for
 * evidence that does not fit the pedigree or the model.
 */
export function carrierPosteriors(
  pedigree: Pedigree,
  model: PedigreeModel,
  evidence: Evidence,
  { mostCells = MOST_CELLS }: Limits = {},
): Posteriors {
  const network = networkOf(pedigree, model, evidence, mostCells);
  const chances = new Map<number, Float64Array>();
  const unsolved: Unsolved[] = [];
  for (const group of networkGroups(network)) {
    const solved = solveGroup(network, group, mostCells);
    for (const [variable, values] of solved.chances) chances.set(variable, values);
    unsolved.push(...solved.unsolved);
  }
  const troubles = troublesOf(pedigree, model, evidence, network, unsolved, mostCells);
  const untold = new Set(troubles.flatMap(({ animals }) => animals));
  const of = new Map<string, ByGenotype>();
  pedigree.members.forEach(({ id }, index) => {
    const values = untold.has(id) ? undefined : chances.get(index);
    if (values) of.set(id, overStates(network, index, values));
  });
  return { of, fathers: fathersOf(pedigree, network, chances), troubles };
}

export function overStates(
  { states, domains }: Network,
  variable: number,
  values: Float64Array,
): ByGenotype {
  const all = Array.from({ length: states.count }, () => 0);
  domains[variable]?.forEach((state, place) => (all[state] = values[place] ?? 0));
  return bySex(states, all);
}

function fathersOf(
  { clutches }: Pedigree,
  { choices, domains }: Network,
  chances: ReadonlyMap<number, Float64Array>,
): ReadonlyMap<string, readonly number[]> {
  const fathers = new Map<string, readonly number[]>();
  for (const { clutch, variable } of choices) {
    const brood = clutches[clutch];
    const values = chances.get(variable);
    if (!brood || !values || brood.eachItsOwn) continue;
    const domain = domains[variable] ?? [];
    fathers.set(
      brood.id,
      brood.fathers.map((_, father) => values[domain.indexOf(father)] ?? 0),
    );
  }
  return fathers;
}
