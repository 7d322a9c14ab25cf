import type { Clock } from '../domain/core/calendar.ts';
import type { DeviceId, EventId, Minter } from '../domain/core/ids.ts';
import type { RackEvent } from '../domain/events/event.ts';
import { isOfToday } from '../domain/events/newest-versions.ts';
import type { Unreadable } from '../domain/events/read-event.ts';
import type { SubjectId } from '../domain/events/subjects.ts';
import { createPicture, type Picture } from '../domain/picture/picture.ts';
import type { EventLog } from '../domain/ports.ts';
import { tubRules } from '../domain/rules/tub-rules.ts';
import { createLedger } from '../domain/state/ledger.ts';
import type { BuyerShelf } from '../store/buyer-shelf.ts';
import type { NoteShelf } from '../store/device-notes.ts';
import type { PhotoShelf } from '../store/photo-shelf.ts';
import type { PictureShelf } from '../store/picture-shelf.ts';

/** What the desk needs of the world: places to keep things, the clock, chance, and other tabs. */
export interface World {
  readonly build: string;
  readonly log: EventLog;
  readonly shelf: PictureShelf;
  readonly notes: NoteShelf;
  /** Fetched when the first picture is asked for: a start does not need it. */
  readonly photos: () => Promise<PhotoShelf>;
  readonly buyers: () => Promise<BuyerShelf>;
  readonly inMemoryOnly: boolean;
  readonly clock: () => Clock;
  readonly chance: () => number;
  readonly minter: Minter;
  readonly writer: DeviceId;
  /** Runs alone among all tabs that hold this collection. */
  readonly alone: <Answer>(work: () => Promise<Answer>) => Promise<Answer>;
  /** Tells the other tabs that the log has grown. */
  readonly tellOthers: () => void;
}

/** The log and the picture of it, kept in step. */
export interface Collection {
  readonly picture: Picture;
  readonly unreadable: readonly Unreadable[];
  /** How many records lie in the log, whether or not they have been read yet. */
  readonly count: number;
  /** Writes to disk, then into the picture; resolves when both are done. */
  write(events: readonly RackEvent[], unread?: readonly unknown[]): Promise<void>;
  /** Takes in what other tabs have written. */
  follow(): Promise<void>;
  /** Reads the whole log behind a saved picture; at once where there was none. */
  readHistory(): Promise<void>;
  /** Work for a quiet moment: packs the log and saves the picture. */
  settle(): Promise<void>;
  refresh(): void;
}

interface Understood {
  readonly events: readonly RackEvent[];
  readonly unread: readonly Unreadable[];
}

/**
 * What stored records say. The shapes of all records and what checks them are a third of the desk:
 * they are loaded only where a record is of another shape than today's.
 */
async function understood(records: readonly unknown[]): Promise<Understood> {
  if (records.every(isOfToday)) return { events: records, unread: [] };
  const { readStored } = await import('../domain/events/read-event.ts');
  const read = records.map(readStored);
  return {
    events: read.flatMap((each) => (each.ok ? [each.value] : [])),
    unread: read.flatMap((each) => (each.ok ? [] : [each.problem])),
  };
}

/** How many records may lie singly before the log is packed. */
const PACK_EVERY = 4_000;

/**
 * Opens a collection: from the saved picture and what came after it, or from the whole log.
 *
 * `changed` is called after each change of the picture.
 */
export async function openCollection(world: World, changed: () => void): Promise<Collection> {
  const { log, shelf, clock, minter } = world;
  const ledger = createLedger();
  const unreadable: Unreadable[] = [];
  let position = 0;
  let savedPosition = 0;
  let packedPosition = 0;

  /** What is written next sorts after all there is, or a correction of it would not be one. */
  function seen(id: EventId | undefined): void {
    if (id !== undefined) minter.seen(id);
  }

  /** Takes in what was read, by adding it to the ledger or filling the ledger with it. */
  function hold({ events, unread }: Understood, by: 'add' | 'fill'): ReadonlySet<SubjectId> {
    // One by one: an old program may be unable to read a whole log, too many to be handed over at once.
    for (const each of unread) unreadable.push(each);
    const touched = ledger[by](events);
    seen(ledger.newest);
    return touched;
  }

  const saved = await shelf.load();
  if (saved) {
    for (const { last } of saved.subjects) seen(last.id);
    ledger.restore(saved.subjects);
    position = saved.position;
    savedPosition = saved.position;
  }
  const rest = await log.readAfter(position);
  hold(await understood(rest.records), 'add');
  position = rest.position;
  const picture = createPicture(ledger, clock(), tubRules);

  const takeIn = (touched: Iterable<SubjectId>): void => {
    picture.update(touched, clock());
    changed();
  };

  async function follow(): Promise<void> {
    const from = position;
    const more = await log.readAfter(from);
    const read = await understood(more.records);
    // A write of ours or another reading may have taken in part of it meanwhile, and a log does not
    // promise the order of its records: what is left cannot be told from what is known.
    if (position !== from) return follow();
    position = more.position;
    const touched = hold(read, 'add');
    if (read.events.length > 0) takeIn(touched);
  }

  async function settle(): Promise<void> {
    if (position - packedPosition >= PACK_EVERY) {
      packedPosition = position;
      await world.alone(() => log.tidy());
    }
    if (!ledger.hasHistory || position === savedPosition) return;
    savedPosition = position;
    await shelf.save({ build: world.build, position, subjects: ledger.save() });
  }

  return {
    picture,
    unreadable,
    get count() {
      return position;
    },
    follow,
    settle,

    write: (events, unread = []) =>
      world.alone(async () => {
        const other = await understood(unread);
        const last = await log.append([...events, ...unread]);
        if (last === position + events.length + unread.length) {
          position = last;
          takeIn(hold({ events: [...events, ...other.events], unread: other.unread }, 'add'));
        } else {
          await follow(); // Another tab wrote in between: read its records and ours back in order.
        }
        world.tellOthers();
      }),

    async readHistory() {
      if (ledger.hasHistory) return;
      const whole = await log.readAfter(0);
      const read = await understood(whole.records);
      if (ledger.hasHistory) return; // Someone else who asked for it was quicker.
      unreadable.length = 0;
      position = Math.max(position, whole.position);
      takeIn(hold(read, 'fill'));
      // Subjects that a fill folds anew are in no saved picture yet.
      savedPosition = 0;
      await settle();
    },

    refresh: () => takeIn([]),
  };
}
