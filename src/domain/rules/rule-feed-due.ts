import { addDays, daysBetween, type Day } from '../core/calendar.ts';
import type { EventId } from '../core/ids.ts';
import { feedingInterval } from '../protocol/feeding-class.ts';
import { plannedMeal, showMeal, showPrey } from '../protocol/planned-meal.ts';
import type { Animal } from '../state/animal.ts';
import { agoWords, days } from './dates.ts';
import { feedingBlock, holdUntil, isFirstSinceRegurgitation } from './feeding-block.ts';
import type { RoomFacts, Rule } from './rule.ts';

/** The night from which its clock runs: the last offer, or the last time it was passed over. */
function clockStart(animal: Animal, room: RoomFacts): Day | undefined {
  const nights = [animal.offers.at(-1)?.at, animal.passedOver['F1']?.at]
    .filter((moment) => moment !== undefined)
    .map(room.nightOf);
  return nights.toSorted().at(-1);
}

function dueNight(animal: Animal, room: RoomFacts): Day {
  const start = clockStart(animal, room);
  const { days: interval } = feedingInterval(animal, room.night, room.protocol);
  const hold = holdUntil(animal, room);
  if (start) {
    const due = addDays(start, interval);
    return hold !== undefined && hold > due ? hold : due;
  }
  // One written down without saying whence was here before the record began: it is fed tonight.
  const isNewHere = animal.origin !== undefined && animal.origin !== 'own';
  return animal.arrivedAt && isNewHere
    ? addDays(room.nightOf(animal.arrivedAt), room.protocol.settleInDays)
    : room.night;
}

function because(animal: Animal, room: RoomFacts): string[] {
  const { days: interval, words } = feedingInterval(animal, room.night, room.protocol);
  const last = animal.offers.at(-1);
  const facts = last
    ? [`${showPrey(last.prey)}, ${last.outcome}, ${agoWords(room.nightOf(last.at), room.night)}.`]
    : ['No meal on record yet.'];
  facts.push(`Fed as ${words}: every ${days(interval)}.`);
  const passed = animal.passedOver['F1'];
  if (passed) {
    facts.push(`Passed over ${agoWords(room.nightOf(passed.at), room.night)}: ${passed.reason}.`);
  }
  const refusals = refusalsInRow(animal);
  if (refusals > 1) facts.push(`Refused ${refusals} times in a row.`);
  if (isFirstSinceRegurgitation(animal, room)) {
    facts.push('First meal since it brought one up: a small one.');
  }
  return facts;
}

/** What its because is built from: the last offers, as far as they were refused, and a passing over. */
function recordsOf(animal: Animal): EventId[] {
  const offers = animal.offers.slice(-Math.max(1, refusalsInRow(animal)));
  const passed = animal.passedOver['F1'];
  return [...offers, ...(passed ? [passed] : [])].map(({ id }) => id);
}

/** Refusals since it last ate; a meal still left overnight counts as neither. */
export function refusalsInRow(animal: Animal): number {
  const known = animal.offers.filter(({ outcome }) => outcome !== 'left');
  return known.length - 1 - known.findLastIndex(({ outcome }) => outcome !== 'refused');
}

export const feedDue: Rule = {
  id: 'F1',
  says: 'Offer a meal when the days since the last offer reach the rhythm of its class.',
  source: 'feedingRhythm',
  check(animal, room) {
    if (animal.offers.at(-1)?.outcome === 'left') return undefined; // F2 asks about that first.
    const due = dueNight(animal, room);
    const lateDays = daysBetween(due, room.night);
    const hold = holdUntil(animal, room);
    if (lateDays < 0 && hold === undefined) return undefined;
    const share = isFirstSinceRegurgitation(animal, room)
      ? room.protocol.firstMealAfterHoldShare
      : undefined;
    const meal = plannedMeal(animal, share);
    return {
      act: 'feed',
      asks: `Feed ${showMeal(meal)}`,
      meal,
      due,
      state: lateDays >= room.protocol.feedOverdueDays ? 'overdue' : 'due',
      alarm: false,
      blocked: feedingBlock(animal, room),
      because: because(animal, room),
      records: recordsOf(animal),
    };
  },
};
