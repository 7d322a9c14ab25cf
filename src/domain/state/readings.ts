import { instantMs } from '../core/calendar.ts';
import type { RackId } from '../core/ids.ts';
import type { EventOf } from '../events/event.ts';

/** One temperature at one place. */
export interface Reading {
  /** Whole minutes since 1970 UTC. */
  readonly minute: number;
  /** Minutes that local time was ahead of UTC. */
  readonly offsetMin: number;
  readonly tempC: number;
  readonly humidityPercent?: number | undefined;
  /** Lowest and highest that a thermometer noted since it was last set back. */
  readonly lowC?: number | undefined;
  readonly highC?: number | undefined;
}

export type Spot = EventOf<'room-read'>['spot'];

/** What is read, and by what: readings of one series are comparable. */
export interface Measured<Where extends string = Spot> {
  readonly spot: Where;
  readonly rack?: RackId | undefined;
  /** Absent: by hand. */
  readonly sensor?: string | undefined;
}

/** The readings of one place by one sensor or by hand, oldest first. */
export interface Series<Where extends string = Spot> extends Measured<Where> {
  readonly readings: readonly Reading[];
}

export type ReadingEvent = EventOf<
  'room-read' | 'room-logged' | 'incubator-read' | 'incubator-logged'
>;

export const seriesKey = ({ spot, rack, sensor }: Measured<string>): string =>
  JSON.stringify([spot, rack ?? null, sensor ?? null]);

/** Minutes that the local time a moment was written in is ahead of UTC. */
function offsetOf(at: string): number {
  const [, sign = '+', hours = '0', minutes = '0'] = /([+-])(\d\d):(\d\d)$/.exec(at) ?? [];
  return Number(`${sign}1`) * (60 * Number(hours) + Number(minutes));
}

/** The readings that a record holds, in its own order. */
export function readingsIn(event: ReadingEvent): Reading[] {
  const offsetMin = offsetOf(event.at);
  const start = Math.floor(instantMs(event.at) / 60_000);
  if (event.type === 'room-read' || event.type === 'incubator-read') {
    const { tempC, humidityPercent, lowC, highC } = event;
    return [{ minute: start, offsetMin, tempC, humidityPercent, lowC, highC }];
  }
  return event.readings.map(([since, tempC, humidityPercent]) => ({
    minute: start + since,
    offsetMin,
    tempC,
    humidityPercent,
  }));
}

/**
 * Readings in order of time. A sensor has one reading a minute, and the one given last holds; a
 * hand may read twice in a minute.
 */
export function inOrder(
  readings: readonly Reading[],
  { sensor }: Pick<Measured, 'sensor'>,
): Reading[] {
  const sorted = isSorted(readings) ? readings : readings.toSorted((a, b) => a.minute - b.minute); // Stable: what came last stays last.
  return sensor === undefined
    ? [...sorted]
    : sorted.filter(({ minute }, i) => sorted[i + 1]?.minute !== minute);
}

function isSorted(readings: readonly Reading[]): boolean {
  let before = -Infinity;
  for (const { minute } of readings) {
    if (minute < before) return false;
    before = minute;
  }
  return true;
}
