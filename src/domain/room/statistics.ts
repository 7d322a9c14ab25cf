import type { Day } from '../core/calendar.ts';
import type { Reading } from '../state/readings.ts';
import type { Band, BandAt } from './band.ts';

/** Time out of band on one side, without a break. Unit: minutes since 1970 UTC; °C. */
export interface Excursion {
  readonly side: 'below' | 'above';
  readonly fromMin: number;
  readonly toMin: number;
  /** The temperature farthest out on that side. */
  readonly extremeC: number;
}

/** A stretch in which nobody knows. Unit: minutes since 1970 UTC. */
export interface Gap {
  readonly fromMin: number;
  readonly toMin: number;
}

/** What readings say of a span. Unit: minutes, except counts. */
export interface Statistics {
  readonly readings: number;
  /** Of the readings, those held against a programme, and those of them in its band. */
  readonly judged: number;
  readonly judgedInBand: number;
  readonly spanMin: number;
  /** Time between readings that are close enough to say what was between them. */
  readonly coveredMin: number;
  /** Covered time for which there was a programme. */
  readonly judgedMin: number;
  readonly inBandMin: number;
  readonly belowMin: number;
  readonly aboveMin: number;
  readonly longest?: Excursion | undefined;
  readonly gaps: readonly Gap[];
}

interface Span {
  /** Minutes since 1970 UTC. */
  readonly fromMin: number;
  readonly toMin: number;
}

type Side = 'in' | 'below' | 'above';

const sideIn = ({ lowC, highC }: Pick<Band, 'lowC' | 'highC'>, tempC: number): Side =>
  tempC < lowC ? 'below' : tempC > highC ? 'above' : 'in';

/** The readings of a span, both ends in it. */
export const within = (readings: readonly Reading[], { fromMin, toMin }: Span): Reading[] =>
  readings.filter(({ minute }) => minute >= fromMin && minute <= toMin);

/**
 * Readings of one series held against a band.
 *
 * Between two readings no farther apart than `gapMin` the temperature is taken to change evenly;
 * between others nothing is said, and an excursion ends at the last reading before.
 */
export function statisticsOf(
  readings: readonly Reading[],
  span: Span,
  bandAt: BandAt,
  gapMin: number,
): Statistics {
  const inSpan = within(readings, span);
  const time = { in: 0, below: 0, above: 0, unjudged: 0 };
  const gaps: Gap[] = [];
  let running: Excursion | undefined;
  let longest: Excursion | undefined;

  function end(): void {
    if (running && (!longest || lengthOf(running) > lengthOf(longest))) longest = running;
    running = undefined;
  }

  function take(side: Side, fromMin: number, toMin: number, fromC: number, toC: number): void {
    time[side] += toMin - fromMin;
    if (side === 'in') return end();
    if (running?.side !== side) end();
    const farthest = side === 'below' ? Math.min : Math.max;
    const extremeC = farthest(fromC, toC, running?.extremeC ?? fromC);
    running = { side, fromMin: running?.fromMin ?? fromMin, toMin, extremeC };
  }

  for (const [i, a] of inSpan.entries()) {
    const b = inSpan[i + 1];
    if (!b) break;
    if (b.minute - a.minute > gapMin) {
      gaps.push({ fromMin: a.minute, toMin: b.minute });
      end();
      continue;
    }
    const slope = (b.tempC - a.tempC) / (b.minute - a.minute);
    const tempAt = (minute: number): number => a.tempC + slope * (minute - a.minute);
    for (let at = a.minute; at < b.minute;) {
      const band = bandAt(at + a.offsetMin);
      const to = Math.min(b.minute, band.toMin - a.offsetMin);
      if (band.targetC === undefined) {
        time.unjudged += to - at;
        end();
      } else if (sideIn(band, tempAt(at)) === sideIn(band, tempAt(to))) {
        // A line that begins and ends on one side of a band never leaves it.
        take(sideIn(band, tempAt(at)), at, to, tempAt(at), tempAt(to));
      } else {
        for (const [from, until] of cutAt(at, to, crossings(band, a, slope))) {
          const side = sideIn(band, tempAt((from + until) / 2));
          take(side, from, until, tempAt(from), tempAt(until));
        }
      }
      at = to;
    }
  }
  end();

  let judged = 0;
  let judgedInBand = 0;
  for (const { minute, offsetMin, tempC } of inSpan) {
    const band = bandAt(minute + offsetMin);
    if (band.targetC === undefined) continue;
    judged += 1;
    if (sideIn(band, tempC) === 'in') judgedInBand += 1;
  }
  const judgedMin = time.in + time.below + time.above;
  return {
    readings: inSpan.length,
    judged,
    judgedInBand,
    spanMin: span.toMin - span.fromMin,
    coveredMin: judgedMin + time.unjudged,
    judgedMin,
    inBandMin: time.in,
    belowMin: time.below,
    aboveMin: time.above,
    longest,
    gaps,
  };
}

