import type { CountedYoung, Finding } from './evidence.ts';
import type { Brood, Pedigree } from './pedigree.ts';
import { flat, type States } from './states.ts';
import type { Draft } from './tabulate.ts';

/** How likely everything seen of each animal itself is, by its state. */
export function lookLikelihoods(
  { indexOf }: Pedigree,
  states: States,
  findings: readonly Finding[],
): ReadonlyMap<number, Float64Array> {
  const likelihoods = new Map<number, Float64Array>();
  for (const finding of findings) {
    if (finding.kind === 'young') continue;
    const index = indexOf.get(finding.animal);
    if (index === undefined)
      throw new RangeError(`No animal ${finding.animal} is in the pedigree.`);
    const likelihood = flat(states, finding.likelihood, `The likelihood of ${finding.id}`);
    const before = likelihoods.get(index);
    const both = before
      ? likelihood.map((value, state) => value * (before[state] ?? 0))
      : likelihood;
    likelihoods.set(index, both);
  }
  return likelihoods;
}

/**
 * Counted young as tables over their parents: a test breeding with n young costs one, not n animals.
 * `shared` holds the variable of each clutch that says who fathered all of it.
 */
export function findingFactors(
  { clutches }: Pedigree,
  states: States,
  findings: readonly Finding[],
  shared: readonly (number | undefined)[],
  domains: readonly (readonly number[])[],
): readonly Draft[] {
  return findings.flatMap((finding): readonly Draft[] => {
    if (finding.kind !== 'young') return [];
    const clutch = clutches.findIndex(({ id }) => id === finding.clutch);
    const brood = clutches[clutch];
    if (!brood) throw new RangeError(`No clutch ${finding.clutch} is in the pedigree.`);
    const seen = finding.young.map(({ count, likelihood }) => {
      if (!Number.isInteger(count) || count < 0) throw new RangeError(`${count} young cannot be.`);
      return { count, of: flat(states, likelihood, `The likelihood of ${finding.id}`) };
    });
    const choice = shared[clutch];
    if (choice === undefined) return [mixed(brood, seen, states, domains)];
    return chosen(brood, choice, seen, states, domains);
  });
}

interface Seen {
  readonly count: CountedYoung['count'];
  readonly of: Float64Array;
}

type Row = Float64Array;

const chanceOf = (row: Row, { of }: Seen): number =>
  row.reduce((sum, chance, state) => sum + chance * (of[state] ?? 0), 0);

/** Logarithms: powers of many young would sink to 0. */
const logOf = (seen: readonly Seen[], chance: (each: Seen) => number): number =>
  seen.reduce(
    (sum, each) => (each.count === 0 ? sum : sum + each.count * Math.log(chance(each))),
    0,
  );

/** Where one male fathered all, or each egg drew its own father. */
function mixed(
  { dam, fathers }: Brood,
  seen: readonly Seen[],
  states: States,
  domains: readonly (readonly number[])[],
): Draft {
  const sires = fathers.flatMap(({ sire }) => (sire === undefined ? [] : [sire]));
  const log = ([female = 0, ...males]: readonly number[]): number => {
    const rows = fathers.map(({ sire, weight }) => {
      const male = sire === undefined ? undefined : males[sires.indexOf(sire)];
      const row = states.hatched(female, male === undefined ? undefined : male - states.females);
      return { row, weight };
    });
    return logOf(seen, (each) =>
      rows.reduce((sum, { row, weight }) => sum + weight * chanceOf(row, each), 0),
    );
  };
  const scope = [dam, ...sires];
  // Only once it is asked for: a table over the limit is never made.
  let most: number | undefined;
  const weigh: Draft['weigh'] = (values) => {
    most ??= greatest(scope, domains, log);
    return Math.exp(log(values) - most);
  };
  return { scope, weigh };
}

/** A table for each possible father of all, 1 where it was not he; all are scaled alike. */
function chosen(
  { dam, fathers }: Brood,
  choice: number,
  seen: readonly Seen[],
  states: States,
  domains: readonly (readonly number[])[],
): readonly Draft[] {
  const log = ([female = 0, male]: readonly number[]): number => {
    const row = states.hatched(female, male === undefined ? undefined : male - states.females);
    return logOf(seen, (each) => chanceOf(row, each));
  };
  const parents = ({ sire }: Brood['fathers'][number]): readonly number[] =>
    sire === undefined ? [dam] : [dam, sire];
  const most = fathers.reduce(
    (so, father) => Math.max(so, greatest(parents(father), domains, log)),
    -Infinity,
  );
  return fathers.map((father, index): Draft => ({
    scope: [choice, ...parents(father)],
    weigh: ([he, ...values]) => (he === index ? Math.exp(log(values) - most) : 1),
  }));
}

/** The greatest logarithm, so that its power becomes 1; 0 where none is possible. */
function greatest(
  scope: readonly number[],
  domains: readonly (readonly number[])[],
  log: (values: readonly number[]) => number,
): number {
  const all = scope.reduce<readonly (readonly number[])[]>(
    (so, variable) => so.flatMap((values) => (domains[variable] ?? []).map((v) => [...values, v])),
    [[]],
  );
  const most = all.reduce((so, values) => Math.max(so, log(values)), -Infinity);
  return most === -Infinity ? 0 : most;
}
