import { agoWords } from '../core/day-words.ts';
import { gravidSince } from './gravid-since.ts';
import { passedOn } from './passed.ts';
import type { Rule } from './rule.ts';

export const nestBox: Rule = {
  id: 'S6',
  says: 'The nest box goes in after the pre-lay shed, then she is left in peace.',
  source: 'nestBox',
  check(animal, room) {
    const gravid = gravidSince(animal, room);
    if (!gravid || room.standing(animal)?.now?.season.nestBox?.is === 'in') return undefined;
    if (gravid.from === 'ovulation' && gravid.days < room.protocol.nestBoxFromOvulationDays) {
      return undefined;
    }
    const passed = passedOn(animal, 'S6', room);
    if (passed !== undefined && passed >= gravid.since) return undefined;
    const ago = agoWords(gravid.since, room.night);
    return {
      act: 'nest-box',
      asks: 'Put the nest box in',
      due: room.night,
      state: 'due',
      alarm: false,
      because: [
        gravid.from === 'shed'
          ? `Pre-lay shed ${ago}.`
          : `Ovulation ${ago}, and no pre-lay shed on record.`,
      ],
      records: [gravid.record],
    };
  },
};
