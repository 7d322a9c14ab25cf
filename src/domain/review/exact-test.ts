/** One way things may be: how likely it is, and the share of each kind if it is so. */
export interface Odds {
  readonly weight: number;
  /** One for each kind; they sum to 1. */
  readonly shares: readonly number[];
}

/** Counts as likely as the ones seen must not be left out for a rounding error. */
const AS_LIKELY = 1 + 1e-7;

/**
 * How likely counts are that are no likelier than these: the exact multinomial test, and with two
 * kinds the exact binomial one. Where parents are not certain the odds are one draw for all young
 * together, so chances are mixed and not shares.
 *
 * Small where what hatched does not fit the odds. Source: exactTest.
 */
export function exactTest(counts: readonly number[], odds: readonly Odds[]): number {
  const of = counts.reduce((sum, count) => sum + count, 0);
  const logs = logFactorials(of);
  const chanceOf = (seen: readonly number[]): number =>
    odds.reduce((sum, { weight, shares }) => sum + weight * multinomial(seen, shares, logs), 0);
  const limit = chanceOf(counts) * AS_LIKELY;
  let total = 0;
  for (const seen of splits(of, counts.length)) {
    const chance = chanceOf(seen);
    if (chance <= limit) total += chance;
  }
  return Math.min(1, total);
}

/** `logs[n]` is the logarithm of n!. */
function logFactorials(most: number): readonly number[] {
  const logs = [0];
  for (let n = 1; n <= most; n += 1) logs.push((logs[n - 1] ?? 0) + Math.log(n));
  return logs;
}

function multinomial(
  counts: readonly number[],
  shares: readonly number[],
  logs: readonly number[],
): number {
  let log = logs[counts.reduce((sum, count) => sum + count, 0)] ?? 0;
  for (const [kind, count] of counts.entries()) {
    const share = shares[kind] ?? 0;
    if (count === 0) continue;
    if (share === 0) return 0;
    log += count * Math.log(share) - (logs[count] ?? 0);
  }
  return Math.exp(log);
}

/** Every way to split a number over so many kinds. */
function* splits(of: number, kinds: number): Generator<readonly number[]> {
  if (kinds <= 1) {
    yield kinds === 1 ? [of] : [];
    return;
  }
  for (let first = 0; first <= of; first += 1) {
    for (const rest of splits(of - first, kinds - 1)) yield [first, ...rest];
  }
}
