import { assess, type Previous } from '../domain/assess/assess.ts';
import { newAnimalDrafts } from '../domain/commands/new-animals.ts';
import { newLabelDrafts } from '../domain/commands/new-labels.ts';
import { newRackDrafts } from '../domain/commands/new-rack.ts';
import { momentOf } from '../domain/core/calendar.ts';
import { ok, refuse, type Refusal } from '../domain/core/result.ts';
import type { Commands, DeskStatus, Recorded } from '../domain/desk.ts';
import type { Verdict } from '../domain/assess/doubt.ts';
import type { Draft, RackEvent } from '../domain/events/event.ts';
import { newestVersion } from '../domain/events/newest-versions.ts';
import { readEvent } from '../domain/events/read-event.ts';
import type { TubId } from '../domain/core/ids.ts';
import { calendarEntries } from '../domain/views/calendar-view.ts';
import type { DeviceNotes } from '../store/device-notes.ts';
import type { Collection, World } from './collection.ts';
import { deskStatus } from './desk-status.ts';
import { createPlanner } from './planner/plan-handler.ts';
import { createReadingsReader } from './readings.ts';
import { photoHandlers } from './photo-handlers.ts';
import { saleHandlers } from './sale-handlers.ts';
import type { LookedInto } from './restore.ts';
import { createSheetReader } from './spreadsheets.ts';

type Handlers = {
  readonly [Kind in Exclude<keyof Commands, 'open' | 'eraseDemo'>]: (
    ask: Commands[Kind]['ask'],
  ) => Promise<Commands[Kind]['answer']>;
};

export interface DeskKeeper {
  readonly handlers: Handlers;
  status(): DeskStatus;
}

