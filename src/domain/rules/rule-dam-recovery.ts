import { addDays, daysBetween } from '../core/calendar.ts';
import { showGrams } from '../core/units.ts';
import { agoWords } from '../core/day-words.ts';
import { passedOn } from './passed.ts';
import type { Rule } from './rule.ts';

/** Passed over, say because the vet has seen her, it is quiet for so long. */
const QUIET_DAYS = 7;
/** By then another season or another rule speaks of her. */
const UNTIL_DAYS = 120;

export const damRecovery: Rule = {
  id: 'L2',
  says: 'No meal by three weeks after laying, or further loss after the first two: a reptile vet. A female that broods is left to it.',
  source: 'recovery',
  vet: true,
  check(animal, room) {
    const laid = room.standing(animal)?.now?.season.laid;
    if (!laid || laid.care === 'with her') return undefined;
    const { protocol, night, nightOf } = room;
    const since = nightOf(laid.at);
    const days = daysBetween(since, night);
    if (days < protocol.damLossFromDays || days > UNTIL_DAYS) return undefined;
    const passed = passedOn(animal, 'L2', room);
    if (passed !== undefined && daysBetween(passed, night) < QUIET_DAYS) return undefined;
    const hasEaten = animal.offers.some(
      ({ at, outcome }) => (outcome === 'ate' || outcome === 'partly') && nightOf(at) > since,
    );
    const settled = animal.weighings.find(
      ({ at }) => nightOf(at) >= addDays(since, protocol.damLossFromDays),
    );
    const last = animal.weighings.at(-1);
    const hasLost = settled && last && last.massG < settled.massG * (1 - protocol.damLossShare);
    const isLate = !hasEaten && days >= protocol.damMealLateDays;
    if (!isLate && !hasLost) return undefined;
    return {
      act: 'call',
      asks: isLate ? 'No meal since laying: ask a vet' : 'Still losing since laying: ask a vet',
      due: addDays(since, protocol.damMealLateDays),
      state: 'due',
      alarm: false,
      because: [
        `Eggs found ${agoWords(since, night)}.`,
        ...(isLate ? [`No meal eaten since; late from day ${protocol.damMealLateDays}.`] : []),
        ...(hasLost
          ? [`${showGrams(settled.massG)} two weeks after laying, ${showGrams(last.massG)} now.`]
          : []),
      ],
      records: [laid.id, ...(hasLost ? [settled.id, last.id] : [])],
    };
  },
};
