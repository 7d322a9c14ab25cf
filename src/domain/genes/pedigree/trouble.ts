/** Why an animal's chances were not worked out. Nothing is ever left out to make it fit. */
export type Trouble = TooLarge | Contradiction;

/** So interwoven that the tables would not fit the limit. Nothing was computed. */
export interface TooLarge {
  readonly kind: 'too-large';
  /** Animals in the largest table. */
  readonly width: number;
  /** Numbers in all tables together. */
  readonly cells: number;
  readonly animals: readonly string[];
}

/** The records cannot all be true at this locus, with these parents. */
export interface Contradiction {
  readonly kind: 'contradiction';
  /** Findings that cannot stand together with those priors; leave any one out and they can. */
  readonly findings: readonly string[];
  /** Animals whose prior (stated, or wild type as none was stated) is one of the reasons. */
  readonly priors: readonly string[];
  /** Animals that nothing can be said of while that stands. */
  readonly animals: readonly string[];
}

/** Numbers a table, or all tables together, may hold before it is called too large: 32 MB. */
export const MOST_CELLS = 4_000_000;

export interface Limits {
  readonly mostCells?: number;
}
