import { learn, predictNext, type Prior, type Seen } from './posterior.ts';

/** A value known only to be one of several, in order; a single one where it is known. */
export interface Candidates {
  readonly group: string;
  readonly logs: readonly number[];
}

/** By the third, nothing changes by a tenth of a day any more. */
const ROUNDS = 3;

/**
 * What each value comes to where it is known only to be one of several.
 *
 * All the others say how likely each candidate is; the mean and variance over the candidates are
 * what is known in the end; and what it takes to get there from the others is what this one says
 * by itself, as a blurred value. So a range that only repeats what was expected says nothing, and a
 * narrow one as much as an exact value. Found by going round until it settles, all at once, so that
 * no order is preferred (expectation propagation, Minka T.P. 2001, Uncertainty in AI 17:362–369).
 */
export function seenBetween(prior: Prior, found: readonly Candidates[]): readonly Seen[] {
  let seen = found.map(spreadEvenly);
  if (seen.every(({ blur }) => blur === 0)) return seen;
  for (let round = 0; round < ROUNDS; round += 1) {
    const before = seen;
    seen = found.map((each, n) => {
      if (each.logs.length === 1) return spreadEvenly(each);
      const others = learn(prior, before.toSpliced(n, 1));
      return saysItself(each, predictNext(others, each.group));
    });
  }
  return seen;
}

function spreadEvenly({ group, logs }: Candidates): Seen {
  const equal = logs.map(() => 1);
  return { group, ...momentsOf(logs, equal) };
}

interface Moments {
  readonly mean: number;
  readonly blur: number;
}

function saysItself(
  { group, logs }: Candidates,
  { location, scale }: { readonly location: number; readonly scale: number },
): Seen {
  // The density of a length in days is that of its logarithm divided by the length.
  const heights = logs.map((log) => -0.5 * ((log - location) / scale) ** 2 - log);
  const top = Math.max(...heights);
  const known = momentsOf(
    logs,
    heights.map((height) => Math.exp(height - top)),
  );
  // One day of several that is all but certain is still known to the day only.
  const precision = 1 / Math.max(known.blur, SURE * scale * scale);
  const added = Math.max(precision - 1 / (scale * scale), NOTHING * precision);
  return {
    group,
    mean: (known.mean * precision - location * (precision - added)) / added,
    blur: 1 / added,
  };
}
const SURE = 1e-6;
const NOTHING = 1e-3;

function momentsOf(logs: readonly number[], weights: readonly number[]): Moments {
  const all = weights.reduce((sum, weight) => sum + weight, 0);
  const over = (of: (log: number) => number): number =>
    logs.reduce((sum, log, n) => sum + of(log) * (weights[n] ?? 0), 0) / all;
  const mean = over((log) => log);
  return { mean, blur: over((log) => (log - mean) ** 2) };
}
