import { overStates } from './carrier-posteriors.ts';
import type { Evidence, Finding } from './evidence.ts';
import { networkOf, type Network } from './network.ts';
import type { Pedigree } from './pedigree.ts';
import { networkGroups, query, type Unsolved } from './solve.ts';
import type { ByGenotype, PedigreeModel } from './states.ts';
import { MOST_CELLS, type Limits, type Trouble } from './trouble.ts';
import { animalsOf, troublesOf } from './troubles.ts';

/** One piece of evidence, and what the chances would be had it not been seen. */
export interface Mover {
  readonly finding: string;
  readonly without: ByGenotype;
  /** How far it moved them, 0 to 1: half the sum of all differences (total variation). */
  readonly moved: number;
}

export type Moved =
  | {
      readonly kind: 'moved';
      readonly now: ByGenotype;
      /** By descent and priors alone. */
      readonly before: ByGenotype;
      /** The strongest first. Findings that changed nothing are left out. */
      readonly movers: readonly Mover[];
    }
  | Trouble;

/** Differences below this are rounding. */
const NOTHING = 1e-12;

/**
 * Why an animal's chances are what they are: each finding is left out in turn. What two findings each
 * prove alone moves nothing when only one is left out. Throws as `carrierPosteriors` does.
 */
export function whatMovedIt(
  pedigree: Pedigree,
  model: PedigreeModel,
  evidence: Evidence,
  animal: string,
  { mostCells = MOST_CELLS }: Limits = {},
): Moved {
  const index = pedigree.indexOf.get(animal);
  if (index === undefined) throw new RangeError(`No animal ${animal} is in the pedigree.`);
  const given = (findings: readonly Finding[]): Answer => {
    const some = { ...evidence, findings };
    const network = networkOf(pedigree, model, some, mostCells);
    const answer = query(network, [index], mostCells);
    if (!('kind' in answer)) return { network, chances: overStates(network, index, answer.table) };
    return { network, trouble: troubleOf(pedigree, model, some, network, answer, mostCells) };
  };
  const now = given(evidence.findings);
  if ('trouble' in now) return now.trouble;
  // Nothing seen yet, but still tying together whom it could tie together.
  const before = given(evidence.findings.map((finding) => unseen(model, finding)));
  if ('trouble' in before) return before.trouble;

  const bears = whatBears(pedigree, before.network, index);
  const movers: Mover[] = [];
  for (const finding of evidence.findings) {
    if (!bears(finding)) continue;
    const left = given(evidence.findings.filter((other) => other !== finding));
    if ('trouble' in left) return left.trouble;
    const moved = distance(now.chances, left.chances);
    if (moved > NOTHING) movers.push({ finding: finding.id, without: left.chances, moved });
  }
  movers.sort((a, b) => b.moved - a.moved);
  return { kind: 'moved', now: now.chances, before: before.chances, movers };
}

function unseen({ genotypes }: PedigreeModel, finding: Finding): Finding {
  const likelihood = {
    female: Array.from({ length: genotypes.female }, () => 1),
    male: Array.from({ length: genotypes.male }, () => 1),
  };
  if (finding.kind !== 'young') return { ...finding, likelihood };
  return { ...finding, young: [] };
}

type Answer =
  | { readonly network: Network; readonly chances: ByGenotype }
  | { readonly network: Network; readonly trouble: Trouble };

function troubleOf(
  pedigree: Pedigree,
  model: PedigreeModel,
  evidence: Evidence,
  network: Network,
  answer: Unsolved,
  mostCells: number,
): Trouble {
  const [trouble] = troublesOf(pedigree, model, evidence, network, [answer], mostCells);
  if (!trouble) throw new Error('What went unsolved has no reason.');
  return trouble;
}

/** Which findings can bear on an animal at all: past what descent alone decides none can. */
function whatBears(
  pedigree: Pedigree,
  network: Network,
  index: number,
): (finding: Finding) => boolean {
  const { members, clutches } = pedigree;
  const group = networkGroups(network).find(({ variables }) => variables.includes(index));
  const within = new Set(group?.variables);
  const animals = new Set([...within].flatMap((variable) => members[variable]?.id ?? []));
  // Young can tell who fathered them, also where there is no doubt of what their parents are.
  const open = new Set(
    network.choices.flatMap(({ clutch, variable }) =>
      within.has(variable) ? (clutches[clutch]?.id ?? []) : [],
    ),
  );
  return (finding) =>
    animalsOf(pedigree, finding).some((id) => animals.has(id)) ||
    (finding.kind === 'young' && open.has(finding.clutch));
}

const distance = (a: ByGenotype, b: ByGenotype): number =>
  [...a.female, ...a.male].reduce(
    (sum, chance, n) => sum + Math.abs(chance - ([...b.female, ...b.male][n] ?? 0)),
    0,
  ) / 2;
