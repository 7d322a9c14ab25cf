import { daysBetween } from '../core/calendar.ts';
import { agoWords, daysWords } from '../core/day-words.ts';
import { passedOn } from './passed.ts';
import type { Rule } from './rule.ts';

export const regurgitatedTwice: Rule = {
  id: 'F5',
  says: 'A second meal brought up within two months is a matter for a reptile vet.',
  source: 'vetClock',
  vet: true,
  check(animal, room) {
    const [before, last] = animal.regurgitations.slice(-2).map(room.nightOf);
    if (before === undefined || last === undefined) return undefined;
    const within = room.protocol.regurgitationsWithinDays;
    if (daysBetween(before, last) > within || daysBetween(last, room.night) > within) {
      return undefined;
    }
    const passed = passedOn(animal, 'F5', room);
    if (passed !== undefined && passed >= last) return undefined;
    return {
      act: 'call',
      asks: `${animal.name || 'It'} brought up two meals: call a reptile vet`,
      due: last,
      state: 'overdue',
      alarm: true,
      because: [
        `Brought up a meal ${agoWords(last, room.night)}, and one ${daysWords(daysBetween(before, last))} before that.`,
        `Twice within ${daysWords(within)} is not left to rest alone.`,
      ],
      records: [],
    };
  },
};
