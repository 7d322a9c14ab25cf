import fc from 'fast-check';
import { expect, test } from 'vitest';
import { packRecords } from '../../src/store/pack-records.ts';
import { unpackRecords } from '../../src/store/packed-records.ts';
import { anyEvent, runs } from '../arbitrary.ts';

/** What a log may hold: records of today, and whatever a file once held in place of one. */
const anyRecord = fc.oneof(
  { weight: 4, arbitrary: anyEvent },
  fc.dictionary(fc.string(), fc.jsonValue()),
  fc.jsonValue(),
);

/** As the disk keeps it: values and their kinds, and nothing of how they lie in memory. */
const throughDisk = <Value>(value: Value): Value => structuredClone(value);

test('what is packed is unpacked, letter for letter and in its order, whatever it is', () => {
  fc.assert(
    fc.property(fc.array(anyRecord, { maxLength: 40 }), (records) => {
      // JSON, which every record came through or goes to, knows one zero.
      const kept = JSON.parse(JSON.stringify(records)) as unknown[];
      const unpacked = unpackRecords(throughDisk(packRecords(kept)));
      expect(JSON.stringify(unpacked)).toBe(JSON.stringify(kept));
      expect(unpacked).toEqual(kept);
    }),
    runs(500),
  );
});

test.each([
  { what: 'nothing', records: [] },
  { what: 'no text at all', records: [{ n: 1 }, 2, null, true] },
  { what: 'one empty text', records: [''] },
  { what: 'line feeds', records: [{ text: 'first\nsecond' }, 'a\nb', { text: 'first' }] },
  { what: 'letters of any script', records: [{ text: 'Ätzrüßler 🐍 蛇 \u2028 \ud800' }] },
  { what: 'a number and its text', records: [{ n: 1 }, { n: '1' }] },
  {
    what: 'the same fields in another order',
    records: [
      { a: 1, b: 2 },
      { b: 2, a: 1 },
    ],
  },
  {
    what: 'numbers that take a double',
    records: [{ n: 0.1 + 0.2 }, { n: -1e300 }, { n: 2 ** 53 }],
  },
])('$what comes back as it was', ({ records }) => {
  const unpacked = unpackRecords(throughDisk(packRecords(records)));
  expect(JSON.stringify(unpacked)).toBe(JSON.stringify(records));
  expect(unpacked).toStrictEqual(records);
});

test('a field named like an object’s prototype is a field like any other', () => {
  const records = [JSON.parse('{"__proto__":{"type":"noted"},"a":1}') as object, { a: 1 }];
  const [first, second] = unpackRecords(throughDisk(packRecords(records))) as [object, object];
  expect(JSON.stringify(first)).toBe('{"__proto__":{"type":"noted"},"a":1}');
  expect(Object.getPrototypeOf(first)).toBe(Object.prototype);
  expect(second).toEqual({ a: 1 });
});

test('a field left undefined is left out', () => {
  expect(unpackRecords(packRecords([{ a: undefined, b: 1 }]))).toStrictEqual([{ b: 1 }]);
});

test('what no file could hold is refused, and nothing of it packed', () => {
  expect(() => packRecords([{ n: 1 }, { of: () => 1 }])).toThrow(TypeError);
});

test('equal values are kept once: a thousand of the same take the room of one', () => {
  const record = { type: 'noted', text: 'the same words', prey: { kind: 'rat', count: 1 } };
  const packed = packRecords(Array.from({ length: 1_000 }, () => ({ ...record })));
  expect(packed.texts.length + packed.others.length).toBeLessThan(100);
  const [first, last] = [0, 999].map((i) => unpackRecords(packed)[i] as typeof record);
  expect(first).toEqual(record);
  expect(last).toEqual(record);
});
