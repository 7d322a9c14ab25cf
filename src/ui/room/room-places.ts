import type { ReadPlace } from '../../domain/room/log-drafts.ts';
import type { RoomView } from '../../domain/views/room-view.ts';

/** A place a sensor may lie at, as it is picked. */
export interface NamedPlace {
  readonly words: string;
  readonly where: ReadPlace;
}

/** The air of a room, and under the heat of each rack. */
export function roomPlaces({ id: room, racks }: RoomView): readonly NamedPlace[] {
  const spot = 'hot spot';
  const hot: readonly NamedPlace[] = racks.map(({ id: rack, name }) => ({
    words: `Hot spot, rack ${name}`,
    where: { room, spot, rack },
  }));
  return [
    { words: 'Air of the room', where: { room, spot: 'air' } },
    ...(hot.length > 0 ? hot : [{ words: 'Hot spot', where: { room, spot } } as const]),
  ];
}
