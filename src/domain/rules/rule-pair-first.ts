import { daysBetween } from '../core/calendar.ts';
import { agoWords } from '../core/day-words.ts';
import { againstPairing, pairingWait } from './pairing-block.ts';
import { passedOn } from './passed.ts';
import type { Rule } from './rule.ts';

export const pairFirst: Rule = {
  id: 'S2',
  says: 'The first male of the season goes in once her largest follicle has reached your size.',
  source: 'pairFrom',
  check(animal, room) {
    if (room.planned(animal)) return undefined; // P2 says which male, and when.
    const standing = room.standing(animal);
    if (standing?.stage !== 'building' || !standing.now) return undefined;
    const { scan, season } = standing.now;
    if (scan?.mm === undefined || season.stays.length > 0) return undefined;
    const { pairFromMm, pairStopMm } = room.protocol;
    if (scan.mm < pairFromMm || scan.mm >= pairStopMm) return undefined;
    const passed = passedOn(animal, 'S2', room);
    if (passed !== undefined && daysBetween(passed, room.night) < room.protocol.pairAgainDays) {
      return undefined;
    }
    const [against] = againstPairing(animal, room);
    return {
      act: 'pair',
      asks: 'Put the first male in',
      due: scan.night,
      state: 'due',
      alarm: false,
      blocked: against ?? pairingWait(animal, room),
      because: [
        `Largest follicle ${scan.mm} mm, ${agoWords(scan.night, room.night)}.`,
        `You pair from ${pairFromMm} mm.`,
        'No visit on record this season.',
      ],
      records: [scan.id],
    };
  },
};
