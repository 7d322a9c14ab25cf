import { forward, marginals, normalised } from './clique-tree.ts';
import { cellsWithin, multiplyInto, type Factor, type Sizes } from './factor.ts';
import { groupsOf, withoutSilent, type Group } from './groups.ts';
import { narrowed, type Narrowed } from './narrow.ts';
import type { Network } from './network.ts';
import { planFor, type Plan } from './plan.ts';

/** Why a group was not solved, in variables. */
export type Unsolved =
  | {
      readonly kind: 'too-large';
      readonly plan: Pick<Plan, 'width' | 'cells'>;
      readonly variables: readonly number[];
    }
  | { readonly kind: 'contradiction'; readonly variables: readonly number[] };

/** Chances of each value of a variable, by its place in the domain. */
export type Chances = ReadonlyMap<number, Float64Array>;

const sizesOf = ({ domains }: Network): Sizes => domains.map(({ length }) => length);

/** What evidence can pass between before it is looked at. */
export const networkGroups = (network: Network): readonly Group[] =>
  groupsOf([...network.domains.keys()], network.factors);

/** A group as far as elimination by hand goes, or why it ends there. */
function prepared(network: Network, { variables, factors }: Group): Narrowed | Unsolved {
  if (network.impossible.some((scope) => scope.some((each) => variables.includes(each)))) {
    return { kind: 'contradiction', variables };
  }
  const cells = variables.reduce((sum, each) => sum + (network.oversize.get(each) ?? 0), 0);
  if (cells > 0) {
    const width = variables.filter((variable) => network.oversize.has(variable)).length;
    return { kind: 'too-large', plan: { width, cells }, variables };
  }
  return narrowed(variables, factors, sizesOf(network)) ?? { kind: 'contradiction', variables };
}

/** The chances of every variable of a group, or why not; parts that fall apart are told apart. */
export function solveGroup(
  network: Network,
  group: Group,
  mostCells: number,
): { readonly chances: Chances; readonly unsolved: readonly Unsolved[] } {
  if (group.factors.length === 0 && network.impossible.length + network.oversize.size === 0) {
    // Certain from the start, as most animals are of most loci.
    return { chances: new Map(group.variables.map((v) => [v, Float64Array.of(1)])), unsolved: [] };
  }
  const ready = prepared(network, group);
  if ('kind' in ready) return { chances: new Map(), unsolved: [ready] };
  const chances = new Map<number, Float64Array>();
  const unsolved: Unsolved[] = [];
  for (const part of groupsOf(group.variables, ready.factors)) {
    const plan = planFor(part.variables, scopesOf(part), ready.sizes, [], mostCells);
    if (plan.cells > mostCells) {
      unsolved.push({ kind: 'too-large', plan, variables: part.variables });
      continue;
    }
    const swept = forward(plan, part.factors, ready.sizes, []);
    if (!swept)
      return {
        chances: new Map(),
        unsolved: [{ kind: 'contradiction', variables: group.variables }],
      };
    for (const [variable, values] of marginals(swept.buckets, ready.sizes)) {
      chances.set(variable, overDomain(network, ready, variable, values));
    }
  }
  return { chances, unsolved };
}

const scopesOf = ({ factors }: Group) => factors.map(({ scope }) => scope);

function overDomain(
  { domains }: Network,
  { open }: Narrowed,
  variable: number,
  values: Float64Array,
): Float64Array {
  const all = new Float64Array(domains[variable]?.length ?? 0);
  open.get(variable)?.forEach((value, n) => (all[value] = values[n] ?? 0));
  return all;
}

/**
 * The joint chances of a few variables, over their whole domains in the order asked, or why not.
 * Only what bears on them is worked out.
 */
export function query(
  network: Network,
  asked: readonly number[],
  mostCells: number,
): Factor | Unsolved {
  const sizes = sizesOf(network);
  const table = new Float64Array(asked.reduce((n, v) => n * (sizes[v] ?? 1), 1)).fill(1);
  for (const group of networkGroups(network)) {
    const here = asked.filter((variable) => group.variables.includes(variable));
    if (here.length === 0) continue;
    const ready = prepared(network, group);
    if ('kind' in ready) return ready;
    for (const part of groupsOf(group.variables, ready.factors)) {
      const answered = here.filter((variable) => part.variables.includes(variable));
      const swept = sweep(part, answered, ready.sizes, mostCells, answered.length > 0);
      if ('kind' in swept) return swept;
      if (answered.length === 0) continue;
      multiplyInto(table, asked, spread(swept, ready, sizes), sizes);
    }
  }
  return { scope: asked, table: normalised(table) };
}

/** Parts without what is asked for bear on nothing, but must not contradict each other. */
function sweep(
  part: Group,
  asked: readonly number[],
  sizes: Sizes,
  mostCells: number,
  needed: boolean,
): Factor | Unsolved {
  const { variables, factors } = withoutSilent(part, asked, sizes);
  const plan = planFor(variables, scopesOf({ variables, factors }), sizes, asked, mostCells);
  if (plan.cells > mostCells) {
    if (!needed) return { scope: [], table: Float64Array.of(1) };
    return { kind: 'too-large', plan, variables: part.variables };
  }
  const swept = forward(plan, factors, sizes, asked);
  return swept?.kept ?? { kind: 'contradiction', variables: part.variables };
}

/** A table over what is still open, written out over the whole domains. */
function spread(factor: Factor, { open, sizes: left }: Narrowed, sizes: Sizes): Factor {
  const { scope } = factor;
  const table = new Float64Array(scope.reduce((n, v) => n * (sizes[v] ?? 1), 1));
  const whole = cellsWithin(scope, scope, left);
  whole.forEach((cell, n) => {
    let [rest, to, stride] = [n, 0, 1];
    for (const variable of scope.toReversed()) {
      const count = left[variable] ?? 1;
      to += stride * (open.get(variable)?.[rest % count] ?? 0);
      rest = Math.floor(rest / count);
      stride *= sizes[variable] ?? 1;
    }
    table[to] = factor.table[cell] ?? 0;
  });
  return { scope, table };
}

/** Whether anything in the network rules everything out, as far as the limit lets it be seen. */
export function contradicts(network: Network, mostCells: number): boolean {
  if (network.impossible.length > 0) return true;
  return networkGroups(network).some((group) => {
    const ready = prepared(network, group);
    if ('kind' in ready) return ready.kind === 'contradiction';
    return groupsOf(group.variables, ready.factors).some((part) => {
      const swept = sweep(part, [], ready.sizes, mostCells, false);
      return 'kind' in swept;
    });
  });
}
