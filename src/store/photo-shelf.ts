import { promisifyRequest } from 'idb-keyval';
import type { PhotoId } from '../domain/core/ids.ts';
import { durableStore } from './durable-store.ts';
import { saving } from './saving.ts';

/** What pictures take on this device. */
export interface PhotoRoom {
  readonly count: number;
  readonly bytes: number;
}

/** Pictures, as JPEG, apart from the log that names them. */
export interface PhotoShelf {
  keep(id: PhotoId, jpeg: Uint8Array): Promise<void>;
  /** Undefined where it was kept on another device. */
  load(id: PhotoId): Promise<Uint8Array | undefined>;
  drop(id: PhotoId): Promise<void>;
  room(): Promise<PhotoRoom>;
  clear(): Promise<void>;
}

/** Keys are `[id, bytes]`, so that what all of them take is known without reading one. */
const keyed = (id: PhotoId) => IDBKeyRange.bound([id], [id, Infinity]);

export function createPhotoShelf(databaseName: string): PhotoShelf {
  const use = durableStore(databaseName, 'photos');
  return {
    keep: (id, jpeg) =>
      saving('this picture', () =>
        use('readwrite', async (store) => {
          store.put(jpeg, [id, jpeg.byteLength]);
          await promisifyRequest(store.transaction);
        }),
      ),
    load: (id) =>
      use('readonly', (store) => promisifyRequest<Uint8Array | undefined>(store.get(keyed(id)))),
    drop: (id) =>
      use('readwrite', async (store) => {
        store.delete(keyed(id));
        await promisifyRequest(store.transaction);
      }),
    room: () =>
      use('readonly', async (store) => {
        const keys = await promisifyRequest(store.getAllKeys());
        const sizes = keys.map((key) => (Array.isArray(key) ? Number(key[1]) : 0));
        return { count: sizes.length, bytes: sizes.reduce((sum, bytes) => sum + bytes, 0) };
      }),
    clear: () =>
      use('readwrite', async (store) => {
        store.clear();
        await promisifyRequest(store.transaction);
      }),
  };
}

/** The same without a disk: for tests, and for browsers that refuse storage. */
export function createMemoryPhotos(): PhotoShelf {
  const photos = new Map<PhotoId, Uint8Array>();
  return {
    async keep(id, jpeg) {
      photos.set(id, jpeg);
    },
    load: async (id) => photos.get(id),
    async drop(id) {
      photos.delete(id);
    },
    room: async () => ({
      count: photos.size,
      bytes: [...photos.values()].reduce((sum, { byteLength }) => sum + byteLength, 0),
    }),
    async clear() {
      photos.clear();
    },
  };
}
