import { daysBetween } from '../core/calendar.ts';
import { showGrams } from '../core/units.ts';
import { agoWords, daysWords } from '../core/day-words.ts';
import type { Animal } from '../state/animal.ts';
import { notGrown } from './fitness.ts';
import type { StageFacts, Standing } from './standing.ts';

/** A season nothing was written in for so long is over. */
const SILENT_DAYS = 60;
/** So many refusals in a row are a fast. */
const FAST_OFFERS = 3;

/** His mass before his season and the last one in it, in grams. */
export function lossSinceSeason(
  animal: Animal,
  { nightOf }: StageFacts,
): { readonly fromG: number; readonly toG: number } | undefined {
  const { season } = animal;
  const last = animal.weighings.at(-1);
  if (!season || season.baselineG === undefined || !last) return undefined;
  if (nightOf(last.at) < nightOf(season.openedAt)) return undefined;
  return { fromG: season.baselineG, toG: last.massG };
}

/** Where a male stands. Losing mass comes before all else: he is to rest. */
export function maleStanding(animal: Animal, facts: StageFacts): Standing {
  const { protocol, night, nightOf } = facts;
  const none = { records: [], conflicts: [] } as const;
  const grown = notGrown(animal, facts);
  const last = animal.weighings.at(-1);
  if (grown.length > 0) {
    return { stage: 'growing', because: grown, ...none, records: last ? [last.id] : [] };
  }
  const loss = lossSinceSeason(animal, facts);
  if (last && loss && loss.toG <= loss.fromG * (1 - protocol.maleLossWatchShare)) {
    const percent = Math.round((1 - loss.toG / loss.fromG) * 100);
    return {
      stage: 'losing mass',
      since: nightOf(last.at),
      because: [
        `${showGrams(loss.toG)}, ${percent} % less than the ${showGrams(loss.fromG)} before his season.`,
      ],
      records: [last.id],
      conflicts: [],
    };
  }
  const stay = animal.season?.stays.at(-1);
  const lastVisit = stay && nightOf(stay.until ?? stay.since);
  if (animal.visit) {
    const since = nightOf(animal.visit.since);
    return {
      stage: 'in rotation',
      since,
      because: [`On a visit since ${agoWords(since, night)}.`],
      ...none,
    };
  }
  const known = animal.offers.filter(({ outcome }) => outcome !== 'left');
  const refused = known.length - 1 - known.findLastIndex(({ outcome }) => outcome !== 'refused');
  const firstRefusal = known.at(-refused);
  if (refused >= FAST_OFFERS && firstRefusal) {
    return {
      stage: 'off food',
      since: nightOf(firstRefusal.at),
      because: [`Refused ${refused} times in a row.`],
      records: known.slice(-refused).map(({ id }) => id),
      conflicts: [],
    };
  }
  if (lastVisit === undefined || daysBetween(lastVisit, night) > SILENT_DAYS) {
    return { stage: 'ready', because: ['Grown, eating, and not on a visit.'], ...none };
  }
  const restedDays = daysBetween(lastVisit, night);
  const isResting = restedDays < protocol.maleRestDays;
  return {
    stage: isResting ? 'resting' : 'in rotation',
    since: lastVisit,
    because: [
      `Last visit ended ${agoWords(lastVisit, night)}.`,
      ...(isResting ? [`You give him ${daysWords(protocol.maleRestDays)} between visits.`] : []),
    ],
    ...none,
  };
}
