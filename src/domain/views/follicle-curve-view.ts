import { tenth } from '../core/tenth.ts';
import { dayNumber, dayOfNumber, type Day } from '../core/calendar.ts';
import type { AnimalId, EventId } from '../core/ids.ts';
import { tQuantile } from '../core/student-t.ts';
import { readingsOf, type Reading } from '../follicles/reading.ts';
import { follicleTrend, type Trend } from '../follicles/trend.ts';
import type { Picture } from '../picture/picture.ts';
import type { Forecast } from '../season/forecast.ts';
import type { NightOf } from '../season/night-of.ts';
import type { SeasonNow } from '../season/standing.ts';
import { window, type Window } from '../windows/day-chances.ts';

/** One scan as a mark on the curve. Sizes in millimetres. */
export interface CurvePoint {
  readonly id: EventId;
  readonly night: Day;
  /** `none` found nothing: `mm` is only the size that the method can just find. */
  readonly kind: 'measured' | 'felt' | 'none';
  readonly mm: number;
  /** 80 % of what was measured lies between these two. */
  readonly low: number;
  readonly high: number;
}

/** The straight line through the newest scans on one night, with its 80 % interval. */
export interface CurveLine {
  readonly night: Day;
  readonly mm: number;
  readonly low: number;
  readonly high: number;
}

/** A window drawn on the time axis: when she reaches a size, or ovulates. */
export interface CurveWindow extends Window {
  readonly what: string;
  /** The height it is drawn at, in millimetres, where it belongs to a size. */
  readonly mm?: number | undefined;
}

export interface FollicleCurveView {
  readonly night: Day;
  readonly points: readonly CurvePoint[];
  readonly line: readonly CurveLine[];
  readonly windows: readonly CurveWindow[];
  readonly stays: readonly { readonly from: Day; readonly to: Day; readonly male: string }[];
  readonly locks: readonly { readonly night: Day; readonly male: string }[];
}

export interface Growth {
  readonly readings: readonly Reading[];
  readonly trend?: Trend | undefined;
}

const HIGH = 0.9;
const LINE_POINTS = 24;

/** This season's scans up to ovulation, and their trend; also of a female who may be resorbing. */
export function growthIn(now: SeasonNow, picture: Picture): Growth {
  const { protocol, nightOf } = picture.facts;
  const scans = now.season.scans.filter(
    ({ at }) => !now.ovulation || nightOf(at) <= now.ovulation.last,
  );
  const readings = readingsOf(scans, picture.experience().scanErrors, protocol);
  return { readings, trend: follicleTrend(readings, protocol) };
}

/** Undefined without a scan this season. */
export function follicleCurve(
  { readings, trend }: Growth,
  now: SeasonNow,
  forecasts: readonly Forecast[],
  { facts }: Picture,
): FollicleCurveView | undefined {
  const { night, nightOf, nameOf, protocol } = facts;
  const last = readings.at(-1);
  if (!last) return undefined;
  const ripe = ripeWindow(now, trend, last.night, protocol.dailyLooksFromMm);
  const ovulation = forecasts.find(({ event }) => event === 'ovulation');
  const windows: CurveWindow[] = [];
  if (ripe) windows.push(ripe);
  if (ovulation) {
    const { from, likely, to } = ovulation;
    windows.push({ what: 'ovulation', from, likely, to });
  }
  return {
    night,
    points: readings.map(pointOf),
    line:
      trend && !now.ovulation ? lineOf(trend, ripe?.likely ?? night) : lineOf(trend, last.night),
    windows,
    ...pairings(now, nightOf, nameOf, night),
  };
}

function pointOf(reading: Reading): CurvePoint {
  const { id, night, error, errorMm } = reading;
  if (reading.kind === 'below') {
    const { belowMm } = reading;
    return { id, night, kind: 'none', mm: belowMm, low: 0, high: belowMm };
  }
  const half = tQuantile(HIGH, error.degrees) * errorMm;
  const { mm, method } = reading;
  const kind = method === 'palpation' ? 'felt' : 'measured';
  return {
    id,
    night,
    kind,
    mm: tenth(mm),
    low: tenth(Math.max(0, mm - half)),
    high: tenth(mm + half),
  };
}

function ripeWindow(
  { ovulation, resorbing, scan }: SeasonNow,
  trend: Trend | undefined,
  last: Day,
  mm: number,
): CurveWindow | undefined {
  if (ovulation || resorbing || (scan?.mm ?? 0) >= mm) return undefined;
  const reached = trend?.reaches(mm, last);
  return reached && { what: `${mm} mm`, mm, ...window(reached) };
}

/** Evenly spaced over the scans it runs through, and on to a later night. */
function lineOf(trend: Trend | undefined, until: Day): readonly CurveLine[] {
  const first = trend?.readings[0];
  if (!trend || !first) return [];
  const start = dayNumber(first.night);
  const days = Math.max(dayNumber(until), dayNumber(trend.readings.at(-1)?.night ?? until)) - start;
  const steps = Math.min(LINE_POINTS, Math.max(1, days));
  return Array.from({ length: steps + 1 }, (_, step) => {
    const night = dayOfNumber(start + Math.round((days * step) / steps));
    return { night, ...trend.on(night) };
  });
}

const pairings = (
  { season }: SeasonNow,
  nightOf: NightOf,
  nameOf: (id: AnimalId) => string,
  night: Day,
): Pick<FollicleCurveView, 'stays' | 'locks'> => ({
  stays: season.stays.map(({ male, since, until }) => ({
    male: nameOf(male),
    from: nightOf(since),
    to: until === undefined ? night : nightOf(until),
  })),
  locks: season.locks.map(({ male, at }) => ({ male: nameOf(male), night: nightOf(at) })),
});
