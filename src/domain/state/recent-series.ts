import {
  inOrder,
  readingsIn,
  seriesKey,
  type Measured,
  type Reading,
  type ReadingEvent,
  type Series,
} from './readings.ts';

const DAY_MIN = 24 * 60;

/** How far back from its newest reading a series is kept: a sensor's day, and a habit by hand. */
const keptMin = (sensor: string | undefined): number => (sensor === undefined ? 15 : 1) * DAY_MIN;

/**
 * The last readings of each series, with those of one more record.
 *
 * What falls out of the window after one event would fall out after any later one too, so it does
 * not matter how many events are taken in at once.
 */
export function withReadings<Where extends string>(
  recent: readonly Series<Where>[],
  measured: Measured<Where>,
  event: ReadingEvent,
): readonly Series<Where>[] {
  const key = seriesKey(measured);
  const at = recent.findIndex((each) => seriesKey(each) === key);
  const readings = lastOf([...(recent[at]?.readings ?? []), ...readingsIn(event)], measured.sensor);
  const series = { ...measured, readings: inOrder(readings, measured) };
  return at < 0 ? [...recent, series] : recent.with(at, series);
}

function lastOf(readings: readonly Reading[], sensor: string | undefined): Reading[] {
  let newest = -Infinity;
  for (const { minute } of readings) newest = Math.max(newest, minute);
  return readings.filter(({ minute }) => minute > newest - keptMin(sensor));
}
