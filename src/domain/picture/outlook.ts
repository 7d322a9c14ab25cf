import type { Experience } from '../season/experience.ts';
import { outlookOf, type Outlook } from '../season/forecast.ts';
import type { Standing } from '../season/standing.ts';
import type { Animal } from '../state/animal.ts';
import type { OwnInterval } from '../windows/own-interval.ts';
import type { Picture } from './picture.ts';

/** A standing is made anew whenever a record, the night or the protocol changes it. */
const workedOut = new WeakMap<
  Standing,
  { by: Experience; pips: readonly OwnInterval[]; outlook: Outlook }
>();

/**
 * What is coming in a female's season; nothing for all others. `pips` are the keeper's own clutches
 * from laying to the first pip.
 */
export function outlookOn(picture: Picture, animal: Animal, pips: readonly OwnInterval[]): Outlook {
  const standing = picture.standing(animal);
  const experience = picture.experience();
  const known = standing && workedOut.get(standing);
  if (known?.by === experience && known.pips === pips) return known.outlook;
  const { protocol, nightOf } = picture.facts;
  const intervals = { ...experience.intervals, 'lay to pip': pips };
  const outlook = outlookOf(animal, standing, {
    protocol,
    nightOf,
    experience: { ...experience, intervals },
  });
  if (standing) workedOut.set(standing, { by: experience, pips, outlook });
  return outlook;
}
