import type { GeneSex } from '../locus.ts';
import type { Evidence } from './evidence.ts';
import { networkOf } from './network.ts';
import type { Pedigree } from './pedigree.ts';
import { query } from './solve.ts';
import type { PedigreeModel, States } from './states.ts';
import { MOST_CELLS, type Limits, type Trouble } from './trouble.ts';
import { troublesOf } from './troubles.ts';

export interface State {
  readonly sex: GeneSex;
  readonly genotype: number;
}

/** What two animals are together, and how likely. */
export interface TogetherState {
  readonly chance: number;
  readonly a: State;
  readonly b: State;
}

export type Together =
  { readonly kind: 'together'; readonly chances: readonly TogetherState[] } | Trouble;

/**
 * The chances of two animals at once: what is known of one is tied to the other by young they share
 * and by common ancestors, so the clutch of a pair cannot be foretold from each alone. Chances over 0
 * only; they sum to 1. Throws a RangeError for one animal twice, and as `carrierPosteriors` does.
 */
export function jointPosterior(
  pedigree: Pedigree,
  model: PedigreeModel,
  evidence: Evidence,
  a: string,
  b: string,
  { mostCells = MOST_CELLS }: Limits = {},
): Together {
  const [first, second] = [pedigree.indexOf.get(a), pedigree.indexOf.get(b)];
  if (first === undefined || second === undefined || first === second) {
    throw new RangeError(`${a} and ${b} are not two animals of the pedigree.`);
  }
  const network = networkOf(pedigree, model, evidence, mostCells);
  const answer = query(network, [first, second], mostCells);
  if ('kind' in answer) {
    const [trouble] = troublesOf(pedigree, model, evidence, network, [answer], mostCells);
    if (trouble) return trouble;
    throw new Error('What went unsolved has no reason.');
  }
  const { states, domains } = network;
  const ofSecond = domains[second] ?? [];
  const chances = [...answer.table].flatMap((chance, cell): readonly TogetherState[] => {
    const place = Math.floor(cell / ofSecond.length);
    const [here, there] = [domains[first]?.[place], ofSecond[cell % ofSecond.length]];
    if (!(chance > 0) || here === undefined || there === undefined) return [];
    return [{ chance, a: stateAt(states, here), b: stateAt(states, there) }];
  });
  return { kind: 'together', chances };
}

const stateAt = ({ females }: States, state: number): State =>
  state < females ? { sex: 'female', genotype: state } : { sex: 'male', genotype: state - females };
