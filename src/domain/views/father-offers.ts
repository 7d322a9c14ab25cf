import type { AnimalId } from '../core/ids.ts';
import { dateWords, dayAndMonthWords, daysWords } from '../core/day-words.ts';
import type { Picture } from '../picture/picture.ts';
import {
  groundsFor,
  likelyFathers,
  possibleFathers,
  type PossibleFather,
  type Sire,
} from '../rotation/paternity.ts';

/** A male that may be the father, as he is offered to be stated, and what speaks for him. */
export interface FatherOffer {
  readonly male: AnimalId;
  readonly name: string;
  readonly grounds: Sire['grounds'];
  /** What speaks for him, and the same as a sentence with his name. */
  readonly evidence: string;
  readonly says: string;
  /** Among those the records point at. */
  readonly isLikely: boolean;
}

export function fatherOffers(
  fathers: readonly PossibleFather[],
  picture: Picture,
): readonly FatherOffer[] {
  const likely = likelyFathers(fathers);
  return fathers.map((each) => ({
    male: each.male,
    name: picture.facts.nameOf(each.male),
    grounds: groundsFor(each),
    evidence: evidenceWords(each),
    says: fatherWords(each, picture),
    isLikely: likely.includes(each),
  }));
}

/** Of the clutch that a female is to lay, or has just laid. */
export function fathersView(female: AnimalId, picture: Picture): readonly FatherOffer[] {
  const animal = picture.animal(female);
  return animal ? fatherOffers(possibleFathers(animal, picture), picture) : [];
}

/** One possible father with what speaks for him. */
export const fatherWords = (father: PossibleFather, { facts }: Picture): string =>
  `${facts.nameOf(father.male)}: ${evidenceWords(father)}.`;

function evidenceWords({
  visits,
  locks,
  last,
  daysBeforeOvulation,
  isEarlier,
}: PossibleFather): string {
  const when =
    daysBeforeOvulation === undefined ? '' : `, ${daysWords(daysBeforeOvulation)} before ovulation`;
  if (isEarlier) {
    return `the season before, stored sperm is possible, last ${dateWords(last)}${when}`;
  }
  const seen = locks === 0 ? 'no lock seen' : `${locks} ${locks === 1 ? 'lock' : 'locks'} seen`;
  return `${visits} ${visits === 1 ? 'visit' : 'visits'}, ${seen}, last ${dayAndMonthWords(last)}${when}`;
}
