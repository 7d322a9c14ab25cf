/** Abscissa and value; no two points share an abscissa. */
export interface LinePoint {
  readonly x: number;
  readonly y: number;
}

export interface RobustLine {
  readonly slope: number;
  /** Ends of the slope's interval. */
  readonly low: number;
  readonly high: number;
  /** How often such an interval holds the slope: what was asked for or more, or less where the points are too few. */
  readonly coverage: number;
}

/**
 * Theil–Sen line: the median of the slopes between all pairs of points [Sen P.K. 1968, J Am Stat Assoc
 * 63:1379–1389]. Nearly three in ten points may be wrong by any amount without carrying it off, and it has
 * nothing to tune.
 *
 * The interval is Sen's, by the exact distribution of Kendall's count, and assumes only that errors are
 * independent and alike. With three points it holds the slope two times in three at the most.
 *
 * Undefined with less than two points.
 */
export function theilSen(points: readonly LinePoint[], coverage: number): RobustLine | undefined {
  const slopes = points
    .flatMap((a, i) => points.slice(i + 1).map((b) => (b.y - a.y) / (b.x - a.x)))
    .toSorted((a, b) => a - b);
  const [first] = slopes;
  const last = slopes.at(-1);
  if (first === undefined || last === undefined) return undefined;
  const { left, held } = leftOut(points.length, coverage);
  return {
    slope: median(slopes),
    low: slopes[left] ?? first,
    high: slopes[slopes.length - 1 - left] ?? last,
    coverage: held,
  };
}

export function median(sorted: readonly number[]): number {
  const half = sorted.length / 2;
  const upper = sorted[Math.floor(half)] ?? NaN;
  return Number.isInteger(half) ? ((sorted[half - 1] ?? NaN) + upper) / 2 : upper;
}

/** How many of the sorted slopes may be left out on each side, and the coverage that is left. */
function leftOut(
  points: number,
  coverage: number,
): { readonly left: number; readonly held: number } {
  const chances = discordances(points);
  let tail = chances[0] ?? 0;
  let left = 0;
  for (;;) {
    const more = tail + (chances[left + 1] ?? 0);
    if (1 - 2 * more < coverage) return { left, held: Math.max(0, 1 - 2 * tail) };
    tail = more;
    left += 1;
  }
}

/**
 * The chance of each number of discordant pairs among points in random order, by adding one point at a
 * time: the new one is discordant with none, one, … or all before it [Kendall M.G. 1938, Biometrika
 * 30:81–93].
 */
function discordances(points: number): readonly number[] {
  let chances: readonly number[] = [1];
  for (let size = 2; size <= points; size += 1) {
    const next = Array.from({ length: chances.length + size - 1 }, () => 0);
    for (const [pairs, chance] of chances.entries()) {
      for (let more = 0; more < size; more += 1) {
        next[pairs + more] = (next[pairs + more] ?? 0) + chance / size;
      }
    }
    chances = next;
  }
  return chances;
}
