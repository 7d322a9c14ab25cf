import type { EventOf, RackEvent } from '../events/event.ts';
import { measuredIn, type IncubatorSpot } from '../state/incubator.ts';
import {
  inOrder,
  readingsIn,
  seriesKey,
  type Measured,
  type Reading,
  type ReadingEvent,
  type Series,
} from '../state/readings.ts';

/**
 * Every series of a room, from its standing records in order of time.
 *
 * Overlapping records of one sensor are joined: a minute counts once.
 */
export const seriesOf = (events: Iterable<RackEvent>): Series[] =>
  joined(
    [...events].flatMap((event) =>
      event.type === 'room-read' || event.type === 'room-logged'
        ? [[measuredInRoom(event), event] as const]
        : [],
    ),
  );

/** The same of an incubator. */
export const seriesOfIncubator = (events: Iterable<RackEvent>): Series<IncubatorSpot>[] =>
  joined(
    [...events].flatMap((event) =>
      event.type === 'incubator-read' || event.type === 'incubator-logged'
        ? [[measuredIn(event), event] as const]
        : [],
    ),
  );

const measuredInRoom = (event: EventOf<'room-read' | 'room-logged'>): Measured => ({
  spot: event.spot,
  rack: event.rack,
  sensor: event.type === 'room-logged' ? event.sensor : undefined,
});

function joined<Where extends string>(
  records: readonly (readonly [Measured<Where>, ReadingEvent])[],
): Series<Where>[] {
  const found = new Map<
    string,
    { readonly measured: Measured<Where>; readonly readings: Reading[] }
  >();
  for (const [measured, event] of records) {
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
