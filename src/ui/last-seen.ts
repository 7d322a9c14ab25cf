import { momentOf, roomNight, type Clock } from '../domain/core/calendar.ts';
import type { CollectionName, DeskStatus } from '../domain/desk.ts';
import type { TonightView } from '../domain/views/tonight-view.ts';
import { remembered } from './remember.ts';

// The page shows tonight's first lines as they were last worked out, while its program and then the
// desk come; the desk's own list then takes their place. Losing them costs time and nothing else.

/** A list as it was last worked out: its first lines, and what the shell needs to stand around them. */
export interface LastSeen {
  readonly status: DeskStatus;
  readonly tonight: TonightView;
  /** The same as the app draws it, so that it can be shown before there is a program to draw it. */
  readonly html: string;
}

/** One text for all of it, so that the list and its drawing cannot be of two moments. */
interface Remembered {
  /** The build that wrote it: another build may show otherwise. */
  readonly build: string;
  readonly tonight: LastSeen;
  /** Of the next night, for the first start of that evening. */
  readonly tomorrow?: LastSeen | undefined;
}

/** As many as the tallest phone shows. */
export const FIRST_STOPS = 6;

/** The name under which it is remembered. */
export const LAST_SEEN = 'last-seen';

/** The collection that a start opens: the one that was open last. */
export const openedLast = (): CollectionName =>
  remembered('collection') === 'demo' ? 'demo' : 'own';

/** Whether the page stands at tonight's list, as its address says. */
export const isAtTonight = (): boolean => ['', '#/', '#/tonight'].includes(location.hash);

/** A list's first lines, which are all that is remembered of it. */
export const firstLines = (list: TonightView): TonightView => ({
  ...list,
  stops: list.stops.slice(0, FIRST_STOPS),
  waiting: [],
});

/** As text for the next start; undefined where the next start will not find these records. */
export function writeLastSeen(seen: Remembered): string | undefined {
  const { status } = seen.tonight;
  return status.inMemoryOnly || status.records === 0 ? undefined : JSON.stringify(seen);
}

/**
 * What a start may show: only this build's, only of the collection it opens, and only of the night
 * it is now. A list of last night under tonight's heading would have snakes fed twice.
 */
export function readLastSeen(
  text: string | undefined,
  now: { readonly build: string; readonly collection: CollectionName; readonly clock: Clock },
): LastSeen | undefined {
  if (text === undefined) return undefined;
  try {
    const { build, tonight, tomorrow } = JSON.parse(text) as Remembered;
    if (build !== now.build || tonight.status.collection !== now.collection) return undefined;
    return [tonight, tomorrow].find((each) => each && isTonight(each.tonight, now.clock));
  } catch {
    return undefined; // Cut short, or not ours: the desk's own list comes all the same.
  }
}

const isTonight = ({ night, rolloverHour }: TonightView, clock: Clock): boolean =>
  roomNight(momentOf(clock), rolloverHour) === night;
