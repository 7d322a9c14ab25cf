/** A chance for each whole number from 0 on: none negative, together 1. */
export type CountChances = readonly number[];

/** Sums of chances are this exact, and no better. */
const EXACT = 1e-9;

/** Chances below this are taken for none: thousands of them together are still far below `EXACT`. */
const NONE = 1e-30;

/**
 * Of the sum of many: exact, by adding one at a time. Of single offers it is the Poisson binomial.
 *
 * In place and from the top down: hundreds of snakes have thousands of counts.
 */
export function sumOfCounts(all: readonly CountChances[]): CountChances {
  const most = all.reduce((sum, { length }) => sum + length - 1, 0);
  const sum = new Float64Array(most + 1);
  sum[0] = 1;
  let least = 0;
  let top = 0;
  for (const chances of all) {
    top += chances.length - 1;
    for (let n = top; n >= least; n -= 1) {
      let chance = 0;
      for (let k = 0; k < chances.length && k <= n; k += 1) {
        chance += (sum[n - k] ?? 0) * (chances[k] ?? 0);
      }
      sum[n] = chance < NONE ? 0 : chance;
    }
    while (least < top && sum[least] === 0) least += 1;
  }
  return Array.from(sum);
}

/** The same count in steps of several, as where two pieces are one meal. */
export function timesPieces(chances: CountChances, pieces: number): CountChances {
  const spread = Array.from({ length: (chances.length - 1) * pieces + 1 }, () => 0);
  for (const [n, chance] of chances.entries()) spread[n * pieces] = chance;
  return spread;
}

export const expectedCount = (chances: CountChances): number =>
  chances.reduce((sum, chance, n) => sum + n * chance, 0);

/** The smallest count that is enough with at least this chance. */
export function enoughWith(share: number, chances: CountChances): number {
  let reached = 0;
  const n = chances.findIndex((chance) => (reached += chance) >= share - EXACT);
  return n < 0 ? chances.length - 1 : n;
}
