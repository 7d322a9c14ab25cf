import type { Day } from '../core/calendar.ts';
import type { EventOf } from '../events/event.ts';
import type { Sex } from '../events/life.ts';

type Fields<Type extends 'weighed' | 'meal-offered' | 'shed' | 'measured' | 'noted'> = Omit<
  EventOf<Type>,
  | 'id'
  | 'at'
  | 'precision'
  | 'notBefore'
  | 'loggedAt'
  | 'device'
  | 'by'
  | 'place'
  | 'replaces'
  | 'v'
  | 'animal'
>;

/** What a record says, whoever it is about and whenever it was. */
export type Content =
  | Fields<'weighed'>
  | Fields<'meal-offered'>
  | Fields<'shed'>
  | Fields<'measured'>
  | Fields<'noted'>
  | { readonly type: 'opaque-seen' | 'regurgitated' };

/** A question that a cell itself raises. */
export interface CellAsk {
  readonly code: string;
  readonly message: string;
}

/** When it was, as well as the file says. */
export interface When {
  readonly day: Day;
  readonly clockMs?: number | undefined;
}

/** One record to be, read from a row. */
export interface Item {
  /** Names it from one look at the file to the next: `14/weighed`. */
  readonly key: string;
  readonly line: number;
  /** What stands in the file. */
  readonly text: string;
  /** Absent: no day stands with it. */
  readonly when?: When | undefined;
  readonly content: Content;
  readonly asks: readonly CellAsk[];
}

/** A cell that was not understood: it is left out, the rest of its row counts. */
export interface Fault {
  readonly line: number;
  readonly heading: string;
  readonly text: string;
  readonly why: string;
}

/** What a row says of the snake itself. */
export interface Facts {
  readonly sex?: Sex | undefined;
  readonly hatchedDay?: Day | undefined;
  readonly traits?: string | undefined;
  readonly position?: string | undefined;
  readonly arrivedDay?: Day | undefined;
}

export interface RowRead {
  readonly line: number;
  /** Empty: it says no name. */
  readonly name: string;
  readonly facts: Facts;
  readonly items: readonly Item[];
}

/** A word of a closed list that is not known: the keeper says what it means. */
export interface UnknownWord {
  /** `sex:hembra` */
  readonly key: string;
  readonly word: string;
  readonly heading: string;
  readonly count: number;
  readonly firstLine: number;
  /** What it can mean. */
  readonly choices: readonly string[];
  /** What it is taken for now; undefined: it is left out. */
  readonly as?: string | undefined;
}
