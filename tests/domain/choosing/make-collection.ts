import type { Goal } from '../../../src/domain/choosing/goal.ts';
import { readGoal } from '../../../src/domain/choosing/goal.ts';
import { openHets } from '../../../src/domain/choosing/open-hets.ts';
import { rankPairs } from '../../../src/domain/choosing/rank-pairs.ts';
import type { RackEvent } from '../../../src/domain/events/event.ts';
import { genesBook } from '../../../src/domain/genes-book/genes-book.ts';
import type { Picture } from '../../../src/domain/picture/picture.ts';
import { anEvent, aPicture, nightsAgo } from '../../make.ts';
import { animalId } from '../../make-ids.ts';

/** A grown animal of which nothing is known but its sex and its genes as stated. */
export const grown = (
  n: number,
  sex: 'male' | 'female',
  traits: string,
  name = `snake ${n}`,
): RackEvent =>
  anEvent('arrived', {
    animal: animalId(n),
    name,
    sex,
    at: nightsAgo(900),
    ...(traits === '' ? {} : { traits }),
  });

export function goalIn(picture: Picture, text: string): Goal {
  const book = genesBook(picture);
  const read = readGoal(text, {
    catalogue: book.catalogue,
    animals: picture.living(),
    mayCarry: (animal) => openHets(animal, picture, book),
  });
  if (!read.ok) throw new Error(read.problem);
  return read.goal;
}

export const ranked = (events: readonly RackEvent[], goal: string, young = 6, most = 400) => {
  const picture = aPicture(events);
  return rankPairs(goalIn(picture, goal), picture, { young, most });
};
