/** What taking in a backup would add, before it does. */
export interface RestorePreview {
  readonly made: string;
  readonly records: number;
  readonly fresh: number;
  readonly known: number;
  /** Kept as they are, not understood by this version; the first few reasons. */
  readonly unreadable: number;
  readonly reasons: readonly string[];
  readonly animals: number;
  /** Of a backup with pictures: those that are not here yet, what they take, and those that are. */
  readonly pictures?:
    { readonly fresh: number; readonly freshBytes: number; readonly known: number } | undefined;
}
