import { momentOf, roomNight, type Clock } from '../domain/core/calendar.ts';
import type { CollectionName, Desk, DeskStatus } from '../domain/desk.ts';
import type { TonightView } from '../domain/views/tonight-view.ts';
import { remember } from './remember.ts';

// The page paints tonight's first lines as they were last worked out, while the desk still reads its
// records; the desk's own list then takes their place. Losing them costs time and nothing else.

/** A list as it was last worked out: its first lines, and what the shell needs to stand around them. */
export interface LastSeen {
  /** The build that wrote it: another build may show otherwise. */
  readonly build: string;
  readonly status: DeskStatus;
  readonly tonight: TonightView;
}

/** With the list of the next night, for the first start of that evening. */
type Remembered = LastSeen & { readonly tomorrow?: TonightView | undefined };

/** As many as the tallest phone shows. */
export const FIRST_STOPS = 12;

/** The name under which it is remembered. */
export const LAST_SEEN = 'last-seen';

/** How long nothing has changed before it is remembered anew: a tap must not wait for it. */
const QUIET_MS = 800;
/** And how long before the next night's list is worked out, which keeps the desk from other work. */
const AT_REST_MS = 6_000;

/** As text for the next start; undefined where the next start will not find these records. */
export function writeLastSeen(seen: Remembered): string | undefined {
  const { build, status, tonight, tomorrow } = seen;
  if (status.inMemoryOnly || status.records === 0) return undefined;
  const lists = { tonight: firstLines(tonight), tomorrow: tomorrow && firstLines(tomorrow) };
  return JSON.stringify({ build, status, ...lists });
}

const firstLines = (list: TonightView): TonightView => ({
  ...list,
  stops: list.stops.slice(0, FIRST_STOPS),
  waiting: [],
});

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
    const { build, status, tonight, tomorrow } = JSON.parse(text) as Remembered;
    if (build !== now.build || status.collection !== now.collection) return undefined;
    const list = [tonight, tomorrow].find(
      (each) => each && roomNight(momentOf(now.clock), each.rolloverHour) === each.night,
    );
    return list && { build, status, tonight: list };
  } catch {
    return undefined; // Cut short, or not ours: the desk's own list comes all the same.
  }
}

/**
 * Remembers tonight for the next start, a quiet moment after each change and when the page is left;
 * and the next night's list when all is at rest.
 *
 * `onFresh` is told each time the desk's own list has come.
 */
export function keepLastSeen(desk: Desk, build: string, onFresh: () => void): void {
  let status: DeskStatus | undefined;
  let timer: number | undefined;
  let unwatch: (() => void) | undefined;
  /** Asked for once and let go: kept open, it would be worked out again with every tap. */
  const askOnce = (list: 'tonight' | 'tomorrow', then: (view: TonightView) => void): void => {
    unwatch?.();
    unwatch = desk.watch(list, null, (view) => {
      unwatch?.();
      unwatch = undefined;
      then(view);
    });
  };
  const look = (): void => {
    clearTimeout(timer);
    timer = undefined;
    askOnce('tonight', (tonight) => {
      onFresh();
      if (!status) return;
      const seen = { build, status, tonight };
      remember(LAST_SEEN, writeLastSeen(seen));
      timer = window.setTimeout(() => {
        timer = undefined;
        askOnce('tomorrow', (tomorrow) =>
          remember(LAST_SEEN, writeLastSeen({ ...seen, tomorrow })),
        );
      }, AT_REST_MS);
    });
  };
  desk.watch('status', null, (next) => {
    status = next;
    unwatch?.();
    clearTimeout(timer);
    timer = window.setTimeout(look, QUIET_MS);
  });
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden' && timer !== undefined) look();
  });
}
