import type { AnimalId, RoomId } from '../core/ids.ts';
import type { Draft } from '../events/event.ts';
import type { Picture } from '../picture/picture.ts';
import { cardOf } from '../views/animal-view.ts';
import { codeOfRoom } from '../views/room-view.ts';
import { freshCodes } from './new-rack.ts';

const isRoom = (id: AnimalId | RoomId): id is RoomId => id.startsWith('r-');

/**
 * The records that give animals a card and rooms a label; who has one keeps it.
 *
 * `chance` gives numbers from 0 up to 1.
 */
export function newLabelDrafts(
  wanted: readonly (AnimalId | RoomId)[],
  picture: Picture,
  chance: () => number,
): readonly Draft[] {
  const without = wanted.filter(
    (id) => (isRoom(id) ? codeOfRoom(id, picture) : cardOf(id, picture)) === undefined,
  );
  const codes = freshCodes(without.length, picture, chance);
  return without.flatMap((id, i): Draft[] => {
    const code = codes[i];
    if (!code) return [];
    const to = isRoom(id)
      ? ({ kind: 'room', room: id } as const)
      : ({ kind: 'animal', animal: id } as const);
    return [{ type: 'label-assigned', code, to }];
  });
}
