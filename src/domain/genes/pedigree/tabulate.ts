import type { Factor } from './factor.ts';

/** A table before it is made. */
export interface Draft {
  readonly scope: readonly number[];
  /** By the value of each of the scope. */
  readonly weigh: (values: readonly number[]) => number;
}

/** The table of a draft. Variables that can only take one value are left out of its scope. */
export function tabulate({ scope, weigh }: Draft, domains: readonly (readonly number[])[]): Factor {
  const open = scope.map((variable) => domains[variable] ?? []);
  const cells = open.reduce((all, values) => all * values.length, 1);
  const table = new Float64Array(cells);
  const at = open.map(() => 0);
  const values = open.map(([first = 0]) => first);
  for (let cell = 0; cell < cells; cell += 1) {
    table[cell] = weigh(values);
    for (let digit = open.length - 1; digit >= 0; digit -= 1) {
      const next = (at[digit] ?? 0) + 1;
      const more = next < (open[digit]?.length ?? 1);
      at[digit] = more ? next : 0;
      values[digit] = open[digit]?.[at[digit] ?? 0] ?? 0;
      if (more) break;
    }
  }
  return { scope: scope.filter((variable) => (domains[variable]?.length ?? 0) > 1), table };
}
