import { momentOf } from '../core/calendar.ts';
import type { IncubatorId, RackId, RoomId } from '../core/ids.ts';
import type { Draft } from '../events/event.ts';
import { MOST_READINGS } from '../events/room.ts';
import type { IncubatorSpot } from '../state/incubator.ts';
import type { Reading, Spot } from '../state/readings.ts';

/** Where a sensor lies. */
export type ReadPlace =
  | { readonly room: RoomId; readonly spot: Spot; readonly rack?: RackId | undefined }
  | { readonly incubator: IncubatorId; readonly spot: IncubatorSpot };

const YEAR_MIN = 366 * 24 * 60;

/**
 * The records that hold a sensor's readings: as few as may be, each of one local offset, so that
 * the local hour of every reading stays known.
 */
export function logDrafts(
  where: ReadPlace & { readonly sensor: string },
  readings: readonly Reading[],
  fileUnit: '°C' | '°F',
): Draft[] {
  return stretches(readings).map((stretch): Draft => {
    const { minute: start = 0, offsetMin = 0 } = stretch[0] ?? {};
    return {
      ...placeIn(where),
      at: momentOf({ ms: start * 60_000, offsetMin }),
      readings: stretch.map(({ minute, tempC, humidityPercent }) =>
        humidityPercent === undefined
          ? [minute - start, tempC]
          : [minute - start, tempC, humidityPercent],
      ),
      ...(fileUnit === '°F' ? { fileUnit } : {}),
    };
  });
}

function stretches(readings: readonly Reading[]): readonly (readonly Reading[])[] {
  const all: Reading[][] = [];
  for (const reading of readings) {
    const stretch = all.at(-1);
    const first = stretch?.[0];
    const fits =
      stretch &&
      first &&
      stretch.length < MOST_READINGS &&
      first.offsetMin === reading.offsetMin &&
      reading.minute - first.minute < YEAR_MIN;
    if (fits) stretch.push(reading);
    else all.push([reading]);
  }
  return all;
}

function placeIn(where: ReadPlace & { readonly sensor: string }) {
  const { sensor } = where;
  if ('incubator' in where) {
    const { incubator, spot } = where;
    return { type: 'incubator-logged', incubator, spot, sensor } as const;
  }
  const { room, spot, rack } = where;
  return {
    type: 'room-logged',
    room,
    spot,
    ...(rack === undefined ? {} : { rack }),
    sensor,
  } as const;
}

/** How a file's readings stand to those that are there already. */
export interface Novelty {
  readonly fresh: readonly Reading[];
  /** Already there, and the same. */
  readonly known: number;
  /** In a minute for which this sensor already has another value: is it another sensor? */
  readonly differing: number;
}

/** What is new in a file. What is known is not written again, however often it is taken in. */
export function noveltyOf(readings: readonly Reading[], there: readonly Reading[]): Novelty {
  const known = new Map(there.map(({ minute, tempC }) => [minute, tempC]));
  const fresh = readings.filter(({ minute, tempC }) => known.get(minute) !== tempC);
  return {
    fresh,
    known: readings.length - fresh.length,
    differing: fresh.filter(({ minute }) => known.has(minute)).length,
  };
}
