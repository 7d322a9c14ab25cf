import { daysBetween, type Day } from '../core/calendar.ts';
import { tQuantile } from '../core/student-t.ts';
import type { Protocol } from '../protocol/values.ts';
import type { DayChances } from '../windows/day-chances.ts';
import { errorMmOf } from './error.ts';
import { chanceFalling, fitLine, sizeOn, type Line } from './line.ts';
import { looksOf, type Look } from './looks.ts';
import { newestStretch } from './phase.ts';
import { chancesReached } from './reach.ts';
import type { Reading } from './reading.ts';

/** A size on a night, with its 80 % interval, in millimetres. */
export interface SizeEstimate {
  readonly mm: number;
  readonly low: number;
  readonly high: number;
}

/** How the largest follicle grows or shrinks, by a straight line through the newest scans. */
export interface Trend {
  readonly mmPerWeek: number;
  /** 80 % interval of the growth, mm a week. */
  readonly low: number;
  readonly high: number;
  readonly chanceShrinking: number;
  /** The scans that the line runs through. */
  readonly readings: readonly Reading[];
  /** The size itself, not what the next scan will read. Never below 0. */
  on(night: Day): SizeEstimate;
  /**
   * When she is at a size, for each day from `after` on; the chance of `after` itself includes that she
   * was there earlier. Undefined where she may never get there (`follicleReachChance`).
   */
  reaches(mm: number, after: Day): DayChances | undefined;
}

const DAYS_A_WEEK = 7;
const HIGH = 0.9; // An 80 % interval leaves out a tenth on each side.

/**
 * The trend of one female's season so far, up to her ovulation.
 *
 * Undefined with less than two usable scans on different nights (one scan is not a trend), and while her
 * follicles rest. See `newestStretch` for which scans are used.
 */
export function follicleTrend(readings: readonly Reading[], protocol: Protocol): Trend | undefined {
  const stretch = newestStretch(looksOf(readings), protocol.follicleGrowsFromMm);
  const [first] = stretch;
  if (!first || stretch.every(({ night }) => night === first.night)) return undefined;

  const daysTo = (night: Day): number => daysBetween(first.night, night);
  const line = lineThrough(stretch, daysTo, protocol.follicleSwingMm / DAYS_A_WEEK);
  const wide = tQuantile(HIGH, line.degrees);
  return {
    mmPerWeek: DAYS_A_WEEK * line.slopeMm,
    low: DAYS_A_WEEK * (line.slopeMm - wide * line.slopeScaleMm),
    high: DAYS_A_WEEK * (line.slopeMm + wide * line.slopeScaleMm),
    chanceShrinking: chanceFalling(line),
    readings: stretch.flatMap((look) => look.readings),
    on(night) {
      const { mm, scaleMm } = sizeOn(line, daysTo(night));
      return {
        mm: atLeast0(mm),
        low: atLeast0(mm - wide * scaleMm),
        high: atLeast0(mm + wide * scaleMm),
      };
    },
    reaches(mm, after) {
      const within = protocol.follicleWithinDays;
      const reached = chancesReached(line, mm, daysTo(after), within);
      const ever = reached[within] ?? 0;
      if (ever < protocol.follicleReachChance) return undefined;
      // Chances only rise, but for the last digit of a sum.
      const gains = reached.map((chance, day) => atLeast0(chance - (reached[day - 1] ?? 0)));
      return { from: after, chances: gains.map((gain) => gain / ever) };
    },
  };
}

const atLeast0 = (value: number): number => Math.max(0, value);

/**
 * The error of a look is that of the size on the line, not of the size as read: else a look that read
 * too low would count for more than one that read too high, and every line would lie too low.
 */
function lineThrough(
  looks: readonly Look[],
  daysTo: (night: Day) => number,
  slopePriorMm: number,
): Line {
  const degrees = Math.min(...looks.map(({ error }) => error.degrees));
  const points = looks.map((look) => ({ ...look, days: daysTo(look.night) }));
  const asRead = fitLine(points, degrees, slopePriorMm);
  const onLine = points.map((point) => {
    const errorMm = errorMmOf(sizeOn(asRead, point.days).mm, point.error);
    return { ...point, errorMm: errorMm / Math.sqrt(point.readings.length) };
  });
  return fitLine(onLine, degrees, slopePriorMm);
}