/** Decides on what the page asks to be written, and writes it. */
export function createDeskKeeper(
  world: World,
  collection: Collection,
  name: DeskStatus['collection'],
  firstNotes: DeviceNotes,
  changed: () => void,
): DeskKeeper {
  const { picture } = collection;
  const { clock, minter } = world;
  let notes = firstNotes;
  let previous: Previous;
  let looked: LookedInto | undefined;

  /** Other tabs keep theirs in the same place, so what is there now is read first. */
  const keepNotes = (change: (now: DeviceNotes) => DeviceNotes): Promise<void> =>
    world.alone(async () => {
      const now = await world.notes.load();
      notes = change(now);
      if (notes !== now) await world.notes.save(notes);
    });

  function stamp(draft: Draft, tub: TubId | undefined): object {
    const now = momentOf(clock());
    const place = picture.position(tub ?? tubOf(draft));
    return {
      id: minter.event(),
      at: now,
      precision: 'minute',
      loggedAt: now,
      device: world.writer,
      v: newestVersion(draft.type),
      ...(notes.initials === undefined ? {} : { by: notes.initials }),
      ...(place === undefined ? {} : { place }),
      ...(draft.type === 'laid' ? { clutch: minter.clutch() } : {}),
      ...(draft.type === 'incubator-made' ? { incubator: minter.incubator() } : {}),
      ...draft,
    };
  }

  function tubOf(draft: Draft): TubId | undefined {
    if ('tub' in draft) return draft.tub;
    const animal = 'animal' in draft ? picture.animal(draft.animal) : undefined;
    return animal && picture.whereIs(animal);
  }

  async function write(drafts: readonly Draft[], tub?: TubId): Promise<Recorded> {
    const events: RackEvent[] = [];
    for (const draft of drafts) {
      const [first] = events;
      // A picture that is written down with something is of that.
      const isOf = draft.type === 'photo-kept' && first ? { about: first.id } : {};
      // Fathers that are stated with the eggs are of these.
      const eggs = draft.type === 'paternity-stated' && first?.type === 'laid' ? first : undefined;
      const read = readEvent({
        ...isOf,
        ...(eggs ? { clutch: eggs.clutch } : {}),
        ...stamp(draft, tub),
      });
      if (!read.ok) return refused({ code: 'not-well-formed', message: read.problem.why });
      events.push(read.value);
    }
    // Named first: were it to fail after the record is written, a written record would count as lost.
    await nameCollection();
    await collection.write(events);
    const last = events.at(-1);
    if (last?.type === 'weighed') {
      previous = { name: picture.facts.nameOf(last.animal), massG: last.massG };
    }
    return { kind: 'done', ids: events.map(({ id }) => id), notes: [] };
  }

  /** A collection is named by its first record on the first device, and the name travels with it. */
  async function nameCollection(): Promise<void> {
    if (notes.collection !== undefined) return;
    await keepNotes((now) =>
      now.collection === undefined ? { ...now, collection: minter.event() } : now,
    );
  }

  async function record({
    drafts,
    accepted = [],
    tub,
  }: Commands['record']['ask']): Promise<Recorded> {
    const assessed = drafts.map((draft) => ({
      draft,
      ...assess(draft, picture, clock(), previous),
    }));
    const refusals = assessed.flatMap((each) => each.refusals);
    const doubts = assessed.flatMap((each) => each.doubts);
    const remarks = assessed.flatMap((each) => each.notes);
    if (refusals.length > 0) {
      const { instead } = doubts.find((doubt) => doubt.instead) ?? {};
      return { kind: 'refused', refusals, instead };
    }
    const open = doubts.filter(({ code }) => !accepted.includes(code));
    if (open.length > 0) return { kind: 'asked', doubts: open };
    const written = await write(assessed.map(withDoubts), tub);
    return written.kind === 'done' ? { ...written, notes: remarks } : written;
  }

  return {
    handlers: {
      ...photoHandlers(world, collection),
      ...saleHandlers(world, collection),
      record,
      strike: ({ ids, reason }) => write(ids.map((target) => ({ type: 'struck', target, reason }))),
      async makeRack(wanted) {
        const made = newRackDrafts(wanted, picture, minter, world.chance);
        if (!made.ok) return made;
        const written = await write(made.value.drafts);
        return written.kind === 'done' ? ok(made.value.rack) : firstRefusal(written);
      },
      async addAnimals(wanted) {
        const made = newAnimalDrafts(wanted, picture, minter);
        if (!made.ok) return made;
        const written = await write(made.value.drafts);
        return written.kind === 'done' ? ok(made.value.animals) : firstRefusal(written);
      },
      async takeInHatchling(wanted) {
        const { newHatchlingDrafts } = await import('../domain/commands/new-hatchling.ts');
        const made = newHatchlingDrafts(wanted, picture, minter, world.chance);
        if (!made.ok) return made;
        const written = await write(made.value.drafts);
        return written.kind === 'done'
          ? ok({ animal: made.value.animal, ids: written.ids })
          : firstRefusal(written);
      },
      giveCard: (wanted) => write(newLabelDrafts(wanted, picture, world.chance)),
      ...createReadingsReader(world, collection, write),
      ...createPlanner(collection),
      ...createSheetReader(world, collection, { write, nameCollection, keepNotes }, () => notes),
      async backUp() {
        await collection.readHistory();
        await nameCollection();
        const { backUp } = await import('./backup.ts');
        return backUp(world, collection, notes.collection ?? '');
      },
      async calendarFile() {
        const { writeCalendar } = await import('../domain/calendar-file/write-calendar.ts');
        const text = writeCalendar(calendarEntries(picture), clock());
        return { fileName: `${momentOf(clock()).slice(0, 10)}.nightdrop.ics`, text };
      },
      async backUpWithPhotos(spot) {
        await collection.readHistory();
        await nameCollection();
        const { backUpWithPhotos } = await import('./photo-backup.ts');
        return backUpWithPhotos(world, collection, notes.collection ?? '', spot);
      },
      async backedUp(pictures) {
        await keepNotes((now) => ({ ...now, ...pictures, lastBackupMs: clock().ms }));
        changed();
        return null;
      },
      async lookInto(file) {
        await collection.readHistory();
        await keepNotes((now) => now);
        const { lookIntoBackup } = await import('./restore.ts');
        const result = await lookIntoBackup(
          file,
          picture.ledger,
          collection.unreadable,
          notes.collection,
          world.photos,
        );
        looked = result.ok ? result.value : undefined;
        return result.ok ? ok(result.value.preview) : result;
      },
      async takeIn() {
        if (!looked) return refuse('nothing-looked-into', 'Pick a backup first.');
        const { fresh, unread, pictures, collection: theirs } = looked;
        looked = undefined;
        const isEmpty = picture.ledger.size === 0;
        await keepNotes((now) =>
          isEmpty || now.collection === undefined ? { ...now, collection: theirs } : now,
        );
        await collection.write(fresh, unread);
        await (await import('./restore-pictures.ts')).takePicturesIn(pictures, world.photos);
        changed();
        return ok(fresh.length);
      },
      async setInitials(initials) {
        const trimmed = initials.trim().slice(0, 8);
        await keepNotes((now) => ({ ...now, initials: trimmed === '' ? undefined : trimmed }));
        changed();
        return null;
      },
      async wake() {
        // Another tab may have backed up meanwhile.
        notes = await world.notes.load();
        await collection.follow();
        collection.refresh();
        return null;
      },
    },

    status: () => deskStatus(world, collection, name, notes),
  };
}

/** A mass kept against a doubt says so, so that later ones are not held against it alone. */
const withDoubts = ({ draft, doubts }: { readonly draft: Draft } & Verdict): Draft =>
  draft.type === 'weighed' && doubts.length > 0
    ? { ...draft, doubt: doubts.map(({ code }) => code).join(', ') }
    : draft;

const refused = (...refusals: readonly Refusal[]): Recorded => ({ kind: 'refused', refusals });

const firstRefusal = (recorded: Recorded) =>
  recorded.kind === 'refused' && recorded.refusals[0]
    ? refuse(recorded.refusals[0].code, recorded.refusals[0].message)
    : refuse('not-written', 'That could not be written down.');
