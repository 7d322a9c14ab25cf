import type { Clock } from '../domain/core/calendar.ts';
import type { DeviceId, EventId, Minter } from '../domain/core/ids.ts';
import type { Result } from '../domain/core/result.ts';
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

type ReadStored = (raw: unknown) => Result<RackEvent, Unreadable>;

const asItIs: ReadStored = (raw) => ({ ok: true, value: raw as RackEvent });

/**
 * What reads these records. The shapes of all records and what checks them are a third of the desk:
 * they are loaded only where a record is of another shape than today's.
 */
const readerFor = async (records: readonly unknown[]): Promise<ReadStored> =>
  records.every(isOfToday) ? asItIs : (await import('../domain/events/read-event.ts')).readStored;

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

  function understood(records: readonly unknown[], readStored: ReadStored): RackEvent[] {
    const events: RackEvent[] = [];
    for (const raw of records) {
      const read = readStored(raw);
      if (read.ok) events.push(read.value);
      else unreadable.push(read.problem);
    }
    seen(events);
    return events;
  }

  /** What is written next sorts after all of these, or a correction of one would not be one. */
  function seen(events: readonly { readonly id: EventId }[]): void {
    let newest: EventId | undefined;
    for (const { id } of events) if (newest === undefined || id > newest) newest = id;
    if (newest !== undefined) minter.seen(newest);
  }

  const saved = await shelf.load();
  if (saved) {
    seen(saved.subjects.map(({ last }) => last));
    ledger.restore(saved.subjects);
    position = saved.position;
    savedPosition = saved.position;
  }
  const rest = await log.readAfter(position);
  ledger.add(understood(rest.records, await readerFor(rest.records)));
  position = rest.position;
  const picture = createPicture(ledger, clock(), tubRules);

  const takeIn = (touched: Iterable<SubjectId>): void => {
    picture.update(touched, clock());
    changed();
  };

  async function follow(): Promise<void> {
    const from = position;
    const more = await log.readAfter(from);
    const readStored = await readerFor(more.records);
    // A write of ours or another reading may have taken in part of it meanwhile, and a log does not
    // promise the order of its records: what is left cannot be told from what is known.
    if (position !== from) return follow();
    const events = understood(more.records, readStored);
    position = more.position;
    if (events.length > 0) takeIn(ledger.add(events));
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
        const readUnread = await readerFor(unread);
        const last = await log.append([...events, ...unread]);
        if (last === position + events.length + unread.length) {
          position = last;
          understood(unread, readUnread);
          seen(events);
          takeIn(ledger.add(events));
        } else {
          await follow(); // Another tab wrote in between: read its records and ours back in order.
        }
        world.tellOthers();
      }),

    async readHistory() {
      if (ledger.hasHistory) return;
      const whole = await log.readAfter(0);
      const readStored = await readerFor(whole.records);
      if (ledger.hasHistory) return; // Someone else who asked for it was quicker.
      unreadable.length = 0;
      const events = understood(whole.records, readStored);
      position = Math.max(position, whole.position);
      takeIn(ledger.fill(events));
      // Subjects that a fill folds anew are in no saved picture yet.
      savedPosition = 0;
      await settle();
    },

    refresh: () => takeIn([]),
  };
}
