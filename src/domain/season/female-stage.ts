import { tenth } from '../core/tenth.ts';
import { daysBetween, type Day } from '../core/calendar.ts';
import { agoWords, daysWords } from '../core/day-words.ts';
import type { Animal } from '../state/animal.ts';
import type { Scan, Season } from '../state/season.ts';
import { conflictsIn } from './conflicts.ts';
import { notGrown, notRecovered } from './fitness.ts';
import { seasonNow } from './season-now.ts';
import { largestMm } from './sizes.ts';
import type { FemaleStage, SeasonNow, StageFacts, Standing } from './standing.ts';

type Placed = Omit<Standing, 'conflicts' | 'now' | 'stage'> & { readonly stage: FemaleStage };

/** Where a female stands, from her records alone: each is the stage whose entry was seen last. */
export function femaleStanding(animal: Animal, facts: StageFacts): Standing {
  const now = seasonNow(animal, facts);
  const placed = (now && inSeason(now, animal, facts)) ?? betweenSeasons(animal, facts);
  return { ...placed, now, conflicts: now ? conflictsIn(now.season, facts) : [] };
}

function inSeason(now: SeasonNow, animal: Animal, facts: StageFacts): Placed | undefined {
  if (now.season.laid) return afterLaying(now, animal, facts);
  if (now.preLay) return shedBeforeLaying(now.preLay, now, facts);
  if (now.ovulation) return ovulated(now.ovulation, facts);
  if (now.resorbing) return resorbing(now.resorbing);
  return building(now, facts);
}

function afterLaying({ season }: SeasonNow, animal: Animal, facts: StageFacts): Placed | undefined {
  const { laid } = season;
  if (!laid) return undefined;
  const { night, nightOf } = facts;
  const since = nightOf(laid.at);
  const because = [`Eggs found ${agoWords(since, night)}.`];
  const meal = animal.offers.find(({ at, outcome }) => outcome === 'ate' && nightOf(at) > since);
  if (!meal) {
    because.push(laid.care === 'with her' ? 'She broods them.' : 'She has not eaten since.');
    return { stage: 'laid', since, because, records: [laid.id] };
  }
  const reason = notRecovered(animal, facts);
  if (reason === undefined) return undefined;
  because.push(`First meal ${agoWords(nightOf(meal.at), night)}.`, reason);
  return { stage: 'recovering', since: nightOf(meal.at), because, records: [laid.id, meal.id] };
}

function shedBeforeLaying(
  { shed, night: since, isSaid }: NonNullable<SeasonNow['preLay']>,
  { ovulation }: SeasonNow,
  { night, nightOf }: StageFacts,
): Placed {
  const because = [
    `Shed ${agoWords(nightOf(shed.at), night)}${isSaid ? ', pre-lay as you said.' : '.'}`,
  ];
  const records = [shed.id];
  if (ovulation && ovulation.id !== shed.id) {
    const apart = daysWords(daysBetween(ovulation.last, since));
    because.push(
      isSaid
        ? `Ovulation ${apart} before.`
        : `Taken to be the pre-lay shed: ovulation was ${apart} before.`,
    );
    records.push(ovulation.id);
  }
  return { stage: 'pre-lay shed', since, because, records };
}

const ovulationWords = {
  'seen at peak': 'Ovulation seen at its peak',
  'seen late': 'Ovulation seen, late',
  inferred: 'Ovulation worked out, not seen',
  'from the shed': 'Ovulation not seen: it was before the pre-lay shed',
  'from a scan': 'Egg-like lumps felt: she has ovulated',
} as const;

function ovulated(ovulation: NonNullable<SeasonNow['ovulation']>, { night }: StageFacts): Placed {
  const { how, first, last, id } = ovulation;
  const spread = daysBetween(first, last);
  const because = [`${ovulationWords[how]}, ${agoWords(last, night)}.`];
  if (spread > 0) because.push(`It may have been up to ${daysWords(spread)} earlier.`);
  return { stage: 'ovulated', since: last, because, records: [id] };
}

function resorbing({
  dropMm,
  errorMm,
  apartDays,
  readings,
  atLeast,
}: NonNullable<SeasonNow['resorbing']>): Placed {
  return {
    stage: 'resorbing',
    since: readings.at(-1)?.night,
    because: [
      `Two smaller scans, ${daysWords(apartDays)} apart: ${atLeast ? 'at least ' : ''}${tenth(dropMm)} mm less in all.`,
      `Error alone makes up to ${tenth(errorMm)} mm of it. It is a suggestion: scan again in two weeks.`,
    ],
    records: readings.map(({ id }) => id),
  };
}

/** Follicles that grow, or two kinds of signs where nobody scanned lately. */
function building({ scan, signs, season }: SeasonNow, facts: StageFacts): Placed | undefined {
  const { protocol, night, nightOf } = facts;
  if (scan?.mm !== undefined && scan.mm >= protocol.pairFromMm) {
    const { mm, isFelt } = scan;
    const what = isFelt ? `Felt like about ${mm} mm` : `Largest follicle ${mm} mm`;
    return {
      stage: 'building',
      since: growingSince(season, facts),
      because: [`${what}, ${agoWords(scan.night, night)}.`],
      records: [scan.id],
    };
  }
  if (signs.length < 2) return undefined;
  const fresh = season.signs.filter(({ sign }) => signs.includes(sign)).slice(-signs.length);
  return {
    stage: 'building',
    since: fresh[0] && nightOf(fresh[0].at),
    because: [`Signs of building: ${signs.join(', ')}.`],
    records: fresh.map(({ id }) => id),
  };
}

/** The first of the scans that found a growing follicle, without one that did not in between. */
function growingSince({ scans }: Season, { protocol, nightOf }: StageFacts): Day | undefined {
  const isSmall = (scan: Scan) => (largestMm(scan, protocol) ?? 0) < protocol.pairFromMm;
  const first = scans[scans.findLastIndex(isSmall) + 1];
  return first && nightOf(first.at);
}

function betweenSeasons(animal: Animal, facts: StageFacts): Placed {
  const grown = notGrown(animal, facts);
  const last = animal.weighings.at(-1);
  const records = last ? [last.id] : [];
  if (grown.length > 0) return { stage: 'growing', because: grown, records };
  const recovering = notRecovered(animal, facts);
  if (recovering !== undefined) return { stage: 'recovering', because: [recovering], records };
  const closed = animal.season?.closed;
  const { night, nightOf } = facts;
  return {
    stage: 'resting',
    since: closed && nightOf(closed.at),
    because: closed
      ? [`Season over, ${agoWords(nightOf(closed.at), night)}: ${closed.why}.`]
      : ['No follicles and no signs of building on record.'],
    records: closed ? [closed.id] : [],
  };
}
