import type { EventId } from '../core/ids.ts';
import { showMeal, showPrey } from '../protocol/planned-meal.ts';
import type { Animal } from '../state/animal.ts';
import { agoWords, daysWords } from '../core/day-words.ts';
import { feedingBlock } from './feeding-block.ts';
import { dueNight, lateDays, mealOf, planOf } from './feeding-due.ts';
import { refusalsInRow, refusedInRow } from './refusals-in-row.ts';
import { afterRegurgitation, keptRecords } from './regurgitation.ts';
import type { RoomFacts, Rule } from './rule.ts';

function because(animal: Animal, room: RoomFacts): string[] {
  const { everyDays, words, own } = planOf(animal, room);
  const last = animal.offers.at(-1);
  const facts = last
    ? [`${showPrey(last.prey)}, ${last.outcome}, ${agoWords(room.nightOf(last.at), room.night)}.`]
    : ['No meal on record yet.'];
  facts.push(`Fed as ${words}: every ${daysWords(everyDays)}.`);
  if (own)
    facts.push(own.why === undefined ? 'Your own plan for it.' : `Your own plan: ${own.why}.`);
  const passed = animal.passedOver['F1'];
  if (passed) {
    facts.push(`Passed over ${agoWords(room.nightOf(passed.at), room.night)}: ${passed.reason}.`);
  }
  const refusals = refusalsInRow(animal);
  if (refusals > 1) facts.push(`Refused ${refusals} times in a row.`);
  const after = afterRegurgitation(animal, room);
  if (after?.kept === 0) facts.push('First meal since it brought one up: a small one.');
  if (after && after.kept > 0) {
    facts.push(
      `Kept ${after.kept} of ${after.of} meals since it brought one up: less than the usual one.`,
    );
  }
  return facts;
}

/** What its because is built from: the last offers, as far as they were refused, and a passing over. */
function recordsOf(animal: Animal, room: RoomFacts): readonly EventId[] {
  const offers = [...refusedInRow(animal), ...animal.offers.slice(-1)];
  const passed = animal.passedOver['F1'];
  const own = planOf(animal, room).own;
  const after = afterRegurgitation(animal, room);
  const ids = [
    ...[...offers, ...(passed ? [passed] : []), ...(own ? [own] : [])].map(({ id }) => id),
    ...(after ? keptRecords(animal, after.night, room) : []),
  ];
  return [...new Set(ids)];
}

export const feedDue: Rule = {
  id: 'F1',
  says: 'Offer a meal when the days since the last offer reach the rhythm of its class.',
  source: 'feedingRhythm',
  check(animal, room) {
    if (animal.offers.at(-1)?.outcome === 'left') return undefined; // F2 asks about that first.
    const late = lateDays(animal, room);
    if (late === undefined) return undefined;
    const meal = mealOf(animal, room);
    return {
      act: 'feed',
      asks: `Feed ${showMeal(meal)}`,
      meal,
      due: dueNight(animal, room),
      state: late >= room.protocol.feedOverdueDays ? 'overdue' : 'due',
      alarm: false,
      blocked: feedingBlock(animal, room),
      because: because(animal, room),
      records: recordsOf(animal, room),
    };
  },
};
