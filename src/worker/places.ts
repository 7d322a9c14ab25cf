import { createNoteShelf } from '../store/device-notes.ts';
import { createIdbLog } from '../store/idb-log.ts';
import { createMemoryLog } from '../store/memory-log.ts';
import { createPictureShelf } from '../store/picture-shelf.ts';
import type { World } from './collection.ts';

/** IndexedDB, or memory in a window that refuses it; the page says which. */
export async function places(
  database: string,
  build: string,
): Promise<Pick<World, 'log' | 'shelf' | 'notes' | 'photos' | 'buyers' | 'inMemoryOnly'>> {
  try {
    const log = createIdbLog(`${database}-log`);
    await log.readAfter(Number.MAX_SAFE_INTEGER - 1);
    return {
      log,
      shelf: createPictureShelf(`${database}-picture`, build),
      notes: createNoteShelf(`${database}-notes`),
      photos: once(async () => (await photoShelves()).createPhotoShelf(`${database}-photos`)),
      buyers: once(async () => (await buyerShelves()).createBuyerShelf(`${database}-buyers`)),
      inMemoryOnly: false,
    };
  } catch {
    return { log: createMemoryLog(), ...forgetful(), inMemoryOnly: true };
  }
}

const photoShelves = () => import('../store/photo-shelf.ts');
const buyerShelves = () => import('../store/buyer-shelf.ts');

function once<Made>(make: () => Promise<Made>): () => Promise<Made> {
  let made: Promise<Made> | undefined;
  return () => (made ??= make());
}

function forgetful(): Pick<World, 'shelf' | 'notes' | 'photos' | 'buyers'> {
  let notes = {};
  return {
    shelf: { load: async () => undefined, save: async () => {}, clear: async () => {} },
    notes: {
      load: async () => notes,
      save: async (next) => {
        notes = next;
      },
      clear: async () => {},
    },
    photos: once(async () => (await photoShelves()).createMemoryPhotos()),
    buyers: once(async () => (await buyerShelves()).createMemoryBuyers()),
  };
}
