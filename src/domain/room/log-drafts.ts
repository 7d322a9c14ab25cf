import { momentOf } from '../core/calendar.ts';
import type { RoomId } from '../core/ids.ts';
import type { Draft } from '../events/event.ts';
import { MOST_READINGS } from '../events/room.ts';
import type { Measured, Reading } from '../state/readings.ts';

const YEAR_MIN = 366 * 24 * 60;

/**
 * The records that hold a sensor's readings: as few as may be, each of one local offset, so that
 * the local hour of every reading stays known.
 */
export function logDrafts(
  room: RoomId,
  measured: Measured & { readonly sensor: string },
  readings: readonly Reading[],
  fileUnit: '°C' | '°F',
): Draft[] {
  const { spot, rack, sensor } = measured;
  return stretches(readings).map((stretch): Draft => {
    const { minute: start = 0, offsetMin = 0 } = stretch[0] ?? {};
    return {
      type: 'room-logged',
      at: momentOf({ ms: start * 60_000, offsetMin }),
      room,
      spot,
      ...(rack === undefined ? {} : { rack }),
      sensor,
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
