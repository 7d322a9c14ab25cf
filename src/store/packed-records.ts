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
