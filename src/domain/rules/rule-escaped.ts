import { agoWords } from '../core/day-words.ts';
import type { Rule } from './rule.ts';

export const escaped: Rule = {
  id: 'H2',
  says: 'An escaped animal is looked for until it is found.',
  source: 'household',
  evenGone: true,
  check(animal, room) {
    if (animal.gone?.how !== 'escaped') return undefined;
    const night = room.nightOf(animal.gone.at);
    return {
      act: 'look',
      asks: `Find ${animal.name || 'the escaped snake'}`,
      due: night,
      state: 'overdue',
      alarm: true,
      because: [`Escaped ${agoWords(night, room.night)}.`],
      records: [animal.gone.id],
    };
  },
};
