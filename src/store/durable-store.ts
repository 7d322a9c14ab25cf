import type { UseStore } from 'idb-keyval';

/**
 * A store for idb-keyval whose writes are on disk when they resolve.
 *
 * idb-keyval's own stores leave the durability to the browser, and Chromium's default is to answer
 * before the disk has it. A record that was confirmed must outlive a flat battery.
 */
export function durableStore(databaseName: string, storeName: string): UseStore {
  let opening: Promise<IDBDatabase> | undefined;

  const open = (): Promise<IDBDatabase> =>
    (opening ??= new Promise((resolve, reject) => {
      const request = indexedDB.open(databaseName, 1);
      request.addEventListener('upgradeneeded', () => request.result.createObjectStore(storeName));
      request.addEventListener('error', () => {
        opening = undefined;
        reject(request.error ?? new Error('The database did not open.'));
      });
      request.addEventListener('success', () => {
        const database = request.result;
        // Another tab wants to delete it: let go, or it waits for ever.
        database.addEventListener('versionchange', () => {
          database.close();
          opening = undefined;
        });
        database.addEventListener('close', () => {
          opening = undefined;
        });
        resolve(database);
      });
    }));

  return async (mode, use) => {
    const database = await open();
    const transaction = database.transaction(
      storeName,
      mode,
      mode === 'readwrite' ? { durability: 'strict' } : {},
    );
    return use(transaction.objectStore(storeName));
  };
}
