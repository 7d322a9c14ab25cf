import { cellsOf, multiplyInto, scaled, summedTo, type Factor, type Sizes } from './factor.ts';
import type { Plan } from './plan.ts';

interface Bucket {
  readonly variable: number;
  readonly belief: Factor;
  /** What it told the bucket that its remaining variables meet in first. */
  readonly message: Factor;
  readonly parent?: number;
}

/**
 * Sums the planned variables out, one after another. Undefined where all is impossible: the factors
 * contradict each other.
 *
 * Bucket elimination: Dechter R. 1999, Artificial Intelligence 113:41–85; on looped pedigrees first
 * Cannings C., Thompson E.A. & Skolnick M.H. 1978, Adv Appl Prob 10:26–61.
 */
export function forward(
  plan: Plan,
  factors: readonly Factor[],
  sizes: Sizes,
  keep: readonly number[],
): { readonly buckets: readonly Bucket[]; readonly kept: Factor } | undefined {
  const turn = new Map(plan.order.map((variable, index) => [variable, index]));
  const last = plan.order.length;
  const turnOf = (scope: readonly number[]): number =>
    scope.reduce((first, variable) => Math.min(first, turn.get(variable) ?? last), last);
  const waiting: Factor[][] = Array.from({ length: last + 1 }, () => []);
  for (const factor of factors) waiting[turnOf(factor.scope)]?.push(factor);

  const buckets: Bucket[] = [];
  for (const [index, variable] of plan.order.entries()) {
    const scope = plan.cliques[index] ?? [variable];
    const belief = productOf(scope, waiting[index] ?? [], sizes);
    const message = scaled(summedTo(scope.slice(0, -1), belief, sizes));
    if (!message.table.some((value) => value > 0)) return undefined;
    const parent = turnOf(message.scope);
    waiting[parent]?.push(message);
    buckets.push({ variable, belief, message, ...(parent < last ? { parent } : {}) });
  }
  const kept = productOf(keep, waiting[last] ?? [], sizes);
  return kept.table.some((value) => value > 0) ? { buckets, kept } : undefined;
}

function productOf(scope: readonly number[], factors: readonly Factor[], sizes: Sizes): Factor {
  const table = new Float64Array(cellsOf(scope, sizes)).fill(1);
  for (const factor of factors) multiplyInto(table, scope, factor, sizes);
  return { scope, table };
}

/**
 * The chances of every variable, given everything, from what `forward` left: tables are made to agree
 * from the last to the first. Lauritzen S.L. & Spiegelhalter D.J. 1988, J R Stat Soc B 50:157–224.
 */
export function marginals(
  buckets: readonly Bucket[],
  sizes: Sizes,
): ReadonlyMap<number, Float64Array> {
  const chances = new Map<number, Float64Array>();
  for (const { variable, belief, message, parent } of buckets.toReversed()) {
    const above = parent === undefined ? undefined : buckets[parent];
    if (above) {
      const told = scaled(summedTo(message.scope, above.belief, sizes));
      // Where the message was 0 the table is 0 already.
      const ratio = told.table.map((value, n) => {
        const before = message.table[n] ?? 0;
        return before > 0 ? value / before : 0;
      });
      multiplyInto(belief.table, belief.scope, { scope: message.scope, table: ratio }, sizes);
    }
    chances.set(variable, normalised(summedTo([variable], belief, sizes).table));
  }
  return chances;
}

export function normalised(table: Float64Array): Float64Array {
  const all = table.reduce((sum, value) => sum + value, 0);
  return table.map((value) => value / all);
}
