import { dayNumber } from '../core/calendar.ts';
import { bandsOver, type BandAt } from '../room/band.ts';
import {
  dayLines,
  statisticsOf,
  within,
  type DayLine,
  type Statistics,
} from '../room/statistics.ts';
import { seriesKey, type Measured, type Reading, type Series } from '../state/readings.ts';

/** A stretch of the programme's band, to be drawn. Unit: milliseconds since 1970; °C. */
export interface PlotBand {
  readonly fromMs: number;
  readonly toMs: number;
  readonly lowC: number;
  readonly highC: number;
}

export interface SeriesView {
  readonly key: string;
  readonly spot: string;
  readonly label: string;
  readonly isByHand: boolean;
  readonly statistics: Statistics;
  readonly lines: readonly DayLine[];
  /** Points of the curve; a gap is a point without a temperature. */
  readonly points: readonly (readonly [ms: number, tempC: number | null])[];
  /** Whether each point is a reading, or the lowest and highest of a while are drawn. */
  readonly isThinned: boolean;
  readonly bands: readonly PlotBand[];
}

export interface SpanView {
  readonly days: number;
  readonly back: number;
  readonly fromMs: number;
  readonly toMs: number;
  /** How many spans back the newest reading lies. */
  readonly newestBack?: number | undefined;
  readonly gapHours: number;
  /** All that there is, those with most readings in the span first. */
  readonly series: readonly SeriesView[];
}

const DAY_MIN = 1440;
/** More points than a phone has columns say nothing more. */
const MOST_POINTS = 800;

/** What readings are held against. */
interface Judging<Where extends string> {
  readonly bandAt: (spot: Where) => BandAt;
  readonly gapHours: number;
  /** Beyond these it is an alarm, at any hour. */
  readonly alarm?: { readonly lowC: number; readonly highC: number };
}

export function spanView<Where extends string>(
  all: readonly Series<Where>[],
  label: (measured: Measured<Where>) => string,
  { days, back }: { readonly days: number; readonly back: number },
  { bandAt: bandOf, gapHours, alarm }: Judging<Where>,
  { nowMs, offsetMin }: { readonly nowMs: number; readonly offsetMin: number },
): SpanView {
  const nowMin = Math.floor(nowMs / 60_000);
  const toMin = nowMin - back * days * DAY_MIN;
  const span = { fromMin: toMin - days * DAY_MIN, toMin };
  const gapMin = gapHours * 60;
  const whole = { fromMs: span.fromMin * 60_000, toMs: span.toMin * 60_000 };
  const newest = Math.max(...all.map(({ readings }) => readings.at(-1)?.minute ?? -Infinity));
  const views = all.map((series): SeriesView => {
    const bandAt = bandOf(series.spot);
    const readings = within(series.readings, span);
    return {
      key: seriesKey(series),
      spot: series.spot,
      label: label(series),
      isByHand: series.sensor === undefined,
      statistics: statisticsOf(readings, span, bandAt, gapMin),
      lines: dayLines(readings, span, bandAt),
      points: pointsOf(readings, span, gapMin),
      isThinned: readings.length > MOST_POINTS,
      bands: [...(alarm ? [{ ...whole, ...alarm }] : []), ...plotBands(bandAt, span, offsetMin)],
    };
  });
  return {
    days,
    back,
    ...whole,
    newestBack: Number.isFinite(newest)
      ? Math.max(0, Math.floor((nowMin - newest) / (days * DAY_MIN)))
      : undefined,
    gapHours,
    series: views.toSorted(
      (a, b) => b.statistics.readings - a.statistics.readings || (a.label < b.label ? -1 : 1),
    ),
  };
}

interface Span {
  readonly fromMin: number;
  readonly toMin: number;
}

/** The curve’s points; where there are too many, the lowest and the highest of each while. */
function pointsOf(readings: readonly Reading[], span: Span, gapMin: number): SeriesView['points'] {
  const points: [number, number | null][] = [];
  const everyMin =
    readings.length > MOST_POINTS ? (span.toMin - span.fromMin) / (MOST_POINTS / 2) : 0;
  let low: Reading | undefined;
  let high: Reading | undefined;
  const put = ({ minute, tempC }: Reading) => points.push([minute * 60_000, tempC]);

  function flush(): void {
    if (!low || !high) return;
    const [first, second] = low.minute <= high.minute ? [low, high] : [high, low];
    put(first);
    if (second !== first) put(second);
    low = undefined;
    high = undefined;
  }

  const whileOf = ({ minute }: Reading): number => Math.floor((minute - span.fromMin) / everyMin);
  for (const [i, reading] of readings.entries()) {
    const before = readings[i - 1];
    const isGap = before !== undefined && reading.minute - before.minute > gapMin;
    if (isGap || (before && (everyMin === 0 || whileOf(before) !== whileOf(reading)))) flush();
    if (isGap) points.push([(before.minute + reading.minute) * 30_000, null]);
    if (!low || reading.tempC < low.tempC) low = reading;
    if (!high || reading.tempC > high.tempC) high = reading;
  }
  flush();
  return points;
}

/** Over days, the hours of settling are too narrow to draw. */
const SETTLING_DAYS = 2;
/** Over a long time day and night are too narrow to draw apart: each becomes a ribbon. */
const RIBBON_DAYS = 45;

function plotBands(bandAt: BandAt, { fromMin, toMin }: Span, offsetMin: number): PlotBand[] {
  const [from, to] = [fromMin + offsetMin, toMin + offsetMin];
  const isLong = to - from > RIBBON_DAYS * DAY_MIN;
  const hasSettling = to - from <= SETTLING_DAYS * DAY_MIN;
  const bands = bandsOver(bandAt, from, to).filter(
    ({ targetC, settles, date, fromMin: begin }) =>
      targetC !== undefined &&
      (hasSettling || !settles) &&
      // A night has its ribbon from its evening, and needs no second one after midnight.
      !(isLong && Math.floor(begin / DAY_MIN) !== dayNumber(date)),
  );
  const plotted = bands.map(({ fromMin: begin, toMin: end, lowC, highC }): PlotBand => {
    const day = Math.floor(begin / DAY_MIN) * DAY_MIN;
    const [first, last] = isLong ? [day, day + DAY_MIN] : [begin, end];
    return {
      fromMs: (first - offsetMin) * 60_000,
      toMs: (last - offsetMin) * 60_000,
      lowC,
      highC,
    };
  });
  return joined(plotted);
}

/** Neighbours of one height as one. */
function joined(bands: readonly PlotBand[]): PlotBand[] {
  const all: PlotBand[] = [];
  for (const band of bands) {
    const last = all.at(-1);
    const isSame = last && last.lowC === band.lowC && last.highC === band.highC;
    if (isSame && band.fromMs <= last.toMs) {
      all[all.length - 1] = { ...last, toMs: Math.max(last.toMs, band.toMs) };
    } else all.push(band);
  }
  return all;
}
