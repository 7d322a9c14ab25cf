import { developmentRate, WARMEST_KNOWN_C } from './rate.ts';
import type { Point } from './temperature-line.ts';

export const DAY_MIN = 1_440;

/** What is known of the warmth of one night and day. */
export interface Warmth {
  /** Minutes between readings that are close enough to say what was between them. */
  readonly knownMin: number;
  /** Those minutes, each counted by how fast eggs develop in it. */
  readonly effectiveMin: number;
  /** Of the known ones, those hotter than anything development is known for. */
  readonly beyondMin: number;
}

export const UNREAD: Warmth = { knownMin: 0, effectiveMin: 0, beyondMin: 0 };

/** Longer stretches are cut, so that a pace that bends is followed. Unit: minutes. */
const STEP_MIN = 60;

/**
 * Warmth day by day, `days` of them from `startMin` on.
 *
 * Between two readings no farther apart than `gapMin` the temperature is taken to change evenly;
 * between others nothing is known. Unit: minutes since 1970 UTC.
 */
export function dailyWarmth(
  line: readonly Point[],
  startMin: number,
  days: number,
  gapMin: number,
): readonly Warmth[] {
  const sums = Array.from({ length: days }, () => ({ knownMin: 0, effectiveMin: 0, beyondMin: 0 }));
  const end = startMin + days * DAY_MIN;
  for (const [i, a] of line.entries()) {
    const b = line[i + 1];
    if (!b || b.minute <= startMin || a.minute >= end || b.minute - a.minute > gapMin) continue;
    const slope = (b.tempC - a.tempC) / (b.minute - a.minute);
    let at = Math.max(a.minute, startMin);
    const last = Math.min(b.minute, end);
    while (at < last) {
      const day = Math.floor((at - startMin) / DAY_MIN);
      const to = Math.min(last, at + STEP_MIN, startMin + (day + 1) * DAY_MIN);
      const tempC = a.tempC + slope * ((at + to) / 2 - a.minute);
      const sum = sums[day];
      if (sum) {
        sum.knownMin += to - at;
        sum.effectiveMin += (to - at) * developmentRate(tempC);
        if (tempC > WARMEST_KNOWN_C) sum.beyondMin += to - at;
      }
      at = to;
    }
  }
  return sums;
}
