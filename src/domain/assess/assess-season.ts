import { daysBetween, type Moment } from '../core/calendar.ts';
import type { Draft, EventOf } from '../events/event.ts';
import type { Picture } from '../picture/picture.ts';
import { agoWords } from '../core/day-words.ts';
import { conflictsIn } from '../season/conflicts.ts';
import { preLayShed } from '../season/pre-lay.ts';
import type { Animal } from '../state/animal.ts';
import { applyToAnimal } from '../state/apply-to-animal.ts';
import type { Season } from '../state/season.ts';
import { noObjection, type Doubt, type Verdict } from './doubt.ts';

type SeasonDraft = Extract<Draft, { type: 'ovulated' | 'laid' }>;

/** A second ovulation so soon is more likely the first one again. Source: ovulationLook. */
const OVULATION_AGAIN_DAYS = 120;
/** Eggs found so soon after others are the rest of one clutch. */
const SAME_CLUTCH_DAYS = 3;

/** Objections to an ovulation or to eggs, from what the season says so far. Source: windowLimits. */
export function assessSeason(
  draft: SeasonDraft,
  animal: Animal,
  picture: Picture,
  now: Moment,
): Verdict {
  if (animal.sex === 'male') {
    const message = `${animal.name} is on record as a male.`;
    return { refusals: [{ code: 'male-eggs', message }], doubts: [], notes: [] };
  }
  const doubts = [
    draft.type === 'ovulated' ? ovulatedAgain(animal, picture) : laidAgain(animal, picture),
    draft.type === 'laid' ? fromNowhere(animal, picture) : undefined,
    contradiction(draft, animal, picture, now),
  ].filter((doubt) => doubt !== undefined);
  return doubts.length === 0 ? noObjection : { refusals: [], doubts, notes: [] };
}

function ovulatedAgain({ season, name }: Animal, { facts }: Picture): Doubt | undefined {
  const last = season?.ovulation && facts.nightOf(season.ovulation.at);
  if (!last || Math.abs(daysBetween(last, facts.night)) >= OVULATION_AGAIN_DAYS) return undefined;
  return {
    code: 'ovulated-again',
    message: `${name} ovulated ${agoWords(last, facts.night)} by your records. Another one?`,
  };
}

function laidAgain({ season, name }: Animal, { facts }: Picture): Doubt | undefined {
  const last = season?.laid && facts.nightOf(season.laid.at);
  if (!last) return undefined;
  const ago = agoWords(last, facts.night);
  return daysBetween(last, facts.night) <= SAME_CLUTCH_DAYS
    ? {
        code: 'same-clutch',
        message: `${name} laid ${ago}. More of the same clutch? Then strike that record and write all of it at once.`,
      }
    : { code: 'laid-again', message: `${name} laid ${ago} by your records. Another clutch?` };
}

function fromNowhere({ season, name }: Animal, { facts }: Picture): Doubt | undefined {
  const isGravid =
    season && (season.ovulation ?? preLayShed(season, facts.protocol, facts.nightOf)) !== undefined;
  return isGravid
    ? undefined
    : {
        code: 'not-gravid',
        message: `No ovulation and no pre-lay shed of ${name} on record. Is it the right female?`,
      };
}

/** What would contradict the rest of the season if it were written down. */
function contradiction(
  draft: SeasonDraft,
  animal: Animal,
  { facts }: Picture,
  now: Moment,
): Doubt | undefined {
  const written = { at: now, precision: 'minute', id: '', ...draft } as EventOf<
    'ovulated' | 'laid'
  >;
  const { season } = applyToAnimal(animal, [written], animal.id);
  const before = questionsOf(animal.season);
  const message = questionsOf(season).find((question) => !before.includes(question));
  return message === undefined ? undefined : { code: 'contradicts', message };

  function questionsOf(each: Season | undefined): readonly string[] {
    return each ? conflictsIn(each, facts) : [];
  }
}
