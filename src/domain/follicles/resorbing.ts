import { daysBetween } from '../core/calendar.ts';
import type { Protocol } from '../protocol/values.ts';
import { beyondErrorMm } from './error.ts';
import { looksOf, type Look } from './looks.ts';
import type { Reading } from './reading.ts';

/** Why resorbing is suggested. A suggestion to look again, never a finding. */
export interface Resorbing {
  /** The scans before the first fall, at the first fall and at the second. */
  readonly readings: readonly Reading[];
  /** From the largest size to the newest, in millimetres. */
  readonly dropMm: number;
  /** What error alone might make of it, in millimetres; the drop is larger. */
  readonly errorMm: number;
  /** Days between the two falls. */
  readonly apartDays: number;
  /** The newest scan found nothing: she fell at least that far. */
  readonly atLeast: boolean;
}

/**
 * Resorbing is suggested where the newest look is the second fall from her largest size, at least
 * `resorbingApartDays` after the first, and both together are beyond error; never after one. A later,
 * larger size takes the suggestion back. Nothing found counts as a fall to the limit of the method, and
 * nothing found again as a second one: below the limit no fall shows.
 *
 * Give it one season, up to her ovulation. Source: resorbing.
 */
export function suggestResorbing(
  readings: readonly Reading[],
  protocol: Protocol,
): Resorbing | undefined {
  const looks = looksOf(readings);
  const last = looks.at(-1);
  const grown = looks.filter((look) => look.found && look.mm >= protocol.follicleGrowsFromMm);
  const largestMm = Math.max(...grown.map(({ mm }) => mm));
  // Of equally large ones the latest: there the falling began.
  const largest = grown.findLast(({ mm }) => mm === largestMm);
  if (!last || !largest) return undefined;
  const since = looks.filter(({ night }) => night > largest.night);
  const dropMm = largest.mm - last.mm;
  const errorMm = beyondErrorMm(largest, last);
  const first = since.find(
    (look) =>
      look.mm < largest.mm &&
      isBelow(last, look) &&
      daysBetween(look.night, last.night) >= protocol.resorbingApartDays,
  );
  if (!first || dropMm <= errorMm) return undefined;
  const lowest = since.reduce((low, look) => (look.mm < low.mm ? look : low), last);
  if (last.mm - lowest.mm > beyondErrorMm(lowest, last)) return undefined; // Growing again.
  return {
    readings: [largest, first, last].flatMap((look) => look.readings),
    dropMm,
    errorMm,
    apartDays: daysBetween(first.night, last.night),
    atLeast: !last.found,
  };
}

const isBelow = (later: Look, earlier: Look): boolean =>
  later.mm < earlier.mm || (!later.found && later.mm <= earlier.mm);
