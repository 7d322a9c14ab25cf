import { showGrams } from '../core/units.ts';
import type { AnimalId } from '../core/ids.ts';
import type { Picture } from '../picture/picture.ts';
import { lossSinceSeason } from '../season/male-stage.ts';
import type { Animal } from '../state/animal.ts';
import { isThisSeason, staysNow } from './this-season.ts';

/** The share of his mass before the season that he has lost; undefined where nobody can say. */
export function lossShare(male: Animal, { facts }: Picture): number | undefined {
  const loss = lossSinceSeason(male, facts);
  return loss && 1 - loss.toG / loss.fromG;
}

/** Why he is not used any more now; undefined where he may be. Source: maleLoss. */
export function maleStopped(male: Animal, picture: Picture): string | undefined {
  const loss = lossSinceSeason(male, picture.facts);
  const share = lossShare(male, picture);
  const { maleLossStopShare } = picture.facts.protocol;
  if (!loss || share === undefined || share < maleLossStopShare) return undefined;
  const stop = showGrams(Math.floor(loss.fromG * (1 - maleLossStopShare)));
  return `${showGrams(loss.toG)}, ${Math.floor(share * 100)} % less than the ${showGrams(loss.fromG)} before his season: he rests. You stop at ${Math.round(maleLossStopShare * 100)} %, ${stop}.`;
}

/** Nights at home after a visit: more of them once he has lost so much that he is watched. */
export function restNights(male: Animal, picture: Picture): number {
  const { maleLossWatchShare, maleThinRestDays, maleRestDays } = picture.facts.protocol;
  const isThin = (lossShare(male, picture) ?? 0) >= maleLossWatchShare;
  return isThin ? Math.max(maleRestDays, maleThinRestDays) : maleRestDays;
}

/** The females he was in with this season. */
export const femalesHad = (male: Animal, picture: Picture): readonly AnimalId[] => [
  ...new Set(staysNow(male, picture).map(({ female }) => female)),
];

/** One whose first stays are of this season has fewer. Source: malesShared. */
export function mostFemales(male: Animal, picture: Picture): number {
  const { protocol } = picture.facts;
  const { season, pastSeasons } = male;
  const isFirst = pastSeasons.length === 0 && (!season || isThisSeason(season.openedAt, picture));
  return isFirst ? protocol.youngMaleFemales : protocol.maleFemales;
}
