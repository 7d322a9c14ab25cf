import { tenth } from '../core/tenth.ts';
import { daysBetween } from '../core/calendar.ts';
import type { Draft } from '../events/event.ts';
import { measuredMm } from '../follicles/error.ts';
import type { Picture } from '../picture/picture.ts';
import { agoWords, daysWords } from '../core/day-words.ts';
import { preLayContext } from '../season/pre-lay.ts';
import { ovulationSpan } from '../season/span.ts';
import type { Animal } from '../state/animal.ts';
import { spreadOf } from '../windows/link.ts';
import { noObjection, type Doubt, type Verdict } from './doubt.ts';
import { scanSlips } from './scan-slips.ts';

type Scanned = Extract<Draft, { type: 'follicles-scanned' }>;
type Shed = Extract<Draft, { type: 'shed' }>;

const SHED_SPACING_DAYS = { hard: 5, soft: 14 };

/** Objections to a shed. Sources: shedSpacing, preLayShed. */
export function assessShed(draft: Shed, animal: Animal, picture: Picture): Verdict {
  const doubts = [tooSoon(draft, animal, picture), notPreLay(draft, animal, picture)].filter(
    (doubt) => doubt !== undefined,
  );
  return doubts.length === 0 ? noObjection : { refusals: [], doubts, notes: [] };
}

function tooSoon({ replaces }: Shed, { sheds }: Animal, { facts }: Picture): Doubt | undefined {
  // One that stands in for an earlier record is that same shed.
  const last = sheds.findLast(({ id }) => id !== replaces?.id);
  if (!last) return undefined;
  const night = facts.nightOf(last.at);
  const apart = daysBetween(night, facts.night);
  if (apart < 0 || apart >= SHED_SPACING_DAYS.soft) return undefined;
  const message = `It shed ${agoWords(night, facts.night)} already.`;
  return apart < SHED_SPACING_DAYS.hard
    ? { code: 'shed-twice', message: `${message} The same shed?` }
    : { code: 'shed-soon', message: `${message} Another one?` };
}

const preLayDoubt = (words: string): Doubt => ({
  code: 'not-pre-lay',
  message: `${words} Pre-lay all the same?`,
});

/** What speaks against a shed that is said to be the pre-lay shed. */
function notPreLay({ preLay }: Shed, animal: Animal, { facts }: Picture): Doubt | undefined {
  if (preLay !== true) return undefined;
  const { season } = animal;
  const { protocol, nightOf, night } = facts;
  const span = season?.ovulation && ovulationSpan(season.ovulation, nightOf);
  if (span) {
    const { neverBefore, neverAfter } = spreadOf('ovulation to shed', protocol);
    const [least, most] = [daysBetween(span.last, night), daysBetween(span.first, night)];
    if (most >= neverBefore && least <= neverAfter) return undefined;
    const apart = least < 0 ? 'Ovulation was after it' : `Ovulation was ${daysWords(least)} before`;
    return preLayDoubt(`${apart}: the pre-lay shed comes ${neverBefore}–${neverAfter} days after.`);
  }
  return preLayContext(season, night, protocol, nightOf) === undefined
    ? preLayDoubt('No ovulation on record, and no large follicles at the last scan.')
    : undefined;
}

/** A meal lies where follicles are felt. Source: feltSizes. */
const MEAL_FELT_DAYS = 5;

/** Objections to a follicle scan. Source: scanSizes. */
export function assessScan({ found }: Scanned, animal: Animal, { facts }: Picture): Verdict {
  if (animal.sex === 'male') {
    return {
      refusals: [{ code: 'male-scanned', message: `${animal.name} is on record as a male.` }],
      doubts: [],
      notes: [],
    };
  }
  const daysSince = (at: Parameters<typeof facts.nightOf>[0]) =>
    daysBetween(facts.nightOf(at), facts.night);
  if (found.method === 'palpation') {
    const meal = animal.offers.findLast(({ outcome }) => outcome === 'ate');
    const fed = meal && daysSince(meal.at);
    if (
      !meal ||
      fed === undefined ||
      fed < 0 ||
      fed >= MEAL_FELT_DAYS ||
      found.felt === 'nothing'
    ) {
      return noObjection;
    }
    const ago = agoWords(facts.nightOf(meal.at), facts.night);
    return { ...noObjection, notes: [`She ate ${ago}: a meal can feel like lumps.`] };
  }
  if (!found.largestMm) return noObjection;
  const scans = animal.season?.scans ?? [];
  const last = scans.findLast(
    (scan) => measuredMm(scan.found) !== undefined && daysSince(scan.at) >= 0,
  );
  return {
    ...noObjection,
    ...scanSlips({
      axesMm: found.largestMm,
      last: last && {
        mm: tenth(measuredMm(last.found) ?? 0),
        daysAgo: daysSince(last.at),
      },
      error: facts.scanErrors().ultrasound,
    }),
  };
}
