import { summedTo, type Factor, type Sizes } from './factor.ts';

/** Variables that evidence can pass between, and the tables over them. */
export interface Group<Table = Factor> {
  readonly variables: readonly number[];
  readonly factors: readonly Table[];
}

/** What no table joins is independent, and is worked out apart. */
export function groupsOf<Table extends Pick<Factor, 'scope'>>(
  variables: readonly number[],
  factors: readonly Table[],
): readonly Group<Table>[] {
  const above = new Map(variables.map((variable) => [variable, variable]));
  const top = (variable: number): number => {
    let at = variable;
    for (;;) {
      const next = above.get(at) ?? at;
      if (next === at) return at;
      above.set(at, above.get(next) ?? next);
      at = next;
    }
  };
  for (const { scope } of factors) {
    for (const variable of scope) above.set(top(variable), top(scope[0] ?? variable));
  }
  const groups = new Map<number, { variables: number[]; factors: Table[] }>();
  for (const variable of variables) {
    const group = groups.get(top(variable));
    if (group) group.variables.push(variable);
    else groups.set(top(variable), { variables: [variable], factors: [] });
  }
  for (const factor of factors) groups.get(top(factor.scope[0] ?? -1))?.factors.push(factor);
  return [...groups.values()];
}

/**
 * Leaves out young of which nothing is known: they say nothing of their parents. What is asked for
 * stays. Dropping them is exact and saves the tables that they would tie their parents into.
 */
export function withoutSilent(
  { variables, factors }: Group,
  asked: readonly number[],
  sizes: Sizes,
): Group {
  const kept = new Set(factors);
  const tables = new Map<number, Set<Factor>>(variables.map((each) => [each, new Set()]));
  for (const factor of factors) for (const v of factor.scope) tables.get(v)?.add(factor);
  const waiting = new Set(variables.filter((variable) => !asked.includes(variable)));
  for (const variable of waiting) {
    waiting.delete(variable);
    const [only, ...more] = tables.get(variable) ?? [];
    if (only && more.length === 0 && isSilent(variable, only, sizes)) {
      kept.delete(only);
      for (const other of only.scope) {
        tables.get(other)?.delete(only);
        if (!asked.includes(other)) waiting.add(other);
      }
    }
  }
  return {
    variables: variables.filter((v) => asked.includes(v) || (tables.get(v)?.size ?? 0) > 0),
    factors: factors.filter((factor) => kept.has(factor)),
  };
}

function isSilent(variable: number, factor: Factor, sizes: Sizes): boolean {
  const rest = factor.scope.filter((other) => other !== variable);
  const { table } = summedTo(rest, factor, sizes);
  const [first = 0] = table;
  return first > 0 && table.every((value) => Math.abs(value - first) <= 1e-13 * first);
}
