import { daysBetween, type Day } from '../core/calendar.ts';
import { showGrams } from '../core/units.ts';
import type { AnimalId } from '../core/ids.ts';
import type { Picture } from '../picture/picture.ts';
import {
  femalesHad,
  lossShare,
  maleStopped,
  mostFemales,
  restNights,
} from '../rotation/male-limits.ts';
import { locksNow, staysNow } from '../rotation/this-season.ts';
import { agoWords, daysWords } from '../core/day-words.ts';
import type { Animal } from '../state/animal.ts';

/** One male in the season, a sentence each. */
export interface MalePage {
  readonly id: AnimalId;
  readonly name: string;
  readonly position: string | undefined;
  readonly mass: string;
  readonly visits: string;
  readonly rest: string;
  readonly appetite: string;
  /** Why to stop him now, or from when to. */
  readonly stop: string;
  readonly isStopped: boolean;
}

export function malePage(male: Animal, picture: Picture): MalePage {
  const stopped = maleStopped(male, picture);
  return {
    id: male.id,
    name: male.name,
    position: picture.position(picture.whereIs(male)),
    mass: massWords(male, picture),
    visits: visitsWords(male, picture),
    rest: restWords(male, picture),
    appetite: appetiteWords(male, picture),
    stop: stopped === undefined ? stopWords(male, picture) : `Stop: ${stopped}`,
    isStopped: stopped !== undefined,
  };
}

function massWords(male: Animal, picture: Picture): string {
  const last = male.weighings.at(-1);
  if (!last) return 'Never weighed.';
  const { facts } = picture;
  const ago = agoWords(facts.nightOf(last.at), facts.night);
  const share = lossShare(male, picture);
  const before = male.season?.baselineG;
  if (share === undefined || before === undefined) return `${showGrams(last.massG)}, ${ago}.`;
  const percent = Math.round(Math.abs(share) * 100);
  const change = share > 0 ? `${percent} % less` : `${percent} % more`;
  return `${showGrams(last.massG)}, ${ago}: ${change} than the ${showGrams(before)} before his season.`;
}

function visitsWords(male: Animal, picture: Picture): string {
  const [stays, locks] = [staysNow(male, picture), locksNow(male, picture)];
  const had = femalesHad(male, picture).length;
  const most = mostFemales(male, picture);
  const locked = `${locks.length} ${locks.length === 1 ? 'lock' : 'locks'} seen`;
  const visits = `${stays.length} ${stays.length === 1 ? 'visit' : 'visits'}`;
  return `${visits}, ${locked}, ${had} of at most ${most} females.`;
}

function restWords(male: Animal, picture: Picture): string {
  const { facts } = picture;
  const nightAgo = (night: Day): number => daysBetween(night, facts.night);
  if (male.visit) {
    const since = facts.nightOf(male.visit.since);
    return `In with ${facts.nameOf(male.visit.with)} since ${agoWords(since, facts.night)}.`;
  }
  const stay = staysNow(male, picture).at(-1);
  if (!stay) return 'Not out this season.';
  const home = facts.nightOf(stay.until ?? stay.since);
  return `Home for ${daysWords(nightAgo(home))}; he rests ${daysWords(restNights(male, picture))} between visits.`;
}

function appetiteWords(male: Animal, { facts }: Picture): string {
  const known = male.offers.filter(({ outcome }) => outcome !== 'left');
  const ate = known.findLast(({ outcome }) => outcome !== 'refused');
  const refused = known.length - 1 - known.findLastIndex(({ outcome }) => outcome !== 'refused');
  const last = ate ? `Ate ${agoWords(facts.nightOf(ate.at), facts.night)}` : 'No meal on record';
  return refused > 0
    ? `${last}, ${refused} ${refused === 1 ? 'refusal' : 'refusals'} since.`
    : `${last}.`;
}

function stopWords(male: Animal, picture: Picture): string {
  const { maleLossStopShare } = picture.facts.protocol;
  const percent = Math.round(maleLossStopShare * 100);
  const before = male.season?.baselineG ?? male.weighings.at(-1)?.massG;
  return before === undefined
    ? `You stop him at ${percent} % lost. Weigh him first.`
    : `You stop him at ${percent} % lost: ${showGrams(Math.floor(before * (1 - maleLossStopShare)))}.`;
}
