import { agoWords } from '../core/day-words.ts';
import type { Rule } from './rule.ts';

export const stopPairing: Rule = {
  id: 'S5',
  says: 'Once she has ovulated the male comes out: more visits only disturb her.',
  source: 'pairFrom',
  check(animal, room) {
    const host = room.hostOf(animal);
    const ovulation = host && room.standing(host)?.now?.ovulation;
    if (!animal.visit || !host || !ovulation) return undefined;
    return {
      act: 'take-out',
      asks: `Take ${animal.name || 'him'} out: ${host.name || 'she'} has ovulated`,
      due: room.night,
      state: 'due',
      alarm: false,
      because: [`Ovulation ${agoWords(ovulation.last, room.night)}, ${ovulation.how}.`],
      records: [ovulation.id],
    };
  },
};
