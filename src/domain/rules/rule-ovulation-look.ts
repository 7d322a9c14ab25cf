import type { SeasonNow } from '../season/standing.ts';
import type { Animal } from '../state/animal.ts';
import { agoWords } from './dates.ts';
import { passedOn } from './passed.ts';
import type { RoomFacts, Rule } from './rule.ts';

/** What says that ovulation may come any day, a sentence each. */
function signals(animal: Animal, { scan, signs }: SeasonNow, room: RoomFacts): readonly string[] {
  const { dailyLooksFromMm, preLayFromMm } = room.protocol;
  const reasons: string[] = [];
  if (scan?.mm !== undefined && scan.mm >= dailyLooksFromMm) {
    reasons.push(`Largest follicle ${scan.mm} mm, ${agoWords(scan.night, room.night)}.`);
  }
  if (signs.includes('swelling')) reasons.push('Swelling seen.');
  const last = animal.offers.at(-1);
  const isLarge = scan?.mm !== undefined && scan.mm >= preLayFromMm;
  if (last?.outcome === 'refused' && isLarge && room.nightOf(last.at) >= scan.night) {
    reasons.push(`Refused her meal with ${scan.mm} mm follicles: a good sign.`);
  }
  return reasons;
}

export const ovulationLook: Rule = {
  id: 'S4',
  says: 'Look every day when ovulation is near: it shows for a day or two, and all later dates hang on it.',
  source: 'ovulationLook',
  check(animal, room) {
    const standing = room.standing(animal);
    const now = standing?.now;
    if (standing?.stage !== 'building' || !now) return undefined;
    const because = signals(animal, now, room);
    if (because.length === 0) return undefined;
    const { noOvulation } = now.season;
    const looked = noOvulation && room.nightOf(noOvulation.at);
    if (looked === room.night || passedOn(animal, 'S4', room) === room.night) return undefined;
    return {
      act: 'look-ovulation',
      asks: 'Look: has she ovulated?',
      due: room.night,
      state: 'due',
      alarm: false,
      because: looked
        ? [...because, `Last look ${agoWords(looked, room.night)}: not yet.`]
        : because,
      records: now.scan ? [now.scan.id] : [],
    };
  },
};
