import type { SourceId } from '../sources.ts';
import type { RackId, RoomId } from '../core/ids.ts';
import type { Picture } from '../picture/picture.ts';
import { roomRules } from '../room/rules/all.ts';
import type { RoomRuleId } from '../room/rules/room-rule.ts';
import type { Room } from '../state/place.ts';

/** Something wrong with a room, ready to show. */
export interface RoomAlarm {
  readonly rule: RoomRuleId;
  readonly room: RoomId;
  readonly name: string;
  readonly asks: string;
  readonly because: readonly string[];
  /** What the rule says, and where that comes from. */
  readonly says: string;
  readonly source: SourceId;
}

export function alarmsOf(room: Room, picture: Picture): RoomAlarm[] {
  const { facts } = picture;
  const airFacts = {
    protocol: facts.protocol,
    nowMs: facts.nowMs,
    nightOf: facts.nightOf,
    rackName: (id: RackId) => picture.rack(id)?.name ?? '?',
  };
  return roomRules.flatMap(({ id, says, source, check }) => {
    const alarm = check(room, airFacts);
    return alarm
      ? [
          {
            rule: id,
            room: room.id,
            name: room.name || 'Room',
            says,
            source,
            ...alarm,
          },
        ]
      : [];
  });
}

/** What is wrong with any room, in order of its id. */
export const roomAlarms = (picture: Picture): RoomAlarm[] =>
  [...picture.ledger.subjects.values()]
    .flatMap((each) => ('kind' in each && each.kind === 'room' ? [each] : []))
    .toSorted((a, b) => (a.id < b.id ? -1 : 1))
    .flatMap((room) => alarmsOf(room, picture));
