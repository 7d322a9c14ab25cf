import type { RackEvent } from '../events/event.ts';
import {
  inOrder,
  readingsIn,
  seriesKey,
  type Measured,
  type Reading,
  type Series,
} from '../state/readings.ts';

/**
 * Every series of a room, from its standing records in order of time.
 *
 * Overlapping records of one sensor are joined: a minute counts once.
 */
export function seriesOf(events: Iterable<RackEvent>): Series[] {
  const found = new Map<string, { readonly measured: Measured; readonly readings: Reading[] }>();
  for (const event of events) {
    if (event.type !== 'room-read' && event.type !== 'room-logged') continue;
    const { spot, rack } = event;
    const measured = {
      spot,
      rack,
      sensor: event.type === 'room-logged' ? event.sensor : undefined,
    };
    const key = seriesKey(measured);
    const series = found.get(key) ?? { measured, readings: [] };
    found.set(key, series);
    for (const reading of readingsIn(event)) series.readings.push(reading);
  }
  return [...found.values()].map(({ measured, readings }) => ({
    ...measured,
    readings: inOrder(readings, measured),
  }));
}
