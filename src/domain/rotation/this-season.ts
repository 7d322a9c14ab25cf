import { daysBetween, type Moment } from '../core/calendar.ts';
import type { Picture } from '../picture/picture.ts';
import type { Animal } from '../state/animal.ts';
import type { Season, Stay } from '../state/season.ts';

/** October to April: what is longer ago was another season, though nothing has closed it. */
const SEASON_DAYS = 210;

export const isThisSeason = (moment: Moment, { facts }: Picture): boolean =>
  daysBetween(facts.nightOf(moment), facts.night) <= SEASON_DAYS;

/** The visits of this season, oldest first. */
export const staysNow = ({ season }: Animal, picture: Picture): readonly Stay[] =>
  (season?.stays ?? []).filter(({ since }) => isThisSeason(since, picture));

export const locksNow = ({ season }: Animal, picture: Picture): Season['locks'] =>
  (season?.locks ?? []).filter(({ at }) => isThisSeason(at, picture));
