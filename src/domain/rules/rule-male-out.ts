import { addDays, daysBetween } from '../core/calendar.ts';
import { agoWords, daysWords } from '../core/day-words.ts';
import type { Rule } from './rule.ts';

export const maleOut: Rule = {
  id: 'P1',
  says: 'A male goes home after his stay: to drink, rest and eat.',
  source: 'maleStay',
  check(animal, room) {
    if (!animal.visit) return undefined;
    const hostNow = room.standing(room.hostOf(animal) ?? animal)?.now;
    if (hostNow?.ovulation) return undefined; // S5 asks for the same, and sooner.
    const since = room.nightOf(animal.visit.since);
    const stayed = daysBetween(since, room.night);
    if (stayed < room.protocol.maleStayDays) return undefined;
    const host = room.nameOf(animal.visit.with);
    return {
      act: 'take-out',
      asks: `Take ${animal.name || 'him'} out of ${host}’s tub`,
      due: addDays(since, room.protocol.maleStayDays),
      state: stayed >= room.protocol.maleForgottenDays ? 'overdue' : 'due',
      alarm: false,
      because: [
        `In with ${host} since ${agoWords(since, room.night)}, ${daysWords(stayed)}.`,
        `Your plan is a stay of ${daysWords(room.protocol.maleStayDays)}.`,
      ],
      records: [animal.visit.id],
    };
  },
};
