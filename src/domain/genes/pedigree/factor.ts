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
  const counts = Int32Array.from(whole, (variable) => sizes[variable] ?? 1);
  const strides = new Int32Array(whole.length);
  let stride = 1;
  for (const variable of part.toReversed()) {
    strides[whole.indexOf(variable)] = stride;
    stride *= sizes[variable] ?? 1;
  }
  const cells = new Int32Array(cellsOf(whole, sizes));
  const at = new Int32Array(whole.length);
  let cell = 0;
  for (let n = 0; n < cells.length; n += 1) {
    cells[n] = cell;
    for (let digit = whole.length - 1; digit >= 0; digit -= 1) {
      const [count = 1, step = 0] = [counts[digit], strides[digit]];
      const value = (at[digit] ?? 0) + 1;
      cell += step;
      if (value < count) {
        at[digit] = value;
        break;
      }
      at[digit] = 0;
      cell -= step * count;
    }
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
  factor.table.forEach((value, n) => {
    const cell = cells[n] ?? 0;
    table[cell] = (table[cell] ?? 0) + value;
  });
  return { scope: wanted, table };
}

/** Scaled so that the greatest is 1, lest long products sink below what a number holds. */
export function scaled(factor: Factor): Factor {
  const greatest = factor.table.reduce((most, value) => Math.max(most, value), 0);
  if (greatest === 0 || greatest === 1) return factor;
  return { scope: factor.scope, table: factor.table.map((value) => value / greatest) };
}
