/** One fact against the keeper's own limit. Several stand side by side, and never become one score. */
export interface ReadinessLine {
  readonly what:
    | 'Mass'
    | 'Age'
    | 'Appetite'
    | 'Body'
    | 'First meal'
    | 'Last clutch'
    | 'Off year'
    | 'Quarantine'
    | 'Started smaller';
  readonly says: string;
  /** Whether it meets the limit; undefined where there is none, or nothing is known. */
  readonly isMet?: boolean | undefined;
}
