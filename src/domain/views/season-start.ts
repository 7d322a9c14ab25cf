import { addDays, type Day, type Moment } from '../core/calendar.ts';
import type { Picture } from '../picture/picture.ts';
import { preLayContext, preLayShed } from '../season/pre-lay.ts';
import type { Animal } from '../state/animal.ts';
import { NIGHTS_BACK } from './nights-back.ts';
import { stageInWords, type StageInWords } from './stage-in-words.ts';

/** What the forms of a season start from. */
export interface SeasonStart {
  readonly stage: StageInWords;
  /** Where a shed on that night would likely be the pre-lay shed: what speaks for it. */
  readonly preLay: Readonly<Partial<Record<Day, string>>>;
  /** The last looks that found nothing yet. */
  readonly noOvulation?: Moment | undefined;
  readonly noEggs?: Moment | undefined;
  readonly nestBoxIsIn: boolean;
  /** A season is under way: it can be closed. */
  readonly isOpen: boolean;
}

/** Undefined where a snake's sex is not known, or it has left. */
export function seasonStart(animal: Animal, { facts }: Picture): SeasonStart | undefined {
  const standing = facts.standing(animal);
  if (!standing) return undefined;
  const season = standing.now?.season;
  return {
    stage: stageInWords(standing, facts.night, animal.sex === 'male'),
    preLay: animal.sex === 'female' ? preLayNights(animal, facts) : {},
    noOvulation: season?.noOvulation?.at,
    noEggs: season?.noEggs?.at,
    nestBoxIsIn: season?.nestBox?.is === 'in',
    isOpen: season !== undefined,
  };
}

function preLayNights({ season }: Animal, facts: Picture['facts']): SeasonStart['preLay'] {
  const { protocol, nightOf, night } = facts;
  // There is one in a season, whoever said so.
  if (!season || preLayShed(season, protocol, nightOf)) return {};
  const nights = Array.from({ length: NIGHTS_BACK + 1 }, (_, back) => addDays(night, -back));
  return Object.fromEntries(
    nights.flatMap((each) => {
      const words = preLayContext(season, each, protocol, nightOf);
      return words === undefined ? [] : [[each, words]];
    }),
  );
}
