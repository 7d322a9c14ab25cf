import { momentOf } from '../domain/core/calendar.ts';
import {
  createMinter,
  inBase32,
  WRITER_LENGTH,
  type AnimalId,
  type DeviceId,
  type Minter,
} from '../domain/core/ids.ts';
import { ok, refuse } from '../domain/core/result.ts';
import type { Commands, Recorded } from '../domain/desk.ts';
import type { Draft, RackEvent } from '../domain/events/event.ts';
import { newestVersion } from '../domain/events/newest-versions.ts';
import type { Workbook } from '../domain/sheet/grid.ts';
import type { Look } from '../domain/sheet/look.ts';
import type { SheetFile, SheetTaken } from '../domain/sheet/preview.ts';
import { IMPORT_UNDONE } from '../domain/sheet/there-already.ts';
import type { DeviceNotes } from '../store/device-notes.ts';
import type { Collection, World } from './collection.ts';

/** So many records go to the disk at a time: taps in between wait for no more than that. */
const BATCH = 250;
/** A larger file is not even read. */
const MOST_BYTES = 16_000_000;
/** As many imports as are remembered. */
const MOST_SHEETS = 20;

type Handlers = Pick<
  {
    readonly [Kind in keyof Commands]: (
      ask: Commands[Kind]['ask'],
    ) => Promise<Commands[Kind]['answer']>;
  },
  'lookIntoSheet' | 'takeInSheet' | 'sheetLeftOut' | 'sheetsTaken' | 'undoSheet'
>;

interface Opened {
  readonly workbook: Workbook;
  readonly name: string;
  readonly size: number;
  readonly ids: Map<string, AnimalId>;
}

interface UnderWay {
  readonly mark: string;
  readonly minter: Minter;
  readonly drafts: readonly Draft[];
  written: number;
}

/** This device’s own zone. */
const zone = (ms: number): number => -new Date(ms).getTimezoneOffset();

