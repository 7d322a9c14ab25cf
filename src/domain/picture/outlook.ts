import type { Experience } from '../season/experience.ts';
import { outlookOf, type Outlook } from '../season/forecast.ts';
import type { Standing } from '../season/standing.ts';
import type { Animal } from '../state/animal.ts';
import type { Picture } from './picture.ts';

/** A standing is made anew whenever a record, the night or the protocol changes it. */
const workedOut = new WeakMap<Standing, { by: Experience; outlook: Outlook }>();

/** What is coming in a female's season; nothing for all others. */
export function outlookOn(picture: Picture, animal: Animal): Outlook {
  const standing = picture.standing(animal);
  const experience = picture.experience();
  const known = standing && workedOut.get(standing);
  if (known?.by === experience) return known.outlook;
  const { protocol, nightOf } = picture.facts;
  const outlook = outlookOf(animal, standing, { protocol, nightOf, experience });
  if (standing) workedOut.set(standing, { by: experience, outlook });
  return outlook;
}
