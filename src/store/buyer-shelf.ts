import { promisifyRequest } from 'idb-keyval';
import type { BuyerId } from '../domain/core/ids.ts';
import type { Buyer } from '../domain/sale/buyer.ts';
import { durableStore } from './durable-store.ts';
import { saving } from './saving.ts';

/**
 * Buyers, apart from the log: that only grows and travels in backups, and a name must be erasable.
 * `erase` resolves when it is gone from the disk.
 */
export interface BuyerShelf {
  keep(buyer: Buyer): Promise<void>;
  /** In no order. */
  all(): Promise<readonly Buyer[]>;
  erase(id: BuyerId): Promise<void>;
  clear(): Promise<void>;
}

export function createBuyerShelf(databaseName: string): BuyerShelf {
  const use = durableStore(databaseName, 'buyers');
  const change = (work: (store: IDBObjectStore) => void): Promise<void> =>
    use('readwrite', async (store) => {
      work(store);
      await promisifyRequest(store.transaction);
    });
  return {
    keep: (buyer) => saving('this buyer', () => change((store) => store.put(buyer, buyer.id))),
    all: () => use('readonly', (store) => promisifyRequest<Buyer[]>(store.getAll())),
    erase: (id) => change((store) => store.delete(id)),
    clear: () => change((store) => store.clear()),
  };
}

/** The same without a disk: for tests, and for browsers that refuse storage. */
export function createMemoryBuyers(): BuyerShelf {
  const buyers = new Map<BuyerId, Buyer>();
  return {
    async keep(buyer) {
      buyers.set(buyer.id, buyer);
    },
    all: async () => [...buyers.values()],
    async erase(id) {
      buyers.delete(id);
    },
    async clear() {
      buyers.clear();
    },
  };
}
