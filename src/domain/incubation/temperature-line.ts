import { instantMs } from '../core/calendar.ts';
import type { HeatFailure, IncubatorSpot } from '../state/incubator.ts';
import type { Reading, Series } from '../state/readings.ts';

/** A temperature at a moment. Unit: minutes since 1970 UTC, °C. */
export interface Point {
  readonly minute: number;
  readonly tempC: number;
}

const minuteOf = (moment: Parameters<typeof instantMs>[0]): number =>
  Math.floor(instantMs(moment) / 60_000);

/** How long an incubator takes back to its warmth. An assumption of this program. */
const WARMS_UP_MIN = 120;

/**
 * The temperatures of one spot as one line: by hand and by all sensors, in order of time. A failure
 * of which only the lowest is known dips to it, unless a sensor was there to see.
 */
export function temperatureLine(
  series: readonly Series<IncubatorSpot>[],
  spot: IncubatorSpot,
  failures: readonly HeatFailure[],
): readonly Point[] {
  const ofSpot = series.filter((each) => each.spot === spot);
  const read: Point[] = ofSpot
    .flatMap(({ readings }) => readings)
    .toSorted((a, b) => a.minute - b.minute);
  const dips = failures.flatMap((failure) => dipOf(failure, read, ofSpot));
  return dips.length === 0 ? read : [...read, ...dips].toSorted((a, b) => a.minute - b.minute);
}

function dipOf(
  { from, until, lowestC }: HeatFailure,
  read: readonly Point[],
  series: readonly Series<IncubatorSpot>[],
): readonly Point[] {
  if (until === undefined || lowestC === undefined) return [];
  const [start, end] = [minuteOf(from), minuteOf(until)];
  const isInside = ({ minute }: Pick<Reading, 'minute'>) => minute > start && minute < end;
  const wasWatched = series.some(
    ({ sensor, readings }) => sensor !== undefined && readings.some(isInside),
  );
  const before = read.findLast(({ minute }) => minute <= start);
  if (wasWatched || !before || end <= start) return [];
  return [
    { minute: start, tempC: before.tempC },
    { minute: end, tempC: Math.min(lowestC, before.tempC) },
    { minute: end + WARMS_UP_MIN, tempC: before.tempC },
  ];
}
