import { addDays, daysBetween, type Day } from '../core/calendar.ts';
import type { Protocol } from '../protocol/values.ts';
import { sinceLaying, type Laying } from './laying.ts';
import { alike, type WeightReading } from './reading.ts';
import { median, theilSen, type LinePoint } from './robust-line.ts';

/** A robust line through the log of the newest weights. */
export interface WeightTrend {
  readonly kind: 'trend';
  /** Percent of body mass a day, compounding. */
  readonly percentPerDay: number;
  /** 80 % interval of it. */
  readonly low: number;
  readonly high: number;
  readonly from: Day;
  readonly to: Day;
  readonly readings: readonly WeightReading[];
  /** A full gut had to be let in: there are too few empty weights. */
  readonly isMixed: boolean;
}

/** Two weights, or several within a few days: a difference, and no trend. */
export interface WeightDifference {
  readonly kind: 'difference';
  readonly before: WeightReading;
  readonly after: WeightReading;
  readonly days: number;
  readonly changeG: number;
  readonly why: 'two weights' | 'too few days';
}

export type WeightCourse =
  | WeightTrend
  | WeightDifference
  | { readonly kind: 'none'; readonly why: 'no weight' | 'one weight' };

const NIGHTS = 3;
const COVERAGE = 0.8;
/** A standard normal stays within so many SDs four times in five [Abramowitz & Stegun 1964, 26.5]. */
const Z_80 = 1.2815515655446004;

/**
 * How the weight has changed of late: since the last laying, and no farther back than
 * `weightTrendDays` before the newest weight.
 *
 * The interval is the wider of two: what the weights themselves scatter by, and what a weight is off by
 * at the least (`weightNoiseShare`), for three weights may lie on a line by luck.
 */
export function weightCourse(
  readings: readonly WeightReading[],
  layings: readonly Laying[],
  protocol: Protocol,
): WeightCourse {
  const since = sinceLaying(readings, layings);
  const newest = since.at(-1);
  if (!newest) return { kind: 'none', why: readings.length === 0 ? 'no weight' : 'one weight' };
  const from = addDays(newest.night, -protocol.weightTrendDays);
  const { readings: used, isMixed } = alike(
    since.filter(({ night }) => night >= from),
    NIGHTS,
  );
  const nights = byNight(used);
  const [first] = used;
  const last = used.at(-1);
  if (!first || !last || first.night === last.night) return { kind: 'none', why: 'one weight' };
  const days = daysBetween(first.night, last.night);
  if (nights.length < NIGHTS || days < protocol.weightTrendSpanDays) {
    const changeG = last.massG - first.massG;
    const why = nights.length < NIGHTS ? 'two weights' : 'too few days';
    return { kind: 'difference', before: first, after: last, days, changeG, why };
  }
  const points = nights.map(({ night, massG }) => ({
    x: daysBetween(first.night, night),
    y: 100 * Math.log(massG),
  }));
  const line = theilSen(points, COVERAGE);
  if (!line) return { kind: 'none', why: 'one weight' };
  const noise = (Z_80 * 100 * protocol.weightNoiseShare) / Math.sqrt(squares(points));
  return {
    kind: 'trend',
    percentPerDay: line.slope,
    low: Math.min(line.low, line.slope - noise),
    high: Math.max(line.high, line.slope + noise),
    from: first.night,
    to: last.night,
    readings: used,
    isMixed,
  };
}

/** One mass a night: the median of several. */
function byNight(readings: readonly WeightReading[]) {
  const nights = new Map<Day, number[]>();
  for (const { night, massG } of readings) nights.set(night, [...(nights.get(night) ?? []), massG]);
  return [...nights].map(([night, masses]) => ({
    night,
    massG: median(masses.toSorted((a, b) => a - b)),
  }));
}

function squares(points: readonly LinePoint[]): number {
  const mean = points.reduce((sum, { x }) => sum + x, 0) / points.length;
  return points.reduce((sum, { x }) => sum + (x - mean) ** 2, 0);
}
