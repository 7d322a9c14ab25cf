import { daysBetween, instantMs } from '../core/calendar.ts';
import { showPrey } from '../protocol/planned-meal.ts';
import { agoWords } from '../core/day-words.ts';
import type { Rule } from './rule.ts';

export const mealLeft: Rule = {
  id: 'F2',
  says: 'A meal left in the tub is taken out in the morning, and what became of it written down.',
  source: 'leftOvernight',
  check(animal, room) {
    const offer = animal.offers.findLast(({ outcome }) => outcome === 'left');
    if (!offer) return undefined;
    const night = room.nightOf(offer.at);
    const hours = (room.nowMs - instantMs(offer.at)) / 3_600_000;
    return {
      act: 'settle',
      asks: `${showPrey(offer.prey)} left: eaten?`,
      offer: offer.id,
      meal: offer.prey,
      due: night,
      state:
        hours > room.protocol.leftHours || daysBetween(night, room.night) > 0 ? 'overdue' : 'due',
      alarm: false,
      because: [
        `${showPrey(offer.prey)} left in the tub ${agoWords(night, room.night)}.`,
        `Prey older than ${room.protocol.leftHours} hours is thrown away.`,
      ],
      records: [offer.id],
    };
  },
};
