import { addDays, daysBetween, type Day } from '../core/calendar.ts';
import type { EventId } from '../core/ids.ts';
import type { Animal } from '../state/animal.ts';
import type { RoomFacts } from './rule.ts';

/** Where it stands since it brought up a meal: dates and portions, and no treatment. */
export interface AfterRegurgitation {
  readonly night: Day;
  /** No food and no handling before this night. */
  readonly restUntil: Day;
  /** Meals it took unaided and kept since. */
  readonly kept: number;
  /** Of how many. */
  readonly of: number;
  /** The last of them. */
  readonly lastKept?: Day | undefined;
  /** No next meal before this night. */
  readonly nextFrom: Day;
}

/** Undefined where it never brought one up, or has kept enough meals since. Source: regurgitation. */
export function afterRegurgitation(
  animal: Animal,
  { nightOf, protocol }: RoomFacts,
): AfterRegurgitation | undefined {
  const last = animal.regurgitations.at(-1);
  if (!last) return undefined;
  const night = nightOf(last);
  const kept = keptSince(animal, night, nightOf);
  const of = protocol.mealsAfterHold;
  if (kept.length >= of) return undefined;
  const restUntil = addDays(night, protocol.regurgitationHoldDays);
  const newest = kept.at(-1);
  const lastKept = newest && nightOf(newest.at);
  return {
    night,
    restUntil,
    kept: kept.length,
    of,
    lastKept,
    nextFrom: lastKept ? addDays(lastKept, protocol.regurgitationHoldDays) : restUntil,
  };
}

/** Meals it took unaided on later nights than it brought one up. */
function keptSince({ offers }: Animal, night: Day, nightOf: RoomFacts['nightOf']) {
  return offers.filter(
    ({ at, outcome, how }) =>
      outcome === 'ate' && how !== 'assisted' && daysBetween(night, nightOf(at)) > 0,
  );
}

/** The records it rests on: the meals kept since. The regurgitation itself has no id in the animal. */
export const keptRecords = (animal: Animal, night: Day, room: RoomFacts): readonly EventId[] =>
  keptSince(animal, night, room.nightOf).map(({ id }) => id);
