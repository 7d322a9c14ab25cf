import type { Sizes } from './factor.ts';

/** In which order variables are summed out, and what that costs. */
export interface Plan {
  readonly order: readonly number[];
  /** For each in order: the variables its table is over, itself the last. */
  readonly cliques: readonly (readonly number[])[];
  /** Variables in the largest table. */
  readonly width: number;
  /** Cells of all tables. */
  readonly cells: number;
}

type Graph = ReadonlyMap<number, Set<number>>;

/**
 * A cheap order, found without making a table: greedily by the smallest table, and where that comes
 * out over the limit also by the least fill-in. Neither is the best there is; that is NP-hard
 * (Arnborg, Corneil & Proskurowski 1987). What is kept is not summed out.
 */
export function planFor(
  variables: readonly number[],
  scopes: readonly (readonly number[])[],
  sizes: Sizes,
  keep: readonly number[],
  mostCells: number,
): Plan {
  const bySize = greedy(graphOf(variables, scopes, keep), sizes, keep, tableCells);
  if (bySize.cells <= mostCells) return bySize;
  const byFill = greedy(graphOf(variables, scopes, keep), sizes, keep, fillIn);
  return byFill.cells < bySize.cells ? byFill : bySize;
}

/** What is kept ends in one table, so it is joined from the start. */
function graphOf(
  variables: readonly number[],
  scopes: readonly (readonly number[])[],
  keep: readonly number[],
): Graph {
  const graph = new Map(variables.map((variable) => [variable, new Set<number>()]));
  for (const scope of [...scopes, keep]) {
    for (const a of scope) for (const b of scope) if (a !== b) graph.get(a)?.add(b);
  }
  return graph;
}

type Score = (graph: Graph, variable: number, sizes: Sizes) => number;

const tableCells: Score = (graph, variable, sizes) => {
  let cells = sizes[variable] ?? 1;
  for (const other of graph.get(variable) ?? []) cells *= sizes[other] ?? 1;
  return cells;
};

const fillIn: Score = (graph, variable, sizes) => {
  const around = [...(graph.get(variable) ?? [])];
  let fill = 0;
  around.forEach((a, n) => {
    const known = graph.get(a);
    for (const b of around.slice(n + 1)) {
      if (!known?.has(b)) fill += Math.log(sizes[a] ?? 1) * Math.log(sizes[b] ?? 1);
    }
  });
  return fill;
};

function greedy(graph: Graph, sizes: Sizes, keep: readonly number[], score: Score): Plan {
  const kept = new Set(keep);
  const scores = new Map<number, number>();
  for (const variable of graph.keys()) {
    if (!kept.has(variable)) scores.set(variable, score(graph, variable, sizes));
  }
  const order: number[] = [];
  const cliques: (readonly number[])[] = [];
  let [width, cells] = [0, 0];
  while (scores.size > 0) {
    const next = smallest(scores);
    const around = [...(graph.get(next) ?? [])];
    order.push(next);
    cliques.push([...around, next]);
    width = Math.max(width, around.length + 1);
    cells += tableCells(graph, next, sizes);
    scores.delete(next);
    joinAround(graph, next, around);
    const touched = score === fillIn ? twoSteps(graph, around) : around;
    for (const variable of touched) {
      if (scores.has(variable)) scores.set(variable, score(graph, variable, sizes));
    }
  }
  return { order, cliques, width, cells };
}

function smallest(scores: ReadonlyMap<number, number>): number {
  let [best, least] = [-1, Infinity];
  for (const [variable, value] of scores) {
    if (best < 0 || value < least) [best, least] = [variable, value];
  }
  return best;
}

function joinAround(graph: Graph, gone: number, around: readonly number[]): void {
  for (const a of around) {
    const known = graph.get(a);
    known?.delete(gone);
    for (const b of around) if (a !== b) known?.add(b);
  }
}

const twoSteps = (graph: Graph, around: readonly number[]): ReadonlySet<number> =>
  new Set(around.flatMap((variable) => [variable, ...(graph.get(variable) ?? [])]));
