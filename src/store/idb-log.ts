import { promisifyRequest, type UseStore } from 'idb-keyval';
import type { EventLog } from '../domain/ports.ts';
import { durableStore } from './durable-store.ts';
import { unpackRecords, type PackedRecords } from './packed-records.ts';
import { saving } from './saving.ts';

/**
 * Keys of the one object store. Records lie singly in the tail, `['e', position]`, until about
 * 4,000 of them are packed into a segment, `['s', last position]`: one record a key is right for
 * writing and six times too slow for reading. `next` is the next free position.
 */
const NEXT = 'next';
const tailFrom = (position: number) => IDBKeyRange.bound(['e', position], ['e', Infinity]);
const segmentsFrom = (position: number) => IDBKeyRange.bound(['s', position], ['s', Infinity]);

const SEGMENT_SIZE = 4_000;
/** From here a batch, as from a restore, is written as segments at once. */
const BATCH_SIZE = 500;

/** The log in IndexedDB, in a database of its own. */
export function createIdbLog(databaseName: string): EventLog {
  const use = durableStore(databaseName, 'log');

  return {
    append: (records) =>
      saving(records.length === 1 ? 'this record' : `${records.length} records`, async () => {
        const segments = records.length < BATCH_SIZE ? [] : await inSegments(records);
        return inOneTransaction(use, async (store) => {
          // The number is taken in the transaction that uses it: two tabs can never share one.
          const next = await nextPosition(store);
          for (const { last, packed } of segments) store.put(packed, ['s', next + last]);
          if (segments.length === 0) {
            for (const [i, record] of records.entries()) store.put(record, ['e', next + i]);
          }
          store.put(next + records.length, NEXT);
          return next + records.length - 1;
        });
      }),

    readAfter: (position) =>
      use('readonly', async (store) => {
        const keys = await promisifyRequest(store.getAllKeys(segmentsFrom(position + 1)));
        const [segments, tail, next] = await Promise.all([
          Promise.all(
            keys.map(async (key) => ({
              last: positionIn(key),
              records: recordsIn(await promisifyRequest<Segment>(store.get(key))),
            })),
          ),
          promisifyRequest<unknown[]>(store.getAll(tailFrom(position + 1))),
          nextPosition(store),
        ]);
        const packed = segments.flatMap(({ last, records }) => {
          const first = last - records.length + 1;
          return first > position ? records : records.slice(position - first + 1);
        });
        return { records: [...packed, ...tail], position: next - 1 };
      }),

    tidy: () =>
      saving('the log', async () => {
        const pack = await packer();
        await inOneTransaction(use, async (store) => {
          const keys = await promisifyRequest(store.getAllKeys(tailFrom(0), SEGMENT_SIZE));
          const last = keys.at(-1);
          if (keys.length < SEGMENT_SIZE || last === undefined) return;
          const range = IDBKeyRange.bound(['e', 0], last);
          const records = await promisifyRequest<unknown[]>(store.getAll(range));
          for (const { from, to, position } of runsIn(keys.map(positionIn))) {
            store.put(pack(records.slice(from, to)), ['s', position]);
          }
          store.delete(range);
        });
      }),

    erase: () =>
      use('readwrite', (store) => {
        store.clear();
        return finished(store.transaction);
      }),
  };
}

/** What packs is loaded when there is much to write, and before its transaction, which waits for no file. */
const packer = async () => (await import('./pack-records.ts')).packRecords;

/** A batch in segments, each with how many records of the batch stand before its last. */
async function inSegments(records: readonly unknown[]) {
  const pack = await packer();
  const count = Math.ceil(records.length / SEGMENT_SIZE);
  return Array.from({ length: count }, (_, i) => {
    const part = records.slice(i * SEGMENT_SIZE, (i + 1) * SEGMENT_SIZE);
    return { last: i * SEGMENT_SIZE + part.length - 1, packed: pack(part) };
  });
}

/** A segment holds consecutive positions, since its first is counted back from its last. */
function runsIn(positions: readonly number[]) {
  const ends = positions.flatMap((position, i) =>
    positions[i + 1] === position + 1 ? [] : [{ position, to: i + 1 }],
  );
  return ends.map((end, i) => ({ ...end, from: ends[i - 1]?.to ?? 0 }));
}

/** Segments of an earlier program are plain lists. */
type Segment = PackedRecords | readonly unknown[];
const recordsIn = (segment: Segment): readonly unknown[] =>
  'cells' in segment ? unpackRecords(segment) : segment;

const positionIn = (key: IDBValidKey): number => (Array.isArray(key) ? Number(key[1]) : 0);

const nextPosition = async (store: IDBObjectStore): Promise<number> =>
  (await promisifyRequest<number | undefined>(store.get(NEXT))) ?? 1;

const finished = (transaction: IDBTransaction): Promise<void> =>
  new Promise((resolve, reject) => {
    transaction.addEventListener('complete', () => resolve());
    const fail = () => reject(transaction.error ?? new Error('The transaction was given up.'));
    transaction.addEventListener('abort', fail);
    transaction.addEventListener('error', fail);
  });

/** Resolves only when the transaction is complete, which with strict durability means on disk. */
const inOneTransaction = <Answer>(
  use: UseStore,
  work: (store: IDBObjectStore) => Promise<Answer>,
): Promise<Answer> =>
  use('readwrite', async (store) => {
    const done = finished(store.transaction);
    // If `work` throws, `done` rejects too; without a listener that would be an unhandled rejection.
    done.catch(() => undefined);
    try {
      const answer = await work(store);
      await done;
      return answer;
    } catch (error) {
      try {
        store.transaction.abort();
      } catch {
        // Already aborted or complete.
      }
      throw error;
    }
  });