/** Takes spreadsheets in: look, take in part by part, undo as a whole. Its reader is loaded when first used. */
export function createSheetReader(
  world: World,
  collection: Collection,
  desk: {
    readonly write: (drafts: readonly Draft[]) => Promise<Recorded>;
    readonly nameCollection: () => Promise<void>;
    readonly keepNotes: (change: (now: DeviceNotes) => DeviceNotes) => Promise<void>;
  },
  notes: () => DeviceNotes,
): Handlers {
  const { picture } = collection;
  let opened: Opened | undefined;
  let looked: Look | undefined;
  let underWay: UnderWay | undefined;

  async function open(file: SheetFile): Promise<ReturnType<typeof refuse> | undefined> {
    opened = undefined;
    if (file.size > MOST_BYTES) {
      return refuse('sheet-too-large', 'This file is over 16 MB. Split it by years.');
    }
    const { openWorkbook } = await import('../workbook/open-workbook.ts');
    const result = openWorkbook(new Uint8Array(await file.arrayBuffer()));
    if (!result.ok) return result;
    opened = { workbook: result.value, name: file.name, size: file.size, ids: new Map() };
    return undefined;
  }

  /** The records of an import end in its mark, so that it is found in the log whoever asks. */
  const standingOf = (mark: string): readonly RackEvent[] =>
    [...picture.ledger.events()].filter(({ id }) => id.endsWith(mark) && picture.ledger.stands(id));

  const keepSheet = (sheet: SheetTaken): Promise<void> =>
    desk.keepNotes((now) => ({
      ...now,
      sheets: [...(now.sheets ?? []).filter(({ mark }) => mark !== sheet.mark), sheet].slice(
        -MOST_SHEETS,
      ),
    }));

  async function begin({ drafts }: Look, { name, size }: Opened): Promise<UnderWay> {
    await desk.nameCollection();
    const broken = notes().sheets?.find(
      (sheet) => sheet.name === name && sheet.size === size && !sheet.isWhole,
    );
    const mark =
      broken?.mark ?? inBase32(Math.floor(world.chance() * 32 ** WRITER_LENGTH), WRITER_LENGTH);
    // Noted before the first record: one that is broken off can be completed, and undone.
    await keepSheet({ mark, name, size, atMs: world.clock().ms, isWhole: false });
    const minter = createMinter(mark as DeviceId, () => world.clock().ms);
    // Its records come after all there are, also where the clock was set back.
    minter.seen(world.minter.event());
    return { mark, minter, drafts, written: 0 };
  }

  const stamp = async (drafts: readonly Draft[], { minter }: UnderWay): Promise<RackEvent[]> => {
    const { readEvent } = await import('../domain/events/read-event.ts');
    const now = momentOf(world.clock());
    const by = notes().initials;
    return drafts.map((draft) => {
      const read = readEvent({
        id: minter.event(),
        at: now,
        precision: 'minute',
        loggedAt: now,
        device: world.writer,
        v: newestVersion(draft.type),
        ...(by === undefined ? {} : { by }),
        ...draft,
      });
      if (!read.ok) throw new Error(read.problem.why);
      return read.value;
    });
  };

  return {
    async lookIntoSheet({ file, choices }) {
      looked = undefined;
      underWay = undefined;
      const [{ lookInto }] = await Promise.all([
        import('../domain/sheet/look.ts'),
        collection.readHistory(),
      ]);
      const refusal = file && (await open(file));
      if (refusal) return refusal;
      if (!opened) return refuse('sheet-none', 'Pick a file first.');
      const { workbook, ids } = opened;
      looked = lookInto(workbook, choices, {
        picture,
        clock: world.clock(),
        zone,
        idOf(name) {
          const id = ids.get(name) ?? world.minter.animal();
          ids.set(name, id);
          return id;
        },
      });
      return ok(looked.preview);
    },

    async takeInSheet() {
      if (!looked || !opened || looked.preview.mustSay.length > 0 || looked.drafts.length === 0) {
        return refuse('nothing-looked-into', 'There is nothing new to take in. Pick a file.');
      }
      underWay ??= await begin(looked, opened);
      const { mark, drafts, written } = underWay;
      const batch = await stamp(drafts.slice(written, written + BATCH), underWay);
      await collection.write(batch);
      underWay.written += batch.length;
      const total = drafts.length;
      const done = underWay.written;
      if (done === total) {
        const { name, size } = opened;
        await keepSheet({ mark, name, size, atMs: world.clock().ms, isWhole: true });
        looked = undefined;
        underWay = undefined;
      }
      return ok({ written: done, total, mark });
    },

    async sheetLeftOut() {
      const { leftOutFile } = await import('../domain/sheet/left-out-file.ts');
      const name = (opened?.name ?? 'table').replace(/\.[^.]*$/, '');
      const text = looked ? leftOutFile(looked.leftOut, looked.table) : '';
      return { fileName: `${name}-left-out.csv`, text };
    },

    async sheetsTaken() {
      await collection.readHistory();
      return (notes().sheets ?? []).toReversed().flatMap((sheet) => {
        const records = standingOf(sheet.mark);
        if (records.length === 0) return [];
        const came = records.flatMap((event) => (event.type === 'arrived' ? [event.animal] : []));
        const since = came
          .flatMap((animal) => picture.ledger.history(animal))
          .filter(({ id }) => !id.endsWith(sheet.mark) && picture.ledger.stands(id));
        return [{ ...sheet, records: records.length, since: since.length }];
      });
    },

    async undoSheet(mark) {
      await collection.readHistory();
      looked = undefined;
      underWay = undefined;
      const records = [...picture.ledger.events()].filter(
        ({ id }) => id.endsWith(mark) && picture.ledger.reasonStruck(id) === undefined,
      );
      const written = await desk.write(
        records.map(({ id }) => ({ type: 'struck', target: id, reason: IMPORT_UNDONE })),
      );
      return written.kind === 'done'
        ? ok(records.length)
        : refuse('not-written', 'The import was not undone. Try again.');
    },
  };
}
