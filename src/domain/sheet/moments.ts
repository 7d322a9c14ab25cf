import {
  DAY_MS,
  dayNumber,
  eveningOf,
  instantMs,
  momentOf,
  type Clock,
  type Moment,
} from '../core/calendar.ts';
import { createWallReader, type Zone } from '../csv/wall-clock.ts';
import type { When } from './item.ts';

export interface Placed {
  readonly at: Moment;
  readonly precision: 'minute' | 'day';
}

/**
 * When a record of a file was, in the local time of that day. A day alone is its evening, as for all
 * records that know no more; without a day it is now.
 */
export function createMoments(zone: Zone, now: Clock): (when: When | undefined) => Placed {
  const meant = createWallReader(zone);
  return (when) => {
    if (!when) return { at: momentOf(now), precision: 'day' };
    const { day, clockMs } = when;
    const midnightMs = dayNumber(day) * DAY_MS;
    if (clockMs === undefined) {
      const evening = eveningOf(day, zone(midnightMs + DAY_MS / 2));
      const isToday = momentOf(now).slice(0, 10) === day && instantMs(evening) > now.ms;
      return { at: isToday ? momentOf(now) : evening, precision: 'day' };
    }
    const wall = midnightMs + clockMs;
    const [ms = wall - zone(wall) * 60_000] = meant(wall).instants;
    return { at: momentOf({ ms, offsetMin: zone(ms) }), precision: 'minute' };
  };
}
