import type { PackedRecords } from './packed-records.ts';

/** Has no line feed, and none of the letters that would cost all others a second byte. */
const PLAIN = /^[\u{20}-\u{7e}\u{a0}-\u{ff}]*$/u;

/** Kinds of number while their count is not known yet. */
const [TEXT, NUMBER, OTHER, SHAPE] = [0, 1, 2, 3];
const KINDS = 4;

/** Errors: throws a `TypeError` for a record that JSON cannot say. */
export function packRecords(records: readonly unknown[]): PackedRecords {
  const texts = createNumbering<string>();
  const numbers = createNumbering<number>();
  const others = createNumbering<string>();
  const shapes = createNumbering<string>();
  texts.numberOf(''); // No texts at all could not be told from an empty one.
  shapes.numberOf('[]');

  const kept: number[] = [];
  const keep = (kind: number, number: number): unknown => kept.push(number * KINDS + kind);
  function keepValue(value: unknown): void {
    if (typeof value === 'number') keep(NUMBER, numbers.numberOf(value));
    else if (typeof value === 'string' && PLAIN.test(value)) keep(TEXT, texts.numberOf(value));
    else keep(OTHER, others.numberOf(inJson(value)));
  }
  for (const record of records) {
    const fields = isTable(record)
      ? Object.entries(record).filter(([, value]) => value !== undefined)
      : [];
    keep(SHAPE, shapes.numberOf(JSON.stringify(fields.map(([name]) => name))));
    if (fields.length === 0) keepValue(record);
    for (const [, value] of fields) keepValue(value);
  }
  const [allTexts, allNumbers] = [texts.all(), numbers.all()];
  const first = [0, allTexts.length, allTexts.length + allNumbers.length, 0];
  return {
    shapes: shapes.all().map((names) => JSON.parse(names) as readonly string[]),
    texts: allTexts.join('\n'),
    numbers: Float64Array.from(allNumbers),
    others: `[${others.all().join(',')}]`,
    cells: Uint32Array.from(kept, (each) => (first[each % KINDS] ?? 0) + Math.floor(each / KINDS)),
  };
}

/** Whether its fields can be set one by one: `__proto__` would set something else. */
const isTable = (record: unknown): record is object =>
  typeof record === 'object' &&
  record !== null &&
  !Array.isArray(record) &&
  !Object.hasOwn(record, '__proto__');

function inJson(value: unknown): string {
  const text = JSON.stringify(value) as string | undefined;
  if (text === undefined) throw new TypeError(`A ${typeof value} cannot be kept in a record.`);
  return text;
}

/** Numbers whatever it is shown, from 0, the same for what is equal. */
function createNumbering<Each>() {
  const numbers = new Map<Each, number>();
  return {
    numberOf(each: Each): number {
      const number = numbers.get(each) ?? numbers.size;
      if (number === numbers.size) numbers.set(each, number);
      return number;
    },
    all: (): readonly Each[] => [...numbers.keys()],
  };
}
