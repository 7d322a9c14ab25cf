import type { Day } from '../core/calendar.ts';
import type { EventId } from '../core/ids.ts';
import type { Animal } from '../state/animal.ts';
import type { RoomFacts, RuleId } from './rule.ts';

/** When what a rule asks for was last passed over on purpose. */
export function passedOver(
  animal: Animal,
  rule: RuleId,
  room: RoomFacts,
): { readonly night: Day; readonly id: EventId } | undefined {
  const passed = animal.passedOver[rule];
  return passed && { night: room.nightOf(passed.at), id: passed.id };
}

/** The night of it, for rules that ask again another night. */
export const passedOn = (animal: Animal, rule: RuleId, room: RoomFacts): Day | undefined =>
  passedOver(animal, rule, room)?.night;
