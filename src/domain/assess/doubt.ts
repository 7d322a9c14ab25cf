import type { Refusal } from '../core/result.ts';

/** Something that looks wrong but may be right: the keeper is asked, and his word stands. */
export interface Doubt {
  readonly code: string;
  /** What looks wrong, with the value and what it is held against. */
  readonly message: string;
  /** The likely intended value, as a button; of two axes, both. */
  readonly instead?:
    | { readonly label: string; readonly value: number; readonly across?: number | undefined }
    | undefined;
}

/** What stands against writing a record down, by how strongly. */
export interface Verdict {
  /** It cannot be right: it is not written. */
  readonly refusals: readonly Refusal[];
  /** It is written once the keeper says so. */
  readonly doubts: readonly Doubt[];
  /** It is written, with this beside it. */
  readonly notes: readonly string[];
}

export const noObjection: Verdict = { refusals: [], doubts: [], notes: [] };
