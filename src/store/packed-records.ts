/**
 * Some thousands of records as one table, which is read from disk in half the time.
 *
 * Records repeat themselves: the same snake, the same meal, the same few shapes. Each value stands
 * here once and is named by its number, and is then one value in memory too.
 */
export interface PackedRecords {
  /** The names of the fields of each shape, in order. Shape 0 is a record that is one value. */
  readonly shapes: readonly (readonly string[])[];
  /** Values are numbered from 0 through all three. Texts, between line feeds… */
  readonly texts: string;
  readonly numbers: Float64Array;
  /** …and a JSON array of whatever is neither a plain text nor a number. */
  readonly others: string;
  /** Of each record its shape, then a value for each field of it. */
  readonly cells: Uint32Array;
}

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
  const first = [0, texts.all().length, texts.all().length + numbers.all().length, 0];
  return {
    shapes: shapes.all().map((names) => JSON.parse(names) as readonly string[]),
    texts: texts.all().join('\n'),
    numbers: Float64Array.from(numbers.all()),
    others: `[${others.all().join(',')}]`,
    cells: Uint32Array.from(kept, (each) => (first[each % KINDS] ?? 0) + Math.floor(each / KINDS)),
  };
}

/** The records in the order in which they were packed; what is equal in them is one and the same. */
export function unpackRecords({ shapes, texts, numbers, others, cells }: PackedRecords): unknown[] {
  const values = (texts.split('\n') as unknown[]).concat([...numbers], JSON.parse(others));
  const records: unknown[] = [];
  // A start waits for this 100,000 times: hence plain loops.
  let at = 0;
  while (at < cells.length) {
    const names = shapes[cells[at++] ?? 0] ?? [];
    if (names.length === 0) {
      records.push(values[cells[at++] ?? 0]);
    } else {
      const record: Record<string, unknown> = {};
      for (const name of names) record[name] = values[cells[at++] ?? 0];
      records.push(record);
    }
  }
  return records;
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
