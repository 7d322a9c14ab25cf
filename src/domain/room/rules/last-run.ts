import type { Reading, Series } from '../../state/readings.ts';

/** Readings at the end of a series that are all on the wrong side, without a gap. */
export interface Run {
  readonly readings: readonly Reading[];
  /** Minutes from its first reading to its last. */
  readonly lengthMin: number;
  readonly last: Reading;
}

/**
 * The run of readings at the end of a series that are all outside; undefined where the newest one
 * is not.
 */
export function lastRun(
  { readings }: Pick<Series, 'readings'>,
  isOutside: (reading: Reading) => boolean,
  gapMin: number,
): Run | undefined {
  const last = readings.at(-1);
  if (!last || !isOutside(last)) return undefined;
  let first = readings.length - 1;
  for (let i = first - 1; i >= 0; i -= 1) {
    const [reading, next] = [readings[i], readings[i + 1]];
    if (!reading || !next || !isOutside(reading) || next.minute - reading.minute > gapMin) break;
    first = i;
  }
  const run = readings.slice(first);
  return { readings: run, lengthMin: last.minute - (run[0]?.minute ?? last.minute), last };
}
