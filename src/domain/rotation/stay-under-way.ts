import type { Picture } from '../picture/picture.ts';
import type { Animal } from '../state/animal.ts';
import { nextHome } from './bars.ts';
import type { Night } from './plan-problem.ts';
import { maleStopped } from './male-limits.ts';

/**
 * The evening on which a male that is out comes home: the last one of his stay on which somebody is
 * there, and the next such evening where there is none, where she has ovulated or he is to rest.
 */
export function plannedOut(
  male: Animal,
  since: Night,
  away: readonly Night[],
  picture: Picture,
): Night {
  const { protocol } = picture.facts;
  const host = picture.facts.hostOf(male);
  const now = host && picture.standing(host)?.now;
  const isOver = now?.ovulation !== undefined || now?.season.laid !== undefined;
  const last = since + protocol.maleStayDays;
  if (isOver || maleStopped(male, picture) !== undefined) return nextHome(0, away);
  for (let night = last; night >= Math.max(0, since + 1); night -= 1) {
    if (!away.includes(night)) return night;
  }
  return nextHome(0, away);
}
