import { parentsIn } from './ancestry.ts';
import { conflictIn } from './conflict.ts';
import type { Evidence, Finding } from './evidence.ts';
import { groupsOf } from './groups.ts';
import type { Network } from './network.ts';
import type { Pedigree } from './pedigree.ts';
import type { Unsolved } from './solve.ts';
import type { PedigreeModel } from './states.ts';
import type { Contradiction, TooLarge, Trouble } from './trouble.ts';

/** What went unsolved, in the keeper's animals and findings. */
export function troublesOf(
  pedigree: Pedigree,
  model: PedigreeModel,
  evidence: Evidence,
  network: Network,
  unsolved: readonly Unsolved[],
  mostCells: number,
): readonly Trouble[] {
  const named = (variables: readonly number[]): readonly string[] =>
    variables.flatMap((variable) => pedigree.members[variable]?.id ?? []);
  const tooLarge = unsolved.flatMap((each): readonly TooLarge[] => {
    if (each.kind !== 'too-large') return [];
    const { width, cells } = each.plan;
    return [{ kind: 'too-large', width, cells, animals: named(each.variables) }];
  });
  const clashing = unsolved.flatMap((each) =>
    each.kind === 'contradiction' ? [each.variables] : [],
  );
  // Parents that are beyond doubt stand alone, but belong to the young that contradicts them.
  const joined = [...clashing, ...network.impossible].map((scope) => ({ scope }));
  const apart = groupsOf([...new Set(joined.flatMap(({ scope }) => scope))], joined);
  const contradictions = apart.map(({ variables }): Contradiction => {
    const touched = new Set(named(variables));
    const about = (finding: Finding) => animalsOf(pedigree, finding);
    const suspects = evidence.findings.filter((each) => about(each).some((id) => touched.has(id)));
    const conflict = conflictIn(pedigree, model, evidence, suspects, mostCells);
    const guilty = evidence.findings.filter(({ id }) => conflict.findings.includes(id));
    const animals = new Set([...touched, ...conflict.priors, ...guilty.flatMap(about)]);
    return { kind: 'contradiction', ...conflict, animals: [...animals] };
  });
  return [...tooLarge, ...contradictions];
}

/** Whom a finding is about: of counted young, their possible parents. */
export function animalsOf({ members, clutches }: Pedigree, finding: Finding): readonly string[] {
  if (finding.kind !== 'young') return [finding.animal];
  const brood = clutches.find(({ id }) => id === finding.clutch);
  return brood ? parentsIn(brood).flatMap((index) => members[index]?.id ?? []) : [];
}
