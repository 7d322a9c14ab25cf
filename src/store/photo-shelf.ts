import { promisifyRequest } from 'idb-keyval';
import type { PhotoId } from '../domain/core/ids.ts';
import { durableStore } from './durable-store.ts';
import { saving } from './saving.ts';

/** A picture that is here, and what it takes. */
export interface KeptPhoto {
  readonly id: PhotoId;
  readonly bytes: number;
}

/** Pictures, as JPEG, apart from the log that names them. */
export interface PhotoShelf {
  keep(id: PhotoId, jpeg: Uint8Array): Promise<void>;
  /** The caller's own copy; undefined where it was kept on another device. */
  load(id: PhotoId): Promise<Uint8Array | undefined>;
  drop(id: PhotoId): Promise<void>;
  /** All of them, the oldest first. Reads none. */
  list(): Promise<readonly KeptPhoto[]>;
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
    list: () =>
      use('readonly', async (store) => {
        const keys = await promisifyRequest(store.getAllKeys());
        return (keys as [PhotoId, number][]).map(([id, bytes]) => ({ id, bytes }));
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
    load: async (id) => photos.get(id)?.slice(),
    async drop(id) {
      photos.delete(id);
    },
    list: async () =>
      [...photos]
        .map(([id, { byteLength: bytes }]) => ({ id, bytes }))
        .toSorted((a, b) => (a.id < b.id ? -1 : 1)),
    async clear() {
      photos.clear();
    },
  };
}
