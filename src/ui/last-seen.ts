import { momentOf, roomNight, type Clock } from '../domain/core/calendar.ts';
import type { CollectionName, Desk, DeskStatus } from '../domain/desk.ts';
import type { TonightView } from '../domain/views/tonight-view.ts';
import { remember } from './remember.ts';

// The page paints tonight's first lines as they were last seen, while the desk still reads its
// records; the desk's own list then takes their place. Losing them costs time and nothing else.

/** Tonight as it was last seen: its first lines, and what the shell needs to stand around them. */
export interface LastSeen {
  /** The build that wrote it: another build may show otherwise. */
  readonly build: string;
  readonly status: DeskStatus;
  readonly tonight: TonightView;
}

/** As many as the tallest phone shows. */
export const FIRST_STOPS = 12;

/** The name under which it is remembered. */
export const LAST_SEEN = 'last-seen';

/** How long nothing has changed before it is remembered anew: a tap must not wait for it. */
const QUIET_MS = 800;

/** As text for the next start; undefined where the next start will not find these records. */
export function writeLastSeen({ build, status, tonight }: LastSeen): string | undefined {
  if (status.inMemoryOnly || status.records === 0) return undefined;
  const first = { ...tonight, stops: tonight.stops.slice(0, FIRST_STOPS), waiting: [] };
  return JSON.stringify({ build, status, tonight: first });
}

/**
 * What a start may paint: only this build's, only of the collection it opens, and only of the night
 * it is now. A list of last night under tonight's heading would have snakes fed twice.
 */
export function readLastSeen(
  text: string | undefined,
  now: { readonly build: string; readonly collection: CollectionName; readonly clock: Clock },
): LastSeen | undefined {
  if (text === undefined) return undefined;
  try {
    const seen = JSON.parse(text) as LastSeen;
    if (seen.build !== now.build || seen.status.collection !== now.collection) return undefined;
    const { night, rolloverHour } = seen.tonight;
    return roomNight(momentOf(now.clock), rolloverHour) === night ? seen : undefined;
  } catch {
    return undefined; // Cut short, or not ours: the desk's own list comes all the same.
  }
}

/**
 * Remembers tonight for the next start, a quiet moment after each change and when the page is left.
 *
 * `onFresh` is told each time the desk's own list has come.
 */
export function keepLastSeen(desk: Desk, build: string, onFresh: () => void): void {
  let status: DeskStatus | undefined;
  let timer: number | undefined;
  let unwatch: (() => void) | undefined;
  const stopLooking = (): void => {
    unwatch?.();
    unwatch = undefined;
  };
  const look = (): void => {
    clearTimeout(timer);
    timer = undefined;
    stopLooking();
    // Asked for once and let go: kept open, it would be worked out again with every tap.
    unwatch = desk.watch('tonight', null, (tonight) => {
      stopLooking();
      onFresh();
      if (status) remember(LAST_SEEN, writeLastSeen({ build, status, tonight }));
    });
  };
  desk.watch('status', null, (next) => {
    status = next;
    clearTimeout(timer);
    timer = window.setTimeout(look, QUIET_MS);
  });
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden' && timer !== undefined) look();
  });
}
