import type { EventLog } from '../domain/ports.ts';

/** The log without a disk: for tests, and for browsers that refuse storage. */
export function createMemoryLog(): EventLog {
  let records: readonly unknown[] = [];
  return {
    async append(more) {
      records = [...records, ...more];
      return records.length;
    },
    async readAfter(position) {
      return { records: records.slice(position), position: records.length };
    },
    async tidy() {},
    async erase() {
      records = [];
    },
  };
}
