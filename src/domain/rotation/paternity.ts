import { daysBetween, type Day, type Moment } from '../core/calendar.ts';
import type { AnimalId } from '../core/ids.ts';
import type { Picture } from '../picture/picture.ts';
import type { Animal } from '../state/animal.ts';
import type { Season } from '../state/season.ts';
import { isThisSeason } from './this-season.ts';

/** What the records say of one male as a possible father of her coming or last clutch. */
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

/** A visit that began after the ovulation fathers nothing of this clutch. */
const isBefore = (night: Day, ovulation: Day | undefined): boolean =>
  ovulation === undefined || night <= ovulation;

/**
 * The set of males that may be the fathers, those seen locked first. A visit without a lock counts as
 * well: no lock seen is not no lock. Males of the season before stand last, for stored sperm.
 */
export function possibleFathers(female: Animal, picture: Picture): readonly PossibleFather[] {
  const { season } = female;
  if (!season) return [];
  const now = picture.standing(female)?.now;
  const ovulation = now?.season === season ? now.ovulation?.last : undefined;
  const from = season.laid?.at ?? season.ovulation?.at;
  const isNow = (at: Moment): boolean => from !== undefined || isThisSeason(at, picture);
  const [current, before] = split(season, isNow);
  const found = malesOf(current, ovulation, picture, false);
  const earlier = [before, ...female.pastSeasons.slice(-1)]
    .flatMap((each) => malesOf(each, undefined, picture, true))
    .filter(({ male }, i, all) => all.findIndex((each) => each.male === male) === i)
    .filter(({ male }) => !found.some((each) => each.male === male))
    .map((each) => ({
      ...each,
      daysBeforeOvulation: ovulation && daysBetween(each.last, ovulation),
    }));
  return [...found, ...earlier];
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

function malesOf(
  season: Seen,
  ovulation: Day | undefined,
  { facts }: Picture,
  isEarlier: boolean,
): readonly PossibleFather[] {
  const stays = season.stays.filter(({ since }) => isBefore(facts.nightOf(since), ovulation));
  const locks = season.locks.filter(({ at }) => isBefore(facts.nightOf(at), ovulation));
  const males = [...new Set([...stays, ...locks].map(({ male }) => male))];
  return males
    .map((male): PossibleFather => {
      const his = stays.filter((stay) => stay.male === male);
      const seen = locks.filter((lock) => lock.male === male);
      const nights = (
        seen.length > 0 ? seen.map(({ at }) => at) : his.map(({ until, since }) => until ?? since)
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
