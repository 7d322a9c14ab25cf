import type { EventOf, RackEvent } from '../events/event.ts';
import { withReadings } from './recent-series.ts';
import type { Measured, Series } from './readings.ts';

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
      return { ...air, recent: withReadings(air.recent, measuredIn(event), event) };
    default:
      return air;
  }
}

const measuredIn = (event: EventOf<'room-read' | 'room-logged'>): Measured => ({
  spot: event.spot,
  rack: event.rack,
  sensor: event.type === 'room-logged' ? event.sensor : undefined,
});
