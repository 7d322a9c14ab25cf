import { addDays, type Day } from '../core/calendar.ts';
import { follicleTrend, type Trend } from '../follicles/trend.ts';
import { readingsOf, type Reading } from '../follicles/reading.ts';
import type { Protocol } from '../protocol/values.ts';
import type { Animal } from '../state/animal.ts';
import { lagChances } from '../windows/belief.ts';
import {
  between,
  convolve,
  notBefore,
  window,
  type DayChances,
  type Window,
} from '../windows/day-chances.ts';
import type { LinkName } from '../windows/link.ts';
import type { Experience } from './experience.ts';
import { largestMm } from './sizes.ts';
import { spanOf } from './span.ts';
import type { NightOf } from './night-of.ts';
import type { SeasonNow, Standing } from './standing.ts';

export type NextEvent = 'ovulation' | 'pre-lay shed' | 'eggs' | 'first pip';

/** When a coming event is likely, and what that hangs on. */
export interface Forecast extends Window {
  readonly event: NextEvent;
  /** What it is counted from, in words: "pre-lay shed". */
  readonly anchor: string;
  /** The nights that may have been, both included. */
  readonly anchorFirst: Day;
  readonly anchorLast: Day;
  /** Own cycles behind its last link, and how many of them were hers. */
  readonly ownCycles: number;
  readonly herCycles: number;
  /** Share of the time since laying for which the warmth of the eggs was read. */
  readonly readShare?: number;
  /** The last look that found nothing yet, where it cut the window short. */
  readonly notBefore?: Day | undefined;
  /** The looks and dates leave no day: one of them must be wrong. */
  readonly isPast?: boolean;
}

/** What a female's season so far says of the rest of it. */
export interface Outlook {
  readonly readings: readonly Reading[];
  readonly trend?: Trend | undefined;
  readonly forecasts: readonly Forecast[];
}

interface Known {
  readonly protocol: Protocol;
  readonly nightOf: NightOf;
  readonly experience: Experience;
}

interface Anchor {
  readonly words: string;
  readonly first: Day;
  readonly last: Day;
  /** Of the event that the next link starts from: the anchor itself, or what was forecast from it. */
  readonly chances: DayChances;
}

const anchorOn = (words: string, chances: DayChances): Anchor => ({
  words,
  first: chances.from,
  last: addDays(chances.from, chances.chances.length - 1),
  chances,
});

/** Forecasts for all that has not happened yet in a female's season, the nearest first. */
export function outlookOf(animal: Animal, standing: Standing | undefined, known: Known): Outlook {
  const now = standing?.now;
  if (!now || standing?.stage === 'resorbing') return { readings: [], forecasts: [] };
  const { protocol, nightOf, experience } = known;
  const scans = now.season.scans.filter(
    ({ at }) => !now.ovulation || nightOf(at) <= now.ovulation.last,
  );
  const readings = readingsOf(scans, experience.scanErrors, protocol);
  const trend = follicleTrend(readings, protocol);
  return { readings, trend, forecasts: forecastsOf(animal, now, trend, known) };
}

function forecastsOf(
  animal: Animal,
  now: SeasonNow,
  trend: Trend | undefined,
  known: Known,
): readonly Forecast[] {
  const { season, preLay, ovulation } = now;
  const { nightOf } = known;
  const lag = (link: LinkName) =>
    lagChances(link, known.protocol, known.experience.intervals[link] ?? none, animal.id);
  const forecasts: Forecast[] = [];
  const ahead = (event: NextEvent, anchor: Anchor, link: LinkName, looked?: Day): Anchor => {
    const { chances, ownCycles, herCycles } = lag(link);
    const free = convolve(anchor.chances, chances);
    const cut = looked === undefined ? free : notBefore(looked, free);
    forecasts.push({
      event,
      ...window(cut ?? free),
      anchor: anchor.words,
      anchorFirst: anchor.first,
      anchorLast: anchor.last,
      ownCycles,
      herCycles,
      notBefore: cut === free ? undefined : looked,
      ...(cut ? {} : { isPast: true }),
    });
    return { ...anchor, chances: cut ?? free };
  };

  if (season.laid) {
    if (season.laid.care === 'with her') return [];
    const { first, last } = spanOf(season.laid, nightOf);
    ahead('first pip', anchorOn('eggs found', between(first, last)), 'lay to pip');
    return forecasts;
  }
  const noEggs = season.noEggs && nightOf(season.noEggs.at);
  if (preLay) {
    const { first, last } = spanOf(preLay.shed, nightOf);
    const shed = anchorOn('the pre-lay shed', between(first, last));
    ahead('first pip', ahead('eggs', shed, 'shed to lay', noEggs), 'lay to pip');
    return forecasts;
  }
  let from: Anchor | undefined;
  if (ovulation) {
    from = anchorOn('ovulation', between(ovulation.first, ovulation.last));
  } else {
    const start = growthAnchor(now, trend, known);
    from = start && ahead('ovulation', start.anchor, start.link, lastWithout(now, known));
  }
  if (!from) return [];
  const eggs = ahead(
    'eggs',
    ahead('pre-lay shed', from, 'ovulation to shed'),
    'shed to lay',
    noEggs,
  );
  ahead('first pip', eggs, 'lay to pip');
  return forecasts;
}

/** The last night that found no ovulation: by a look, or by a scan that still showed follicles. */
function lastWithout({ season, scan }: SeasonNow, { nightOf }: Known): Day | undefined {
  const looked = season.noOvulation && nightOf(season.noOvulation.at);
  const scanned = scan?.mm === undefined ? undefined : scan.night;
  return looked !== undefined && (scanned === undefined || looked > scanned) ? looked : scanned;
}

const none: readonly never[] = [];

/**
 * What an ovulation nobody has seen yet is counted from: the scan that first found a ripe follicle, a
 * large one, or the window in which the trend reaches a large one. One small scan is not a trend.
 */
function growthAnchor(
  { season, scan }: SeasonNow,
  trend: Trend | undefined,
  { protocol, nightOf }: Known,
): { readonly anchor: Anchor; readonly link: LinkName } | undefined {
  for (const [mm, link] of [
    [protocol.dailyLooksFromMm, 'ripe follicle to ovulation'],
    [protocol.largeFromMm, 'large follicle to ovulation'],
  ] as const) {
    const at = season.scans.findIndex((each) => (largestMm(each, protocol) ?? 0) >= mm);
    const found = season.scans[at];
    if (found) {
      const before = season.scans[at - 1] ?? found;
      const chances = between(nightOf(before.at), nightOf(found.at));
      return { link, anchor: anchorOn(`a follicle of ${mm} mm`, chances) };
    }
  }
  const reached = scan && trend?.reaches(protocol.largeFromMm, scan.night);
  if (!reached) return undefined;
  const { from, to } = window(reached);
  const words = `reaching ${protocol.largeFromMm} mm, by her growth`;
  return {
    link: 'large follicle to ovulation',
    anchor: { words, first: from, last: to, chances: reached },
  };
}
