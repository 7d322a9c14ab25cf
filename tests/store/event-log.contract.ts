import { beforeEach, describe, expect, test } from 'vitest';
import type { EventLog } from '../../src/domain/ports.ts';
import { anEvent } from '../make.ts';

/** Records by number, so that a test can say which ones it means. */
const records = (from: number, howMany: number): unknown[] =>
  Array.from({ length: howMany }, (_, i) => ({ n: from + i }));

const byNumber = (found: readonly unknown[]): number[] =>
  found.map((each) => (each as { n: number }).n).toSorted((a, b) => a - b);

const numbers = (from: number, to: number): number[] =>
  Array.from({ length: to - from + 1 }, (_, i) => from + i);

/** What every EventLog promises, run against each one that exists. */
export function describeEventLog(name: string, create: () => EventLog): void {
  describe(`${name} keeps the promises of a log`, () => {
    let log: EventLog;
    beforeEach(() => {
      log = create();
    });

    test('it is empty at first', async () => {
      expect(await log.readAfter(0)).toEqual({ records: [], position: 0 });
    });

    test('it gives back what was added, letter for letter', async () => {
      const weighed = anEvent('weighed', { remark: '<b>&amp; 🐍' });
      const odd = { type: 'of a later version', nested: [null, { v: 9 }] };
      await log.append([weighed, odd]);
      expect((await log.readAfter(0)).records).toEqual([weighed, odd]);
    });

    test('positions count records, and reading after one gives the rest', async () => {
      expect(await log.append(records(1, 3))).toBe(3);
      expect(await log.append(records(4, 2))).toBe(5);
      expect(byNumber((await log.readAfter(3)).records)).toEqual([4, 5]);
      expect(await log.readAfter(5)).toEqual({ records: [], position: 5 });
      expect(await log.append([])).toBe(5);
    });

    test('whole batches and single records, in any mixture, read right from every position', async () => {
      const sizes = [1, 3, 700, 2, 1, 501, 40];
      let last = 0;
      for (const size of sizes) {
        expect(await log.append(records(last + 1, size))).toBe(last + size);
        last += size;
      }
      for (const after of [0, 1, 4, 5, 300, 704, 705, 707, 1_000, 1_208, last - 1, last]) {
        const read = await log.readAfter(after);
        expect(byNumber(read.records)).toEqual(numbers(after + 1, last));
        expect(read.position).toBe(last);
      }
    });

    test('packing loses nothing, doubles nothing and moves no position', async () => {
      let last = 0;
      for (const size of [1, 600, ...Array.from({ length: 9 }, () => 499), 5_000, 3]) {
        last = await log.append(records(last + 1, size));
      }
      await log.tidy();
      await log.tidy();
      for (const after of [0, 1, 2, 601, 602, 3_999, 4_000, 4_001, 5_092, 10_091, last]) {
        const read = await log.readAfter(after);
        expect(byNumber(read.records)).toEqual(numbers(after + 1, last));
      }
      expect(await log.append(records(last + 1, 1))).toBe(last + 1);
      expect(byNumber((await log.readAfter(last)).records)).toEqual([last + 1]);
    });

    test('erased, it is as new', async () => {
      await log.append(records(1, 700));
      await log.erase();
      expect(await log.readAfter(0)).toEqual({ records: [], position: 0 });
      expect(await log.append(records(1, 2))).toBe(2);
    });
  });
}
