import type { Day } from '../core/calendar.ts';
import type { Animal } from '../state/animal.ts';
import type { RoomFacts, RuleId } from './rule.ts';

/** The night on which what a rule asks for was last passed over on purpose. */
export function passedOn(animal: Animal, rule: RuleId, room: RoomFacts): Day | undefined {
  const passed = animal.passedOver[rule];
  return passed && room.nightOf(passed.at);
}
