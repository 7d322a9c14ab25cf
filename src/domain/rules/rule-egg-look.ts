import { agoWords } from '../core/day-words.ts';
import { gravidSince } from './gravid-since.ts';
import { passedOn } from './passed.ts';
import type { Rule } from './rule.ts';

export const eggLook: Rule = {
  id: 'S7',
  says: 'Look for eggs every day from 20 days after the pre-lay shed, or 40 after ovulation.',
  source: 'eggLook',
  check(animal, room) {
    const gravid = gravidSince(animal, room);
    if (!gravid) return undefined;
    const { eggLookFromShedDays, eggLookFromOvulationDays } = room.protocol;
    const from = gravid.from === 'shed' ? eggLookFromShedDays : eggLookFromOvulationDays;
    if (gravid.days < from) return undefined;
    const noEggs = room.standing(animal)?.now?.season.noEggs;
    const looked = noEggs && room.nightOf(noEggs.at);
    if (looked === room.night || passedOn(animal, 'S7', room) === room.night) return undefined;
    const anchor = gravid.from === 'shed' ? 'Pre-lay shed' : 'Ovulation';
    return {
      act: 'look-eggs',
      asks: 'Look for eggs',
      due: room.night,
      state: 'due',
      alarm: false,
      because: [
        `${anchor} ${agoWords(gravid.since, room.night)}; you look from day ${from}.`,
        ...(looked ? [`Last look ${agoWords(looked, room.night)}: none yet.`] : []),
      ],
      records: [gravid.record, ...(noEggs ? [noEggs.id] : [])],
    };
  },
};
