import type { Day, Moment } from '../core/calendar.ts';
import type { FreezerId } from '../core/ids.ts';
import type { RackEvent } from '../events/event.ts';
import type { Prey } from '../events/feeding.ts';
import { keep } from './keep.ts';

/** Pieces that came in together. */
export interface Batch {
  readonly id: string;
  readonly pieces: number;
  /** The last day it may be fed; absent where nobody wrote it down. */
  readonly useBy?: Day | undefined;
  readonly lot?: string | undefined;
}

/** One size of prey. */
export interface Drawer {
  readonly kind: Prey['kind'];
  readonly size: string;
  /** What lies there by the records. What goes off first comes first. */
  readonly batches: readonly Batch[];
  /** Taken out by the records although it was not there: something was not written down. */
  readonly short: number;
  /** When it was last counted. */
  readonly countedAt?: Moment | undefined;
}

/** Pieces thawed, or of those thrown out again. */
export interface Thaw {
  readonly at: Moment;
  readonly kind: Prey['kind'];
  readonly size: string;
  /** Negative where they were thrown out. */
  readonly pieces: number;
}

export interface Freezer {
  readonly kind: 'freezer';
  readonly id: FreezerId;
  /** By kind and size. */
  readonly drawers: Readonly<Record<string, Drawer>>;
  /** From oldest to newest, the recent ones. */
  readonly thaws: readonly Thaw[];
}

export type FreezerEvent = Extract<
  RackEvent,
  { type: 'prey-stocked' | 'prey-thawed' | 'prey-thrown-out' | 'prey-counted' }
>;

const KEPT_THAWS = 60;

export const drawerKey = ({ kind, size }: Pick<Prey, 'kind' | 'size'>): string => `${kind} ${size}`;

const isFreezer = (event: RackEvent): event is FreezerEvent =>
  event.type === 'prey-stocked' ||
  event.type === 'prey-thawed' ||
  event.type === 'prey-thrown-out' ||
  event.type === 'prey-counted';

export function applyToFreezer(
  before: Freezer | undefined,
  events: readonly RackEvent[],
  id: FreezerId,
): Freezer {
  const drawers = new Map(Object.entries(before?.drawers ?? {}));
  let thaws = before?.thaws ?? [];
  for (const event of events) {
    if (!isFreezer(event)) continue;
    const key = drawerKey(event);
    drawers.set(key, changed(drawers.get(key) ?? emptyDrawer(event), event));
    const { at, kind, size, pieces } = event;
    if (event.type === 'prey-thawed') thaws = keep(thaws, { at, kind, size, pieces }, KEPT_THAWS);
    if (event.type === 'prey-thrown-out' && event.from === 'thawed') {
      thaws = keep(thaws, { at, kind, size, pieces: -pieces }, KEPT_THAWS);
    }
  }
  return { kind: 'freezer', id, drawers: Object.fromEntries(drawers), thaws };
}

const emptyDrawer = ({ kind, size }: FreezerEvent): Drawer => ({
  kind,
  size,
  batches: [],
  short: 0,
});

function changed(drawer: Drawer, event: FreezerEvent): Drawer {
  switch (event.type) {
    case 'prey-stocked': {
      const { id, pieces, useBy, batch: lot } = event;
      // Where more was taken out than was there, it cannot have been of these: that stays a question.
      const batch: Batch = { id, pieces, useBy, lot };
      return { ...drawer, batches: inOrder([...drawer.batches, batch]) };
    }
    case 'prey-thawed':
      return taken(drawer, event.pieces);
    case 'prey-thrown-out':
      if (event.from === 'thawed') return drawer;
      return taken(drawer, event.pieces);
    case 'prey-counted': {
      const more = event.pieces - drawer.batches.reduce((sum, { pieces }) => sum + pieces, 0);
      const { batches } =
        more < 0
          ? taken(drawer, -more)
          : {
              batches:
                more > 0 ? [...drawer.batches, { id: event.id, pieces: more }] : drawer.batches,
            };
      return { ...drawer, batches, short: 0, countedAt: event.at };
    }
  }
}

/** What goes off first is taken first; what has no date, last. */
const inOrder = (batches: readonly Batch[]): readonly Batch[] =>
  batches.toSorted((a, b) => {
    const [first, second] = [a.useBy ?? '9999', b.useBy ?? '9999'];
    return first === second ? (a.id < b.id ? -1 : Number(a.id > b.id)) : first < second ? -1 : 1;
  });

function taken(drawer: Drawer, pieces: number): Drawer {
  let wanted = pieces;
  const batches = drawer.batches.flatMap((batch): Batch[] => {
    const out = Math.min(wanted, batch.pieces);
    wanted -= out;
    return out === batch.pieces ? [] : [{ ...batch, pieces: batch.pieces - out }];
  });
  return { ...drawer, batches, short: drawer.short + wanted };
}
