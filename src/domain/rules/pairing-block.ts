import { notGrown, notRecovered, poorCondition } from '../season/fitness.ts';
import type { Animal } from '../state/animal.ts';
import { digesting } from './digesting.ts';
import { feedingBlock } from './feeding-block.ts';
import type { RoomFacts } from './rule.ts';

/**
 * What stands against a visit with this snake, a sentence each, the weightiest first; empty where
 * nothing does. Sources: readySize, recovery, pairing.
 */
export function againstPairing(animal: Animal, room: RoomFacts): readonly string[] {
  const reasons = [...notGrown(animal, room)];
  const condition = poorCondition(animal);
  if (condition !== undefined) reasons.push(condition);
  const recovering = animal.sex === 'female' ? notRecovered(animal, room) : undefined;
  if (recovering !== undefined) reasons.push(recovering);
  return reasons;
}

/** Why a visit has to wait tonight; undefined where it need not. */
export function pairingWait(animal: Animal, room: RoomFacts): string | undefined {
  if (animal.quarantine) return 'in quarantine';
  return digesting(animal, room.protocol.mealToPairingDays, room) ?? feedingBlock(animal, room);
}
