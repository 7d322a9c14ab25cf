/** What the keeper said to a question. */
export type Answer = 'accept' | 'leave' | 'instead';

/** What looks wrong in a file but may be right. Until it is answered it is left out. */
export interface SheetAsk {
  /** Names it from one look at the file to the next. */
  readonly key: string;
  readonly code: string;
  readonly line: number;
  readonly name: string;
  /** What stands there, and what looks wrong with it. */
  readonly text: string;
  readonly messages: readonly string[];
  /** What a yes does; undefined where it cannot be right. */
  readonly accept?: string | undefined;
  readonly leave: string;
  /** What was likely meant. */
  readonly instead?: string | undefined;
  readonly answer?: Answer | undefined;
}

export type Answers = Readonly<Record<string, Answer>>;
