import type { RackEvent, EventOf } from '../events/event.ts';
import { inOrder, readingsIn, seriesKey, type Reading, type Series } from './readings.ts';

export type Programme = Pick<
  EventOf<'room-programme-set'>,
  'from' | 'name' | 'dayFromMin' | 'nightFromMin' | 'steps'
>;

/**
 * What is kept of a room's air for tonight and for a fast start: its programmes, and the last
 * readings of each series. Years of readings stay in their records, where the room's screen finds
 * them; in here they would be carried by every start.
 */
export interface RoomAir {
  /** In the order in which they were set. */
  readonly programmes: readonly Programme[];
  readonly recent: readonly Series[];
}

const DAY_MIN = 24 * 60;

/** How far back from its newest reading a series is kept: a sensor's day, and a habit by hand. */
const keptMin = (sensor: string | undefined): number => (sensor === undefined ? 15 : 1) * DAY_MIN;

export const noAir: RoomAir = { programmes: [], recent: [] };

/** The air after an event. Total, like all reducers. */
export function applyToAir(air: RoomAir, event: RackEvent): RoomAir {
  switch (event.type) {
    case 'room-programme-set': {
      const { from, name, dayFromMin, nightFromMin, steps } = event;
      const programme = { from, name, dayFromMin, nightFromMin, steps };
      return { ...air, programmes: [...air.programmes, programme] };
    }
    case 'room-read':
    case 'room-logged':
      return { ...air, recent: takeIn(air.recent, event) };
    default:
      return air;
  }
}

/**
 * What falls out of the window after one event would fall out after any later one too, so it does
 * not matter how many events are taken in at once.
 */
function takeIn(
  recent: RoomAir['recent'],
  event: EventOf<'room-read'> | EventOf<'room-logged'>,
): RoomAir['recent'] {
  const { spot, rack } = event;
  const sensor = event.type === 'room-logged' ? event.sensor : undefined;
  const measured = { spot, rack, sensor };
  const key = seriesKey(measured);
  const at = recent.findIndex((each) => seriesKey(each) === key);
  const readings = lastOf([...(recent[at]?.readings ?? []), ...readingsIn(event)], sensor);
  const series = { ...measured, readings: inOrder(readings, measured) };
  return at < 0 ? [...recent, series] : recent.with(at, series);
}

function lastOf(readings: readonly Reading[], sensor: string | undefined): Reading[] {
  let newest = -Infinity;
  for (const { minute } of readings) newest = Math.max(newest, minute);
  return readings.filter(({ minute }) => minute > newest - keptMin(sensor));
}
