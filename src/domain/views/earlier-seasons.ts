import { daysBetween, type Day } from '../core/calendar.ts';
import { dayWords } from '../calendar-file/span-words.ts';
import { daysWords } from '../core/day-words.ts';
import { preLayShed } from '../season/pre-lay.ts';
import { seasonYears } from '../season/season-years.ts';
import { largestMm } from '../season/sizes.ts';
import type { StageFacts } from '../season/standing.ts';
import type { Laid, Season } from '../state/season.ts';

/** A season that is over, in one line. */
export interface EarlierSeason {
  /** The night of its first record. */
  readonly opened: Day;
  /** "2025/26": the years it ran through. */
  readonly years: string;
  readonly says: string;
}

/** Ovulation, pre-lay shed and eggs, with the days from one to the next; else what else is known. */
export function earlierSeason(
  season: Season,
  facts: Pick<StageFacts, 'protocol' | 'nightOf'>,
): EarlierSeason {
  const { protocol, nightOf } = facts;
  const steps: (readonly [string, Day])[] = [];
  if (season.ovulation) {
    const worked = season.ovulation.sure === 'inferred' ? ', worked out' : '';
    steps.push([`ovulation${worked}`, nightOf(season.ovulation.at)]);
  }
  const preLay = preLayShed(season, protocol, nightOf);
  if (preLay) steps.push(['pre-lay shed', preLay.night]);
  if (season.laid) steps.push(['eggs', nightOf(season.laid.at)]);

  const told = steps.map(([what, night], i) => {
    const before = steps[i - 1]?.[1];
    const later = before === undefined ? '' : `, ${daysWords(daysBetween(before, night))} on`;
    return `${what} ${dayWords(night)}${later}`;
  });
  if (season.laid) told.push(eggsWords(season.laid));
  if (season.closed)
    told.push(`ended ${dayWords(nightOf(season.closed.at))}, ${season.closed.why}`);
  if (steps.length === 0) told.push(...scansWords(season, facts));
  const opened = nightOf(season.openedAt);
  const says = told.filter((each) => each !== '').join('; ');
  const named = steps.at(-1)?.[1] ?? opened;
  return { opened, years: seasonYears(named), says: sentence(says) };
}

const sentence = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;

function eggsWords({ good, slugs, unsure }: Laid): string {
  const counts: readonly (readonly [number | undefined, string])[] = [
    [good, 'good'],
    [slugs, slugs === 1 ? 'slug' : 'slugs'],
    [unsure, 'unsure'],
  ];
  return counts
    .flatMap(([n, word]) => (n === undefined || n === 0 ? [] : [`${n} ${word}`]))
    .join(', ');
}

function scansWords(season: Season, { protocol }: Pick<StageFacts, 'protocol'>): readonly string[] {
  const sizes = season.scans.flatMap((scan) => largestMm(scan, protocol) ?? []);
  if (sizes.length === 0) return ['no ovulation and no eggs on record'];
  const scans = season.scans.length === 1 ? '1 scan' : `${season.scans.length} scans`;
  return [`no ovulation on record; ${scans}, largest follicle ${Math.max(...sizes)} mm`];
}
