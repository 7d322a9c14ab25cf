import { addDays, daysBetween, type Day, type Moment } from '../core/calendar.ts';
import type { AnimalId, ClutchId } from '../core/ids.ts';
import type { EventOf } from '../events/event.ts';
import type { Picture } from '../picture/picture.ts';
import type { Animal } from '../state/animal.ts';
import type { Clutch } from '../state/clutch.ts';
import type { Season } from '../state/season.ts';
import { spreadOf } from '../windows/link.ts';
import { isThisSeason } from './this-season.ts';

/** What the records say of one male as a possible father of a clutch. */
export interface PossibleFather {
  readonly male: AnimalId;
  readonly visits: number;
  readonly locks: number;
  /** The last night they were together, or seen locked. */
  readonly last: Day;
  /** From the last lock, or the last night together, to the last night the ovulation may have been. */
  readonly daysBeforeOvulation: number | undefined;
  /** He was with her only in an earlier season: stored sperm. */
  readonly isEarlier: boolean;
}

export type Sire = EventOf<'paternity-stated'>['sires'][number];

/**
 * The set of males that may be the fathers of a clutch on record, or of the one to come; those seen
 * locked first. A visit without a lock counts as well: no lock seen is not no lock. Males of the season
 * before stand last, for stored sperm.
 *
 * Of a clutch whose season was over before the last one, the visits are no longer at hand: nobody.
 */
export function possibleFathers(
  female: Animal,
  picture: Picture,
  clutch?: ClutchId,
): readonly PossibleFather[] {
  const { pastSeasons, season: current } = female;
  const seasons = current ? [...pastSeasons, current] : pastSeasons;
  const at =
    clutch === undefined
      ? seasons.length - 1
      : seasons.findIndex(({ laid }) => laid?.clutch === clutch);
  const season = seasons[at];
  if (!season || (clutch === undefined && !current) || at < pastSeasons.length - 1) return [];
  const ovulation = ovulationIn(season, female, picture);
  const until = ovulation ?? lastBeforeEggs(season, picture);
  const isClosed =
    season !== current || season.laid !== undefined || season.ovulation !== undefined;
  const isNow = (moment: Moment): boolean => isClosed || isThisSeason(moment, picture);
  const [own, before] = split(season, isNow);
  const found = malesOf(own, ovulation, until, picture, false);
  const earlier = [before, ...seasons.slice(Math.max(0, at - 1), at)]
    .flatMap((each) => malesOf(each, ovulation, undefined, picture, true))
    .filter(({ male }, i, all) => all.findIndex((each) => each.male === male) === i)
    .filter(({ male }) => !found.some((each) => each.male === male));
  return [...found, ...earlier];
}

/** Those the records point at: the males of her season; those of the one before where it has none. */
export function likelyFathers(fathers: readonly PossibleFather[]): readonly PossibleFather[] {
  const own = fathers.filter(({ isEarlier }) => !isEarlier);
  return own.length > 0 ? own : fathers;
}

export const groundsFor = ({
  isEarlier,
  locks,
}: Pick<PossibleFather, 'isEarlier' | 'locks'>): Sire['grounds'] =>
  isEarlier ? 'stored sperm' : locks > 0 ? 'locked' : 'together';

/** The fathers that a clutch carries: as the keeper stated them, else as the records point at them. */
export function clutchFathers(
  { id, dam, paternity }: Clutch,
  picture: Picture,
): { readonly isStated: boolean; readonly sires: readonly Sire[] } {
  if (paternity) return { isStated: true, sires: paternity.sires };
  const female = dam && picture.animal(dam);
  const found = female ? likelyFathers(possibleFathers(female, picture, id)) : [];
  const sires = found.map((each) => ({ male: each.male, grounds: groundsFor(each) }));
  return { isStated: false, sires };
}

/** The males on record among them. */
export const malesAmong = (sires: readonly Sire[]): readonly AnimalId[] =>
  sires.flatMap(({ male }) => (male === 'unknown' || male === 'none' ? [] : [male]));

/** The same males, in whatever order. */
export const isSameSet = (a: readonly string[], b: readonly string[]): boolean =>
  new Set(a).size === new Set(b).size && a.every((male) => b.includes(male));

/** The last night it may have been, where it is known. */
function ovulationIn(season: Season, female: Animal, picture: Picture): Day | undefined {
  const now = picture.standing(female)?.now;
  if (now?.season === season && now.ovulation) return now.ovulation.last;
  return season.ovulation && picture.facts.nightOf(season.ovulation.at);
}

/** No ovulation that these eggs come from was later. Source: the least that the protocol's windows allow. */
function lastBeforeEggs({ laid }: Season, { facts }: Picture): Day | undefined {
  if (!laid) return undefined;
  const least = (['ovulation to shed', 'shed to lay'] as const).map(
    (link) => spreadOf(link, facts.protocol).neverBefore,
  );
  return addDays(facts.nightOf(laid.at), -Math.ceil(least.reduce((sum, days) => sum + days, 0)));
}

type Seen = Pick<Season, 'stays' | 'locks'>;

/** What was seen of males in this season, and in one before that nothing has closed. */
function split({ stays, locks }: Season, isNow: (at: Moment) => boolean): readonly [Seen, Seen] {
  return [
    {
      stays: stays.filter(({ since }) => isNow(since)),
      locks: locks.filter(({ at }) => isNow(at)),
    },
    {
      stays: stays.filter(({ since }) => !isNow(since)),
      locks: locks.filter(({ at }) => !isNow(at)),
    },
  ];
}

/** A visit that began after `until` fathers nothing of this clutch. */
function malesOf(
  season: Seen,
  ovulation: Day | undefined,
  until: Day | undefined,
  { facts }: Picture,
  isEarlier: boolean,
): readonly PossibleFather[] {
  const isBefore = (at: Moment): boolean => until === undefined || facts.nightOf(at) <= until;
  const stays = season.stays.filter(({ since }) => isBefore(since));
  const locks = season.locks.filter(({ at }) => isBefore(at));
  const males = [...new Set([...stays, ...locks].map(({ male }) => male))];
  return males
    .map((male): PossibleFather => {
      const his = stays.filter((stay) => stay.male === male);
      const seen = locks.filter((lock) => lock.male === male);
      const nights = (
        seen.length > 0 ? seen.map(({ at }) => at) : his.map((stay) => stay.until ?? stay.since)
      )
        .map(facts.nightOf)
        .toSorted();
      const last = nights.at(-1) ?? facts.night;
      return {
        male,
        visits: his.length,
        locks: seen.length,
        last,
        daysBeforeOvulation: ovulation && Math.max(0, daysBetween(last, ovulation)),
        isEarlier,
      };
    })
    .toSorted((a, b) => b.locks - a.locks || (a.last < b.last ? 1 : -1));
}
