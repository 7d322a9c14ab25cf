import type { EventId } from '../core/ids.ts';
import type { RackEvent } from '../events/event.ts';

/** Every event that was taken in, by id. */
export interface KnownEvents {
  /** False, and nothing else, for one that is known already. */
  add(event: RackEvent): boolean;
  get(id: EventId): RackEvent | undefined;
  readonly size: number;
  readonly newest: EventId | undefined;
  all(): IterableIterator<RackEvent>;
}

/**
 * None at first.
 *
 * Ids rise with time, and a log is mostly in that order: what is newer than all before it goes to
 * the end of a list and is found there by halving. So a start need not make a table of 100,000.
 */
export function createKnownEvents(): KnownEvents {
  const rising: RackEvent[] = [];
  const others = new Map<EventId, RackEvent>();

  function get(id: EventId): RackEvent | undefined {
    const found = rising[placeIn(rising, id)];
    return found?.id === id ? found : others.get(id);
  }

  return {
    add(event) {
      const newest = rising.at(-1);
      if (newest === undefined || event.id > newest.id) rising.push(event);
      else if (get(event.id)) return false;
      else others.set(event.id, event);
      return true;
    },
    get,
    get size() {
      return rising.length + others.size;
    },
    get newest() {
      return rising.at(-1)?.id;
    },
    *all() {
      yield* rising;
      yield* others.values();
    },
  };
}

/** Where the first event stands whose id is not before this one. */
function placeIn(rising: readonly RackEvent[], id: EventId): number {
  let [from, to] = [0, rising.length];
  while (from < to) {
    const middle = Math.floor((from + to) / 2);
    const there = rising[middle];
    if (there && there.id < id) from = middle + 1;
    else to = middle;
  }
  return from;
}
