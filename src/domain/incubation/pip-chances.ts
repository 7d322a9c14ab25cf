import type { DayChances, LagChances } from '../windows/day-chances.ts';
import type { Progress } from './progress.ts';

/** Three values that stand for a normal one, with their weights (Gauss–Hermite). */
const ERRORS = [
  [-Math.sqrt(3), 1 / 6],
  [0, 2 / 3],
  [Math.sqrt(3), 1 / 6],
] as const;

/**
 * When the first egg pips: each night that the eggs may have been laid on, and what development has
 * been read since or is taken to follow.
 *
 * `lag` is how long it takes at 31.5 °C. `progress` begins with the first night of `laid` and goes far
 * enough; what is only taken for granted may be off by a share `error`, the same share throughout,
 * for an incubator that is off is off for days. Chances beyond its end fall on its last day.
 */
export function pipChances(
  laid: DayChances,
  lag: LagChances,
  progress: Progress,
  error: number,
): DayChances {
  const days = progress.known.length;
  const chances = Array.from({ length: days }, () => 0);
  const reached = cumulative(lag);
  for (const [deviation, weight] of ERRORS) {
    const factor = Math.max(0, 1 + deviation * error);
    for (const [night, chance] of laid.chances.entries()) {
      let before = 0;
      let sum = dayOf(progress, night, factor) / 2;
      for (let day = night; day < days; day += 1) {
        if (day > night) sum += dayOf(progress, day, factor);
        const now = day === days - 1 ? 1 : reached(sum);
        chances[day] = (chances[day] ?? 0) + weight * chance * (now - before);
        before = now;
      }
    }
  }
  return { from: laid.from, chances };
}

const dayOf = ({ known, taken }: Progress, day: number, factor: number): number =>
  (known[day] ?? 0) + factor * (taken[day] ?? 0);

/** The chance that it took no longer; a whole day takes what lies within half a day of it. */
function cumulative({ fromDays, chances }: LagChances): (days: number) => number {
  const sums = [0];
  for (const chance of chances) sums.push((sums.at(-1) ?? 0) + chance);
  return (days) => {
    const at = days - (fromDays - 0.5);
    if (at <= 0) return 0;
    const whole = Math.floor(at);
    const [low, high] = [sums[whole], sums[whole + 1]];
    return low === undefined || high === undefined ? 1 : low + (at - whole) * (high - low);
  };
}
