import { cellsOf, cellsWithin, type Factor, type Sizes } from './factor.ts';

/** Some variables, the values still open to each (by their place among all), and their tables. */
export interface Narrowed {
  readonly open: ReadonlyMap<number, readonly number[]>;
  readonly factors: readonly Factor[];
  readonly sizes: Sizes;
}

/**
 * Strikes out what no table allows, again and again: a visual young leaves both its parents nothing
 * but to carry. Undefined where a variable is left with nothing. What is decided leaves the tables,
 * so that the pedigree falls apart into smaller ones. Lange K. & Goradia T.M. 1987, Am J Hum Genet
 * 40:250–256 (there for genotypes of families).
 */
export function narrowed(
  variables: readonly number[],
  factors: readonly Factor[],
  sizes: Sizes,
): Narrowed | undefined {
  const alive = new Map(
    variables.map((variable) => [variable, new Uint8Array(sizes[variable] ?? 1).fill(1)]),
  );
  const touching = new Map<number, Factor[]>();
  for (const factor of factors) {
    for (const variable of factor.scope) {
      const known = touching.get(variable);
      if (known) known.push(factor);
      else touching.set(variable, [factor]);
    }
  }
  const waiting = new Set(factors);
  for (const factor of waiting) {
    waiting.delete(factor);
    for (const variable of struckBy(factor, alive, sizes)) {
      if (!alive.get(variable)?.includes(1)) return undefined;
      touching.get(variable)?.forEach((other) => other !== factor && waiting.add(other));
    }
  }
  const open = new Map(
    [...alive].map(([variable, flags]) => [
      variable,
      [...flags.keys()].filter((value) => flags[value] === 1),
    ]),
  );
  const left = [...sizes];
  for (const [variable, values] of open) left[variable] = values.length;
  return {
    open,
    sizes: left,
    factors: factors.flatMap((factor) => cutDown(factor, open, sizes, left)),
  };
}

/** Strikes what a table does not support; says which variables lost something. */
function struckBy(
  { scope, table }: Factor,
  alive: ReadonlyMap<number, Uint8Array>,
  sizes: Sizes,
): readonly number[] {
  const digits = scope.map((variable) => ({
    variable,
    flags: alive.get(variable) ?? new Uint8Array(),
    used: new Uint8Array(sizes[variable] ?? 1),
  }));
  const at = digits.map(() => 0);
  for (const weight of table) {
    if (weight > 0 && digits.every(({ flags }, n) => flags[at[n] ?? 0] === 1)) {
      digits.forEach(({ used }, n) => (used[at[n] ?? 0] = 1));
    }
    for (let n = at.length - 1; n >= 0; n -= 1) {
      at[n] = (at[n] ?? 0) + 1;
      if ((at[n] ?? 0) < (digits[n]?.used.length ?? 1)) break;
      at[n] = 0;
    }
  }
  return digits.flatMap(({ variable, flags, used }) => {
    const lost = flags.some((flag, value) => flag === 1 && used[value] === 0);
    if (lost) flags.set(used);
    return lost ? [variable] : [];
  });
}

/** The part of a table that is still open; nothing where it is one number. */
function cutDown(
  factor: Factor,
  open: ReadonlyMap<number, readonly number[]>,
  sizes: Sizes,
  left: Sizes,
): readonly Factor[] {
  const { scope } = factor;
  const undecided = scope.filter((variable) => (left[variable] ?? 1) > 1);
  if (undecided.length === 0) return [];
  if (scope.every((variable) => left[variable] === sizes[variable])) return [factor];
  const table = new Float64Array(cellsOf(undecided, left));
  const cells = cellsWithin(scope, undecided, left);
  cells.forEach((cell, n) => {
    let [rest, from, stride] = [n, 0, 1];
    for (const variable of scope.toReversed()) {
      const count = left[variable] ?? 1;
      from += stride * (open.get(variable)?.[rest % count] ?? 0);
      rest = Math.floor(rest / count);
      stride *= sizes[variable] ?? 1;
    }
    table[cell] = factor.table[from] ?? 0;
  });
  return [{ scope: undecided, table }];
}
