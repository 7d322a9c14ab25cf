import type { Clock } from '../../src/domain/core/calendar.ts';
import { createMinter, type DeviceId } from '../../src/domain/core/ids.ts';
import type { EventLog } from '../../src/domain/ports.ts';
import type { DeviceNotes, NoteShelf } from '../../src/store/device-notes.ts';
import { createMemoryBuyers, type BuyerShelf } from '../../src/store/buyer-shelf.ts';
import { createMemoryLog } from '../../src/store/memory-log.ts';
import { createMemoryPhotos, type PhotoShelf } from '../../src/store/photo-shelf.ts';
import type { PictureShelf, SavedPicture } from '../../src/store/picture-shelf.ts';
import { openCollection, type World } from '../../src/worker/collection.ts';
import { createDeskKeeper } from '../../src/worker/desk-keeper.ts';
import { clockAt, TONIGHT } from '../make.ts';

/** What lies on a device, and outlives the tabs that use it. */
export interface Device {
  log: EventLog;
  readonly shelf: PictureShelf & { saved?: SavedPicture | undefined };
  readonly notes: NoteShelf;
  readonly photos: PhotoShelf;
  readonly buyers: BuyerShelf;
  clock: Clock;
  readonly alone: World['alone'];
}

function memoryShelf(): Device['shelf'] {
  return {
    async load() {
      return structuredClone(this.saved);
    },
    async save(picture) {
      this.saved = structuredClone(picture);
    },
    async clear() {
      this.saved = undefined;
    },
  };
}

function memoryNotes(): NoteShelf {
  let notes: DeviceNotes = {};
  return {
    load: async () => notes,
    async save(next) {
      notes = next;
    },
    async clear() {
      notes = {};
    },
  };
}

/** One after another, as a browser's lock lets tabs write. */
function queue(): World['alone'] {
  let last: Promise<unknown> = Promise.resolve();
  return async (work) => {
    const mine = last.then(work);
    last = mine.catch(() => undefined);
    return mine;
  };
}

export const aDevice = (log: EventLog = createMemoryLog()): Device => ({
  log,
  shelf: memoryShelf(),
  notes: memoryNotes(),
  photos: createMemoryPhotos(),
  buyers: createMemoryBuyers(),
  clock: clockAt(TONIGHT),
  alone: queue(),
});

/** A tab that has opened the device's collection. */
export async function openTab(device: Device, writer = 'TAB01') {
  let seed = 1;
  let growths = 0;
  const clock = () => device.clock;
  const world: World = {
    build: 'test',
    log: device.log,
    shelf: device.shelf,
    notes: device.notes,
    photos: async () => device.photos,
    buyers: async () => device.buyers,
    inMemoryOnly: true,
    clock,
    // Park, S.K. & Miller, K.W. 1988: the minimal standard generator. From memory.
    chance: () => {
      seed = (seed * 48_271) % 2_147_483_647;
      return seed / 2_147_483_647;
    },
    minter: createMinter(writer as DeviceId, () => clock().ms),
    writer: writer as DeviceId,
    alone: device.alone,
    tellOthers: () => {
      growths += 1;
    },
  };
  const collection = await openCollection(world, () => undefined);
  const keeper = createDeskKeeper(
    world,
    collection,
    'own',
    await device.notes.load(),
    () => undefined,
  );
  const onDisk = async () => (await device.log.readAfter(0)).records;
  return {
    collection,
    picture: collection.picture,
    keeper,
    ...keeper.handlers,
    world,
    onDisk,
    growths: () => growths,
  };
}

export type Tab = Awaited<ReturnType<typeof openTab>>;

/** A rack B of 2 × 2 tubs, and the two of them in it. */
export async function settleIn(tab: Tab) {
  await tab.makeRack({
    room: { name: 'Snakes', quarantine: false },
    name: 'B',
    rows: 2,
    columns: 2,
    walk: 'rows',
  });
  const added = await tab.addAnimals([
    { name: 'Sorrel', sex: 'female', position: 'B1-1', massG: 1_500 },
    { name: 'Cedar', sex: 'male', position: 'B1-2', massG: 800 },
  ]);
  if (!added.ok) throw new Error(added.problem.message);
  const [sorrel, cedar] = added.value;
  return { sorrel: sorrel!, cedar: cedar! };
}
