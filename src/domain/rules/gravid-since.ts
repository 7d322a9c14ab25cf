import { daysBetween, type Day } from '../core/calendar.ts';
import type { EventId } from '../core/ids.ts';
import type { Animal } from '../state/animal.ts';
import type { RoomFacts } from './rule.ts';

/** From what the days to her eggs are counted: the pre-lay shed, else ovulation. */
export interface Gravid {
  readonly from: 'shed' | 'ovulation';
  readonly since: Day;
  readonly days: number;
  readonly record: EventId;
}

/** Undefined unless she has ovulated and has not laid. */
export function gravidSince(animal: Animal, room: RoomFacts): Gravid | undefined {
  const now = room.standing(animal)?.now;
  if (!now || now.season.laid) return undefined;
  if (now.preLay) {
    const { night: since, shed } = now.preLay;
    return { from: 'shed', since, days: daysBetween(since, room.night), record: shed.id };
  }
  if (!now.ovulation) return undefined;
  const { last: since, id } = now.ovulation;
  return { from: 'ovulation', since, days: daysBetween(since, room.night), record: id };
}
