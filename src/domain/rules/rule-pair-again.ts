import { addDays, daysBetween } from '../core/calendar.ts';
import { agoWords, daysWords } from '../core/day-words.ts';
import { againstPairing, pairingWait } from './pairing-block.ts';
import { passedOver } from './passed.ts';
import type { Rule } from './rule.ts';

export const pairAgain: Rule = {
  id: 'S3',
  says: 'While she builds, a male visits again after your days of pause.',
  source: 'pairAgain',
  check(animal, room) {
    if (room.planned(animal)) return undefined; // P2 says which male, and when.
    const standing = room.standing(animal);
    if (standing?.stage !== 'building' || !standing.now) return undefined;
    const { scan, season } = standing.now;
    const stay = season.stays.at(-1);
    if (!stay || room.visitorOf(animal) !== undefined) return undefined;
    const { pairAgainDays, pairStopMm } = room.protocol;
    if (scan?.mm !== undefined && scan.mm >= pairStopMm) return undefined;
    const ended = room.nightOf(stay.until ?? stay.since);
    const passed = passedOver(animal, 'S3', room);
    const isPassed = passed !== undefined && passed.night > ended;
    const from = isPassed ? passed.night : ended;
    const due = addDays(from, pairAgainDays);
    if (due > room.night) return undefined;
    const [against] = againstPairing(animal, room);
    return {
      act: 'pair',
      asks: 'Put a male in again',
      due,
      state: daysBetween(due, room.night) >= pairAgainDays ? 'overdue' : 'due',
      alarm: false,
      blocked: against ?? pairingWait(animal, room),
      because: [
        `Last visit, ${room.nameOf(stay.male)}, ended ${agoWords(ended, room.night)}.`,
        ...(isPassed ? [`Passed over ${agoWords(passed.night, room.night)}.`] : []),
        `You pair again after ${daysWords(pairAgainDays)}.`,
      ],
      records: [stay.outId ?? stay.id, ...(isPassed ? [passed.id] : [])],
    };
  },
};
