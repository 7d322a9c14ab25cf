import { addDays, daysBetween } from '../core/calendar.ts';
import { showGrams } from '../core/units.ts';
import { weighingInterval } from '../protocol/cycle-plan.ts';
import { agoWords, daysWords } from '../core/day-words.ts';
import { digesting } from './digesting.ts';
import type { Rule } from './rule.ts';

export const weighDue: Rule = {
  id: 'W1',
  says: 'Weigh often enough to see a loss before it shows.',
  source: 'weighing',
  check(animal, room) {
    const last = animal.weighings.at(-1);
    const passed = animal.passedOver['W1'];
    const interval = weighingInterval(animal, room.night, room.protocol);
    const start = [last?.at, passed?.at]
      .filter((moment) => moment !== undefined)
      .map(room.nightOf)
      .toSorted()
      .at(-1);
    const due = start ? addDays(start, interval) : room.night;
    const lateDays = daysBetween(due, room.night);
    if (lateDays < 0) return undefined;
    return {
      act: 'weigh',
      asks: 'Weigh',
      due,
      state: lateDays >= interval ? 'overdue' : 'due',
      alarm: false,
      blocked: animal.visit
        ? `on a visit with ${room.nameOf(animal.visit.with)}`
        : digesting(animal, room.protocol.mealToHandlingDays, room),
      because: [
        last
          ? `Last weighed ${agoWords(room.nightOf(last.at), room.night)}: ${showGrams(last.massG)}.`
          : 'Never weighed yet.',
        `Weighed every ${daysWords(interval)}.`,
      ],
      records: last ? [last.id] : [],
    };
  },
};
