import { daysBetween, instantMs } from '../core/calendar.ts';
import { agoWords } from '../core/day-words.ts';
import type { Rule } from './rule.ts';

const FRESH_DAYS = 7;

export const graveSign: Rule = {
  id: 'H1',
  says: 'A grave sign is looked at before anything else, with a reptile vet.',
  source: 'vetClock',
  vet: true,
  check(animal, room) {
    const note = animal.graveSign;
    if (!note) return undefined;
    const night = room.nightOf(note.at);
    const passed = animal.passedOver['H1'];
    if (passed && instantMs(passed.at) >= instantMs(note.at)) return undefined;
    if (daysBetween(night, room.night) > FRESH_DAYS) return undefined;
    return {
      act: 'look',
      asks: `Look at ${animal.name || 'it'} first (${note.system})`,
      due: night,
      state: 'overdue',
      alarm: true,
      because: [
        `Grave sign noted ${agoWords(night, room.night)}: ${note.system}${note.remark ? `, ${note.remark}` : ''}.`,
        'Breathing trouble, a prolapse or stalled laying belongs to a reptile vet within a day or two.',
      ],
      records: [note.id],
    };
  },
};
