import { addDays, daysBetween } from '../core/calendar.ts';
import { agoWords } from '../core/day-words.ts';
import { gravidSince } from './gravid-since.ts';
import { passedOn } from './passed.ts';
import type { Rule } from './rule.ts';

/** Passed over, say because the vet is booked, it is quiet for so long. */
const QUIET_DAYS = 3;

export const layLate: Rule = {
  id: 'S8',
  says: 'No eggs by 40 days after the pre-lay shed, or 60 after ovulation: book a reptile vet. Ten days on: urgent. Straining, a prolapse or limpness: now.',
  source: 'layLate',
  vet: true,
  check(animal, room) {
    const gravid = gravidSince(animal, room);
    if (!gravid) return undefined;
    const { protocol, night } = room;
    const [late, urgent] =
      gravid.from === 'shed'
        ? [protocol.layLateFromShedDays, protocol.layUrgentFromShedDays]
        : [protocol.layLateFromOvulationDays, protocol.layUrgentFromOvulationDays];
    if (gravid.days < late) return undefined;
    const passed = passedOn(animal, 'S8', room);
    if (passed !== undefined && daysBetween(passed, night) < QUIET_DAYS) return undefined;
    const isUrgent = gravid.days >= urgent;
    const name = animal.name || 'She';
    const anchor = gravid.from === 'shed' ? 'Pre-lay shed' : 'Ovulation';
    return {
      act: 'call',
      asks: isUrgent
        ? `${name} is far past laying: a vet, urgently`
        : `${name} is late: book a vet`,
      due: addDays(gravid.since, late),
      state: isUrgent ? 'overdue' : 'due',
      alarm: true,
      because: [
        `${anchor} ${agoWords(gravid.since, night)}, and no eggs on record.`,
        `Late from day ${late}, urgent from day ${urgent}.`,
        gravid.from === 'shed'
          ? 'First check that it was the pre-lay shed, and not an earlier one.'
          : 'First check that it was an ovulation.',
      ],
      records: [gravid.record],
    };
  },
};
