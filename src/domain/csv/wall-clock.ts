import { DAY_MS } from '../core/calendar.ts';

/** Minutes that the device's clock is ahead of UTC at an instant in milliseconds. */
export type Zone = (instantMs: number) => number;

/** What a wall clock without an offset may have meant. */
export interface Meant {
  /** Instants in milliseconds, earliest first: none, one, or two. */
  readonly instants: readonly number[];
}

const QUARTER_MS = 900_000;

/**
 * Reads wall clocks of one zone. In spring an hour of them never was; in autumn one was twice.
 *
 * Clocks change at quarter hours at the finest, so one answer serves a quarter hour.
 */
export function createWallReader(zone: Zone): (wallMs: number) => Meant {
  const known = new Map<number, readonly number[]>();
  return (wallMs) => {
    const quarter = Math.floor(wallMs / QUARTER_MS);
    let offsets = known.get(quarter);
    if (!offsets) {
      const around = new Set([zone(wallMs - DAY_MS), zone(wallMs + DAY_MS)]);
      offsets = [...around]
        .filter((offset) => zone(wallMs - offset * 60_000) === offset)
        .toSorted((a, b) => b - a);
      known.set(quarter, offsets);
    }
    return { instants: offsets.map((offset) => wallMs - offset * 60_000) };
  };
}
