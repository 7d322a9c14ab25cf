import { parentsIn } from './ancestry.ts';
import type { Evidence } from './evidence.ts';
import { cellsOf, type Factor } from './factor.ts';
import { findingFactors, lookLikelihoods } from './findings.ts';
import type { Brood, Member, Pedigree } from './pedigree.ts';
import { flat, statesOf, type PedigreeModel, type States } from './states.ts';
import { tabulate, type Draft } from './tabulate.ts';

/**
 * One locus of a pedigree as variables and tables: the animals in the pedigree's order, each with the
 * states it can be in, and after them who fathered a clutch, where that is open.
 */
export interface Network {
  readonly states: States;
  /** Values each variable can take: states, or indices of fathers. */
  readonly domains: readonly (readonly number[])[];
  /** Only over variables that can take several values. */
  readonly factors: readonly Factor[];
  /** The clutch, or the single animal of it, whose father each variable after the animals is. */
  readonly choices: readonly Choice[];
  /** Where the records of an animal and its parents already rule out everything: it and them. */
  readonly impossible: readonly (readonly number[])[];
  /** Variables in a table that alone would be over the limit, and its cells. */
  readonly oversize: ReadonlyMap<number, number>;
}

export interface Choice {
  readonly clutch: number;
  readonly variable: number;
}

/** Throws a RangeError for evidence that does not fit the pedigree or the model. */
export function networkOf(
  pedigree: Pedigree,
  model: PedigreeModel,
  evidence: Evidence,
  mostCells: number,
): Network {
  const states = statesOf(model);
  const { members, clutches } = pedigree;
  const likelihoods = lookLikelihoods(pedigree, states, evidence.findings);
  const priors = priorsOf(pedigree, states, evidence);
  const impossible: (readonly number[])[] = [];
  const domains: number[][] = [];
  members.forEach((member, index) => {
    const inherited = inheritable(member, clutches, domains, states, priors.get(index));
    const seen = inherited.filter((state) => (likelihoods.get(index)?.[state] ?? 1) > 0);
    if (seen.length === 0) impossible.push([index, ...parentsOf(member, clutches)]);
    const any = ofSex(member, states);
    domains.push(seen.length > 0 ? seen : inherited.length > 0 ? inherited : any);
  });

  const choices: Choice[] = [];
  const choiceFor = (clutch: number, brood: Brood): number => {
    const variable = domains.length;
    choices.push({ clutch, variable });
    domains.push([...brood.fathers.keys()].filter((n) => (brood.fathers[n]?.weight ?? 0) > 0));
    return variable;
  };
  const drafts: Draft[] = [];
  const shared = clutches.map((brood, clutch) => {
    if (brood.eachItsOwn || brood.fathers.length < 2) return undefined;
    const variable = choiceFor(clutch, brood);
    drafts.push({ scope: [variable], weigh: ([father = 0]) => brood.fathers[father]?.weight ?? 0 });
    return variable;
  });
  members.forEach((member, index) => {
    const likelihood = likelihoods.get(index);
    const prior = priors.get(index);
    if (likelihood) drafts.push({ scope: [index], weigh: ([s = 0]) => likelihood[s] ?? 0 });
    if (prior) drafts.push({ scope: [index], weigh: ([s = 0]) => prior[s] ?? 0 });
    const brood = member.clutch === undefined ? undefined : clutches[member.clutch];
    if (!brood || member.clutch === undefined) return;
    let choice = shared[member.clutch];
    if (brood.eachItsOwn && brood.fathers.length > 1) {
      choice = choiceFor(member.clutch, brood);
      const weigh: Draft['weigh'] = ([father = 0]) => brood.fathers[father]?.weight ?? 0;
      drafts.push({ scope: [choice], weigh });
    }
    drafts.push(...descent(index, brood, choice, states));
  });
  drafts.push(...findingFactors(pedigree, states, evidence.findings, shared, domains));

  const oversize = new Map<number, number>();
  const sizes = domains.map(({ length }) => length);
  const factors = drafts.flatMap((draft): readonly Factor[] => {
    const cells = cellsOf(draft.scope, sizes);
    if (cells > mostCells) {
      draft.scope.forEach((variable) => oversize.set(variable, cells));
      return [];
    }
    const factor = tabulate(draft, domains);
    if (!factor.table.some((weight) => weight > 0)) impossible.push(draft.scope);
    return factor.scope.length > 0 ? [factor] : [];
  });
  return { states, domains, factors, choices, impossible, oversize };
}

