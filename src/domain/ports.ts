/**
 * Where records are kept. `src/store` provides it; `tests/store` holds its contract.
 *
 * Records are kept as they are, also those this version cannot read.
 */
export interface EventLog {
  /**
   * Adds all of the records or none of them, and resolves once they are safe on disk. Returns the
   * position of the last one.
   *
   * Errors: Fault `storage-full` or `storage-failed`; then nothing was added.
   */
  append(records: readonly unknown[]): Promise<number>;
  /** All records added after a position, and the position of the last; 0 reads the whole log. */
  readAfter(
    position: number,
  ): Promise<{ readonly records: readonly unknown[]; readonly position: number }>;
  /** Packs what was added one by one, so that the next start is fast. Changes no record. */
  tidy(): Promise<void>;
  /** Deletes the whole log, as for the demo collection. */
  erase(): Promise<void>;
}