const lengthOf = ({ fromMin, toMin }: Excursion): number => toMin - fromMin;

/** When the line through a reading meets the limits of a band. */
const crossings = (
  { lowC, highC }: Pick<Band, 'lowC' | 'highC'>,
  { minute, tempC }: Reading,
  slope: number,
): number[] => (slope === 0 ? [] : [lowC, highC].map((limit) => minute + (limit - tempC) / slope));

/** A stretch cut at those marks that lie inside it. */
function cutAt(
  from: number,
  to: number,
  marks: readonly number[],
): readonly (readonly [number, number])[] {
  const inside = marks.filter((mark) => mark > from && mark < to).toSorted((a, b) => a - b);
  const edges = [from, ...inside, to];
  return edges.slice(1).map((edge, i) => [edges[i] ?? from, edge] as const);
}

/** The lowest of a night and the highest of a day, as far as they were read. Unit: °C. */
export interface DayLine {
  /** The evening the night began on. */
  readonly date: Day;
  readonly readings: number;
  readonly dayMaxC?: number | undefined;
  readonly dayMinC?: number | undefined;
  readonly nightMinC?: number | undefined;
  /** What the programme asked of the night. */
  readonly nightTargetC?: number | undefined;
}

/**
 * Day by day: the highest by day and the lowest in the night that follows.
 *
 * A lowest value that a thermometer noted counts to the last night begun before it was read; for
 * how long it had been noting, nobody knows.
 */
export function dayLines(readings: readonly Reading[], span: Span, bandAt: BandAt): DayLine[] {
  const lines = new Map<Day, { -readonly [Key in keyof DayLine]: DayLine[Key] }>();
  const lineOf = (date: Day) => {
    const line = lines.get(date) ?? { date, readings: 0 };
    lines.set(date, line);
    return line;
  };
  for (const { minute, offsetMin, tempC, lowC } of within(readings, span)) {
    const { part, date, targetC } = bandAt(minute + offsetMin);
    const line = lineOf(date);
    line.readings += 1;
    if (part === 'day') {
      line.dayMaxC = Math.max(line.dayMaxC ?? -Infinity, tempC);
      line.dayMinC = lowest(line.dayMinC, tempC);
    } else {
      line.nightMinC = lowest(line.nightMinC, tempC);
      line.nightTargetC = targetC;
    }
    if (lowC !== undefined) {
      const night = nightBefore(bandAt, minute + offsetMin);
      const nightLine = lineOf(night.date);
      nightLine.nightMinC = lowest(nightLine.nightMinC, lowC);
      nightLine.nightTargetC = night.targetC;
    }
  }
  return [...lines.values()].toSorted((a, b) => (a.date < b.date ? -1 : 1));
}

const lowest = (a: number | undefined, b: number): number => Math.min(a ?? Infinity, b);

/** The night that runs at a local minute, or the last one before. */
function nightBefore(bandAt: BandAt, localMin: number): ReturnType<BandAt> {
  let band = bandAt(localMin);
  // A day has three stretches at most, so this ends; where hours leave no night, a day back does.
  for (let steps = 0; band.part === 'day' && steps < 6; steps += 1) band = bandAt(band.fromMin - 1);
  return band;
}
