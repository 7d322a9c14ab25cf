/** A table over some variables; the last of the scope runs fastest. Values are not negative. */
export interface Factor {
  readonly scope: readonly number[];
  readonly table: Float64Array;
}

/** How many values each variable can take. */
export type Sizes = readonly number[];

export const cellsOf = (scope: readonly number[], sizes: Sizes): number =>
  scope.reduce((cells, variable) => cells * (sizes[variable] ?? 1), 1);

/** For each cell of a table over `whole`, the cell of a table over `part` that it belongs to. */
export function cellsWithin(
  whole: readonly number[],
  part: readonly number[],
  sizes: Sizes,
): Int32Array {
  const strides = new Map<number, number>();
  let stride = 1;
  for (const variable of part.toReversed()) {
    strides.set(variable, stride);
    stride *= sizes[variable] ?? 1;
  }
  const cells = new Int32Array(cellsOf(whole, sizes));
  // What is there already is repeated for each value of the variable before, moved by its stride.
  let filled = 1;
  for (const variable of whole.toReversed()) {
    const [count, step] = [sizes[variable] ?? 1, strides.get(variable) ?? 0];
    for (let value = 1; value < count; value += 1) {
      const [to, by] = [value * filled, value * step];
      for (let n = 0; n < filled; n += 1) cells[to + n] = (cells[n] ?? 0) + by;
    }
    filled *= count;
  }
  return cells;
}

/** Multiplies a factor into a table over a scope that holds all its variables. */
export function multiplyInto(
  table: Float64Array,
  scope: readonly number[],
  factor: Factor,
  sizes: Sizes,
): void {
  const cells = cellsWithin(scope, factor.scope, sizes);
  for (let n = 0; n < table.length; n += 1) {
    table[n] = (table[n] ?? 0) * (factor.table[cells[n] ?? 0] ?? 0);
  }
}

/** Sums everything out of a table but the variables wanted. */
export function summedTo(wanted: readonly number[], factor: Factor, sizes: Sizes): Factor {
  const cells = cellsWithin(factor.scope, wanted, sizes);
  const table = new Float64Array(cellsOf(wanted, sizes));
  for (let n = 0; n < cells.length; n += 1) {
    const cell = cells[n] ?? 0;
    table[cell] = (table[cell] ?? 0) + (factor.table[n] ?? 0);
  }
  return { scope: wanted, table };
}

/** Scaled so that the greatest is 1, lest long products sink below what a number holds. */
export function scaled(factor: Factor): Factor {
  let greatest = 0;
  for (const value of factor.table) if (value > greatest) greatest = value;
  if (greatest === 0 || greatest === 1) return factor;
  return { scope: factor.scope, table: factor.table.map((value) => value / greatest) };
}
