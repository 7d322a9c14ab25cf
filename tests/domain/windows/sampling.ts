import type { Chance } from '../../../demo-data/random.ts';

// Chance for the second implementations: written to be plain, not fast.

/** Standard normal: Box G.E.P. & Muller M.E. 1958. */
export const normal = (chance: Chance): number =>
  Math.sqrt(-2 * Math.log(1 - chance.next())) * Math.cos(2 * Math.PI * chance.next());

/** Chi-squared with an even number of degrees: twice the waiting time for half as many events. */
export function chiSquared(degrees: number, chance: Chance): number {
  let sum = 0;
  for (let n = 0; n < degrees / 2; n += 1) sum -= 2 * Math.log(1 - chance.next());
  return sum;
}

export interface Weighed {
  readonly value: number;
  readonly weight: number;
}

/** The value that a share of the weight lies at or below. */
export function weighedQuantile(sample: readonly Weighed[], share: number): number {
  const sorted = sample.toSorted((a, b) => a.value - b.value);
  const all = sorted.reduce((sum, { weight }) => sum + weight, 0);
  let reached = 0;
  return sorted.find(({ weight }) => (reached += weight) >= share * all)?.value ?? NaN;
}
