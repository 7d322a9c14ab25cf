import { addDays } from '../core/calendar.ts';
import type { Seen } from '../state/season.ts';
import type { Dated } from '../windows/own-interval.ts';
import type { NightOf } from './night-of.ts';

/** From the last look that found nothing to the look that found it; one night where it was seen. */
export function spanOf({ at, notBefore }: Seen, nightOf: NightOf): Dated {
  const last = nightOf(at);
  const first = notBefore === undefined ? last : nightOf(notBefore);
  return first < last ? { first, last } : { first: last, last };
}

/** The swelling of an ovulation shows for a day or two: found late, it began up to two nights before. */
const SWELLING_SHOWS_DAYS = 2;
/** How far off a date may be that the keeper worked out afterwards. An assumption of this program. */
const WORKED_OUT_DAYS = 5;

/** The nights on which an ovulation on record may have been. Source: ovulationLook. */
export function ovulationSpan(
  seen: Seen & { readonly sure: 'seen at peak' | 'seen late' | 'inferred' },
  nightOf: NightOf,
): Dated {
  const { first, last } = spanOf(seen, nightOf);
  if (seen.notBefore !== undefined || seen.sure === 'seen at peak') return { first, last };
  return seen.sure === 'seen late'
    ? { first: addDays(last, -SWELLING_SHOWS_DAYS), last }
    : { first: addDays(last, -WORKED_OUT_DAYS), last: addDays(last, WORKED_OUT_DAYS) };
}