const ofSex = ({ sex }: Member, { females, count }: States): number[] => {
  const from = sex === 'male' ? females : 0;
  const to = sex === 'female' ? females : count;
  return Array.from({ length: to - from }, (_, n) => from + n);
};

const parentsOf = ({ clutch }: Member, clutches: readonly Brood[]): readonly number[] => {
  const brood = clutch === undefined ? undefined : clutches[clutch];
  return brood ? parentsIn(brood) : [];
};

/** The states an animal can have by its parents' states, or by its prior. */
function inheritable(
  member: Member,
  clutches: readonly Brood[],
  domains: readonly (readonly number[])[],
  states: States,
  prior: Float64Array | undefined,
): number[] {
  const brood = member.clutch === undefined ? undefined : clutches[member.clutch];
  const all = ofSex(member, states);
  if (!brood) return all.filter((state) => (prior?.[state] ?? 0) > 0);
  const can = new Set<number>();
  for (const { sire, weight } of brood.fathers) {
    if (weight === 0) continue;
    for (const dam of domains[brood.dam] ?? []) {
      const males = sire === undefined ? [undefined] : (domains[sire] ?? []);
      for (const male of males) {
        const row = states.hatched(dam, male === undefined ? undefined : male - states.females);
        for (const state of all) if ((row[state] ?? 0) > 0) can.add(state);
      }
    }
  }
  return all.filter((state) => can.has(state));
}

/** What ties a young to its parents: a table for each possible father, 1 where he was not the one. */
function descent(
  index: number,
  brood: Brood,
  choice: number | undefined,
  states: States,
): readonly Draft[] {
  return brood.fathers.map(({ sire }, father): Draft => {
    const one = choice === undefined;
    const scope = [
      index,
      brood.dam,
      ...(one ? [] : [choice]),
      ...(sire === undefined ? [] : [sire]),
    ];
    const weigh: Draft['weigh'] = ([state = 0, dam = 0, ...rest]) => {
      if (!one && rest[0] !== father) return 1;
      const male = rest[one ? 0 : 1];
      const row = states.hatched(dam, male === undefined ? undefined : male - states.females);
      return row[state] ?? 0;
    };
    return { scope, weigh };
  });
}

/** Of each animal without parents; half of those of unknown sex are female. */
function priorsOf(
  { members, indexOf }: Pedigree,
  states: States,
  { priors }: Evidence,
): ReadonlyMap<number, Float64Array> {
  for (const id of priors.keys()) {
    const index = indexOf.get(id);
    if (index === undefined) throw new RangeError(`No animal ${id} is in the pedigree.`);
    if (members[index]?.clutch === undefined) continue;
    throw new RangeError(`${id} has parents in the pedigree: its chances follow from theirs.`);
  }
  const wild = new Float64Array(states.count);
  wild[0] = 1;
  wild[states.females] = 1;
  return new Map(
    members.flatMap(({ id, clutch }, index) => {
      if (clutch !== undefined) return [];
      const said = priors.get(id);
      if (!said) return [[index, wild] as const];
      const prior = flat(states, said, `The prior of ${id}`);
      const totals = [prior.subarray(0, states.females), prior.subarray(states.females)].map(
        (part) => part.reduce((sum, chance) => sum + chance, 0),
      );
      return [
        [
          index,
          prior.map((chance, state) =>
            chance === 0 ? 0 : chance / (totals[state < states.females ? 0 : 1] ?? 1),
          ),
        ] as const,
      ];
    }),
  );
}
