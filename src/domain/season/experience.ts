import { daysBetween, type Day } from '../core/calendar.ts';
import type { AnimalId } from '../core/ids.ts';
import { measuredMm, scanErrors, type ScanErrors } from '../follicles/error.ts';
import type { Protocol } from '../protocol/values.ts';
import type { Animal } from '../state/animal.ts';
import type { Scan, Season } from '../state/season.ts';
import type { LinkName } from '../windows/link.ts';
import { ownInterval, type Dated, type OwnInterval } from '../windows/own-interval.ts';
import { preLayShed } from './pre-lay.ts';
import { largestMm } from './sizes.ts';
import { ovulationSpan, spanOf } from './span.ts';
import type { NightOf } from './night-of.ts';

/** How long before ovulation a sign was first seen, in one cycle. */
export interface SignLead {
  readonly female: AnimalId;
  readonly sign: string;
  readonly days: number;
}

/** What one snake's seasons teach. */
export interface Lesson {
  readonly intervals: readonly (readonly [LinkName, OwnInterval])[];
  readonly leads: readonly SignLead[];
  /** Cycles with an ovulation on record. */
  readonly cycles: number;
  /** Scans made twice in one night, which show how far a scan is off. */
  readonly repeats: readonly Scan[];
}

/** What the keeper's own seasons teach, of all snakes together. */
export interface Experience {
  readonly intervals: Readonly<Partial<Record<LinkName, readonly OwnInterval[]>>>;
  readonly leads: readonly SignLead[];
  readonly cycles: number;
  readonly scanErrors: ScanErrors;
}

export const noLesson: Lesson = { intervals: [], leads: [], cycles: 0, repeats: [] };

export function lessonOf(animal: Animal, protocol: Protocol, nightOf: NightOf): Lesson {
  const seasons = animal.season ? [...animal.pastSeasons, animal.season] : animal.pastSeasons;
  return {
    intervals: seasons.flatMap((season) => intervalsOf(animal.id, season, protocol, nightOf)),
    leads: seasons.flatMap((season) => leadsOf(animal.id, season, nightOf)),
    cycles: seasons.filter(({ ovulation }) => ovulation).length,
    repeats: seasons.flatMap((season) => repeatsIn(season, nightOf)),
  };
}

export function experienceOf(lessons: readonly Lesson[], protocol: Protocol): Experience {
  const intervals: Partial<Record<LinkName, OwnInterval[]>> = {};
  for (const [link, interval] of lessons.flatMap((lesson) => lesson.intervals)) {
    (intervals[link] ??= []).push(interval);
  }
  return {
    intervals,
    leads: lessons.flatMap(({ leads }) => leads),
    cycles: lessons.reduce((sum, { cycles }) => sum + cycles, 0),
    scanErrors: scanErrors(
      lessons.map(({ repeats }) => repeats),
      protocol,
    ),
  };
}

/** The first scan of at least a size, from the scan before it on. */
function reached(
  season: Season,
  mm: number,
  protocol: Protocol,
  nightOf: NightOf,
): Dated | undefined {
  const at = season.scans.findIndex((scan) => (largestMm(scan, protocol) ?? 0) >= mm);
  const scan = season.scans[at];
  const before = season.scans[at - 1];
  return scan && { first: nightOf((before ?? scan).at), last: nightOf(scan.at) };
}

/** The links of a season that both ends of are on record. What was only inferred teaches nothing. */
function intervalsOf(
  female: AnimalId,
  season: Season,
  protocol: Protocol,
  nightOf: NightOf,
): readonly (readonly [LinkName, OwnInterval])[] {
  const ovulation =
    season.ovulation && season.ovulation.sure !== 'inferred'
      ? ovulationSpan(season.ovulation, nightOf)
      : undefined;
  const preLay = preLayShed(season, protocol, nightOf);
  const shed = preLay && spanOf(preLay.shed, nightOf);
  const laid = season.laid && spanOf(season.laid, nightOf);
  const lock = season.locks.at(-1);
  const links: readonly (readonly [LinkName, Dated | undefined, Dated | undefined])[] = [
    [
      'large follicle to ovulation',
      reached(season, protocol.largeFromMm, protocol, nightOf),
      ovulation,
    ],
    [
      'ripe follicle to ovulation',
      reached(season, protocol.dailyLooksFromMm, protocol, nightOf),
      ovulation,
    ],
    ['last lock to ovulation', lock && spanOf(lock, nightOf), ovulation],
    ['ovulation to shed', ovulation, shed],
    ['shed to lay', shed, laid],
  ];
  return links.flatMap(([link, start, end]) => {
    const interval = start && end && ownInterval(female, start, end);
    return interval ? [[link, interval] as const] : [];
  });
}

function leadsOf(female: AnimalId, season: Season, nightOf: NightOf): readonly SignLead[] {
  const { ovulation } = season;
  if (!ovulation) return [];
  const night = nightOf(ovulation.at);
  const first = new Map<string, Day>();
  for (const { sign, at } of season.signs) if (!first.has(sign)) first.set(sign, nightOf(at));
  return [...first]
    .map(([sign, seen]) => ({ female, sign, days: daysBetween(seen, night) }))
    .filter(({ days }) => days >= 0);
}

function repeatsIn(season: Season, nightOf: NightOf): readonly Scan[] {
  const measured = season.scans.filter(({ found }) => measuredMm(found) !== undefined);
  const nights = measured.map(({ at }) => nightOf(at));
  return measured.filter(
    (_, i) =>
      nights[i] === nights[i - 1] || (nights[i] !== undefined && nights[i] === nights[i + 1]),
  );
}
