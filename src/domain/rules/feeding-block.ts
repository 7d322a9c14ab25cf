import { addDays, daysBetween, type Day } from '../core/calendar.ts';
import type { Animal } from '../state/animal.ts';
import { agoWords, dayAndMonthWords } from '../core/day-words.ts';
import type { RoomFacts } from './rule.ts';

/** Until when a regurgitation holds feeding back; undefined when no hold is on. */
export function holdUntil(animal: Animal, room: RoomFacts): Day | undefined {
  const last = animal.regurgitations.at(-1);
  if (!last) return undefined;
  const until = addDays(room.nightOf(last), room.protocol.regurgitationHoldDays);
  return daysBetween(room.night, until) > 0 ? until : undefined;
}

/** That a course a vet prescribed is under way. What the vet said goes before any plan. */
export const underTreatment = ({ treated }: Animal, night: Day): string | undefined =>
  treated?.until !== undefined && treated.until >= night
    ? `under treatment until ${dayAndMonthWords(treated.until)}: what the vet said comes first`
    : undefined;

/**
 * Why an animal is not fed tonight, in words for the screen; undefined when nothing stands against.
 *
 * Sources: regurgitation, inBlue, pairing, gravidMeals.
 */
export function feedingBlock(animal: Animal, room: RoomFacts): string | undefined {
  const until = holdUntil(animal, room);
  if (until) return `brought up a meal, rest until ${dayAndMonthWords(until)}`;
  const treatment = underTreatment(animal, room.night);
  if (treatment !== undefined) return treatment;
  if (animal.visit) return `on a visit with ${room.nameOf(animal.visit.with)}`;
  const visitor = room.visitorOf(animal);
  if (visitor) return `${room.nameOf(visitor)} is in with her`;
  if (animal.opaqueAt) {
    const since = room.nightOf(animal.opaqueAt);
    if (daysBetween(since, room.night) < room.protocol.blueHoldDays) {
      return `in blue, seen ${agoWords(since, room.night)}`;
    }
  }
  return gravidBlock(animal, room);
}

/** Before eggs a meal is small, if any; one that broods fasts. Source: gravidMeals. */
function gravidBlock(animal: Animal, room: RoomFacts): string | undefined {
  const standing = room.standing(animal);
  if (standing?.stage === 'ovulated' || standing?.stage === 'pre-lay shed') {
    return 'gravid: most refuse now, a small meal at most';
  }
  const laid = standing?.stage === 'laid' ? standing.now?.season.laid : undefined;
  return laid?.care === 'with her' ? 'with her eggs: she fasts' : undefined;
}
