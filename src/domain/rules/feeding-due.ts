import { addDays, daysBetween, type Day } from '../core/calendar.ts';
import type { Prey } from '../events/feeding.ts';
import { feedingPlan, type FeedingPlan } from '../protocol/feeding-plan.ts';
import { plannedMeal } from '../protocol/planned-meal.ts';
import type { Animal } from '../state/animal.ts';
import { holdUntil } from './feeding-block.ts';
import { afterRegurgitation } from './regurgitation.ts';
import type { RoomFacts } from './rule.ts';

/** How it is fed as things stand tonight. */
export const planOf = (animal: Animal, room: RoomFacts): FeedingPlan =>
  feedingPlan(animal, room, animal.sex === 'female' ? room.standing(animal)?.stage : undefined);

/** What it is offered next. */
export function mealOf(animal: Animal, room: RoomFacts): Prey {
  const { portion, own } = planOf(animal, room);
  const { protocol, preySizes: sizes } = room;
  const after = afterRegurgitation(animal, room);
  if (after?.kept === 0) {
    return plannedMeal(animal, { share: protocol.firstMealAfterHoldShare, sizes });
  }
  return plannedMeal(animal, {
    portion: after ? Math.min(portion, protocol.afterHoldPortion) : portion,
    sizes,
    own,
  });
}

/** The night from which its clock runs: the last offer, or the last time it was passed over. */
function clockStart(animal: Animal, room: RoomFacts): Day | undefined {
  const nights = [animal.offers.at(-1)?.at, animal.passedOver['F1']?.at]
    .filter((moment) => moment !== undefined)
    .map(room.nightOf);
  return nights.toSorted().at(-1);
}

/** The night of its next meal; one that is past is late. */
export function dueNight(animal: Animal, room: RoomFacts): Day {
  const start = clockStart(animal, room);
  if (start) {
    const { everyDays } = planOf(animal, room);
    const next = afterRegurgitation(animal, room)?.nextFrom;
    const due = addDays(start, everyDays);
    return next !== undefined && next > due ? next : due;
  }
  // One written down without saying whence was here before the record began: it is fed tonight.
  const isNewHere = animal.origin !== undefined && animal.origin !== 'own';
  return animal.arrivedAt && isNewHere
    ? addDays(room.nightOf(animal.arrivedAt), room.protocol.settleInDays)
    : room.night;
}

/** Days a meal is late; undefined where none is due and no hold is to be told. */
export function lateDays(animal: Animal, room: RoomFacts): number | undefined {
  const late = daysBetween(dueNight(animal, room), room.night);
  return late < 0 && holdUntil(animal, room) === undefined ? undefined : late;
}
