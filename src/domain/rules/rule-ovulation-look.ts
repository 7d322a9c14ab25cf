import { daysBetween } from '../core/calendar.ts';
import type { EventId } from '../core/ids.ts';
import type { SeasonNow } from '../season/standing.ts';
import type { Animal } from '../state/animal.ts';
import { agoWords } from '../core/day-words.ts';
import { passedOn } from './passed.ts';
import type { RoomFacts, Rule } from './rule.ts';

interface Signal {
  readonly words: string;
  readonly records: readonly EventId[];
}

/** What says that ovulation may come any day. */
function signals(animal: Animal, { scan, season }: SeasonNow, room: RoomFacts): readonly Signal[] {
  const { dailyLooksFromMm, preLayFromMm } = room.protocol;
  const found: Signal[] = [];
  if (scan?.mm !== undefined && scan.mm >= dailyLooksFromMm) {
    const words = `Largest follicle ${scan.mm} mm, ${agoWords(scan.night, room.night)}.`;
    found.push({ words, records: [scan.id] });
  }
  const swelling = season.signs.findLast(({ sign }) => sign === 'swelling');
  const seen = swelling && room.nightOf(swelling.at);
  if (seen && daysBetween(seen, room.night) <= room.protocol.signsFreshDays) {
    found.push({ words: `Swelling seen ${agoWords(seen, room.night)}.`, records: [swelling.id] });
  }
  const last = animal.offers.at(-1);
  const isLarge = scan?.mm !== undefined && scan.mm >= preLayFromMm;
  if (last?.outcome === 'refused' && isLarge && room.nightOf(last.at) >= scan.night) {
    const words = `Refused her meal with ${scan.mm} mm follicles: a good sign.`;
    found.push({ words, records: [last.id, scan.id] });
  }
  return found;
}

export const ovulationLook: Rule = {
  id: 'S4',
  says: 'Look every day when ovulation is near: it shows for a day or two, and all later dates hang on it.',
  source: 'ovulationLook',
  check(animal, room) {
    const standing = room.standing(animal);
    const now = standing?.now;
    if (standing?.stage !== 'building' || !now) return undefined;
    const found = signals(animal, now, room);
    if (found.length === 0) return undefined;
    const { noOvulation } = now.season;
    const looked = noOvulation && room.nightOf(noOvulation.at);
    if (looked === room.night || passedOn(animal, 'S4', room) === room.night) return undefined;
    return {
      act: 'look-ovulation',
      asks: 'Look: has she ovulated?',
      due: room.night,
      state: 'due',
      alarm: false,
      because: [
        ...found.map(({ words }) => words),
        ...(looked ? [`Last look ${agoWords(looked, room.night)}: not yet.`] : []),
      ],
      records: [
        ...found.flatMap(({ records }) => records),
        ...(noOvulation ? [noOvulation.id] : []),
      ],
    };
  },
};
