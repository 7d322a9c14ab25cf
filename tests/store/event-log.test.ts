import 'fake-indexeddb/auto';
import { promisifyRequest } from 'idb-keyval';
import { expect, test } from 'vitest';
import { durableStore } from '../../src/store/durable-store.ts';
import { createIdbLog } from '../../src/store/idb-log.ts';
import { createMemoryLog } from '../../src/store/memory-log.ts';
import { describeEventLog } from './event-log.contract.ts';

const fresh = (): string => crypto.randomUUID();

describeEventLog('the memory log', createMemoryLog);
describeEventLog('the log in IndexedDB', () => createIdbLog(fresh()));

test('a batch is added whole or not at all', async () => {
  const log = createIdbLog(fresh());
  await log.append([{ n: 1 }]);
  const cannotBeStored = { n: 3, of: () => 'functions are not stored' };
  await expect(log.append([{ n: 2 }, cannotBeStored])).rejects.toMatchObject({
    name: 'Fault',
    code: 'storage-failed',
    remedy: expect.stringMatching(/\.$/),
  });
  expect(await log.readAfter(0)).toEqual({ records: [{ n: 1 }], position: 1 });
  expect(await log.append([{ n: 2 }])).toBe(2);
});

test('what was added is there for the next one who opens it', async () => {
  const name = fresh();
  await createIdbLog(name).append([{ n: 1 }]);
  expect((await createIdbLog(name).readAfter(0)).records).toEqual([{ n: 1 }]);
});

test('a log that an earlier program packed as plain lists is read on, and goes on', async () => {
  const name = fresh();
  const use = durableStore(name, 'log');
  const records = Array.from({ length: 600 }, (_, i) => ({ n: i + 1 }));
  await use('readwrite', (store) => {
    store.put(records, ['s', 600]);
    store.put(601, 'next');
    return promisifyRequest(store.transaction);
  });
  const log = createIdbLog(name);
  expect(await log.readAfter(0)).toEqual({ records, position: 600 });
  const more = records.map(({ n }) => ({ n: n + 600 }));
  expect(await log.append(more)).toBe(1_200);
  expect(await log.readAfter(599)).toEqual({ records: [{ n: 600 }, ...more], position: 1_200 });
});

test('two tabs that write at once lose no record, double none and share no position', async () => {
  const name = fresh();
  const tabs = [createIdbLog(name), createIdbLog(name)];
  const sizes = [1, 2, 600, 1, 3, 1, 501, 2];
  const added = await Promise.all(
    sizes.flatMap((size, batch) =>
      tabs.map((log, tab) =>
        log.append(Array.from({ length: size }, (_, i) => `${tab}-${batch}-${i}`)),
      ),
    ),
  );
  const total = 2 * sizes.reduce((sum, size) => sum + size, 0);
  const read = await createIdbLog(name).readAfter(0);
  expect(new Set(added).size).toBe(added.length);
  expect(read.position).toBe(total);
  expect(read.records).toHaveLength(total);
  expect(new Set(read.records).size).toBe(total);
});
