import { daysBetween, type Day } from '../core/calendar.ts';
import type { Protocol } from '../protocol/values.ts';
import type { Season, SeasonShed } from '../state/season.ts';
import { largestMm } from './sizes.ts';
import type { NightOf } from './night-of.ts';

/** The shed taken to be the pre-lay shed, and what that rests on. */
export interface PreLay {
  readonly shed: SeasonShed;
  readonly night: Day;
  /** The keeper said so; false: it was taken to be one by what stood around it. */
  readonly isSaid: boolean;
}

/**
 * What speaks for a shed on a night being the pre-lay shed, in words; undefined if nothing does.
 *
 * A shed is one only by context: ovulation 10–30 days before, or large follicles at the last scan
 * where no ovulation was seen. Source: preLayShed.
 */
export function preLayContext(
  season: Season | undefined,
  night: Day,
  protocol: Protocol,
  nightOf: NightOf,
): string | undefined {
  if (!season || season.laid || season.closed) return undefined;
  if (season.ovulation) {
    const days = daysBetween(nightOf(season.ovulation.at), night);
    const { ovulationToShedFromDays: from, ovulationToShedUntilDays: until } = protocol;
    return days >= from && days <= until ? `Ovulation was ${days} days before.` : undefined;
  }
  const scan = season.scans.findLast(({ at }) => nightOf(at) <= night);
  const mm = scan && largestMm(scan, protocol);
  return mm !== undefined && mm >= protocol.preLayFromMm
    ? `Largest follicle ${mm} mm at the last scan, ${daysBetween(nightOf(scan?.at ?? season.openedAt), night)} days before.`
    : undefined;
}

/**
 * The pre-lay shed of a season. What the keeper said of a shed stands; where nobody was asked, as in
 * an old list, a shed in the right days after an ovulation is taken to be it.
 */
export function preLayShed(
  season: Season,
  protocol: Protocol,
  nightOf: NightOf,
): PreLay | undefined {
  const said = season.sheds.findLast(({ preLay }) => preLay === true);
  if (said) return { shed: said, night: nightOf(said.at), isSaid: true };
  if (!season.ovulation) return undefined;
  const asked = { ...season, laid: undefined, closed: undefined };
  const taken = season.sheds.find(
    ({ at, preLay }) =>
      preLay === undefined && preLayContext(asked, nightOf(at), protocol, nightOf) !== undefined,
  );
  return taken && { shed: taken, night: nightOf(taken.at), isSaid: false };
}
