import type { Result } from '../core/result.ts';
import type { SheetAsk } from './asked.ts';
import type { Answers } from './asked.ts';
import type { ColumnChoice } from './columns.ts';
import type { Measured, Unit } from './amount.ts';
import type { OrderGuess } from './day-order.ts';
import type { UnknownWord } from './item.ts';
import type { Meaning } from './meanings.ts';

/** What the keeper said of a file so far; all else is guessed. */
export interface SheetChoices {
  /** Which sheet of a workbook, counted from 0. */
  readonly sheet: number;
  /** Only the first cell of a merged block says something. */
  readonly leaveMerged: boolean;
  readonly columns: Readonly<Record<number, ColumnChoice>>;
  /** What words mean that are not known here. */
  readonly words: Readonly<Record<string, string>>;
  readonly answers: Answers;
}

export const noChoices: SheetChoices = {
  sheet: 0,
  leaveMerged: false,
  columns: {},
  words: {},
  answers: {},
};

/** A column as it was understood, to be confirmed or put right. */
export interface ColumnPreview {
  readonly index: number;
  readonly letters: string;
  readonly heading: string;
  readonly samples: readonly string[];
  readonly meaning: Meaning;
  readonly unit?:
    | {
        readonly unit: Unit;
        readonly kind: Measured;
        readonly because: string;
        readonly isOpen: boolean;
      }
    | undefined;
  readonly order?: OrderGuess | undefined;
  /** What else was noticed, such as an amount said twice in two ways. */
  readonly notes: readonly string[];
}

/** Cells and rows that are left out for one reason. */
export interface LeftOut {
  readonly why: string;
  readonly heading: string;
  readonly count: number;
  /** Line numbers, as in `3–5, 7`. */
  readonly lines: string;
  readonly example: string;
}

/** What taking the file in would do. */
export interface SheetPreview {
  readonly kind: string;
  readonly sheets: readonly { readonly name: string; readonly rows: number }[];
  readonly sheet: number;
  readonly merged: number;
  readonly formulas: number;
  readonly formulasWithout: number;
  readonly headingLine?: number | undefined;
  readonly rows: number;
  readonly columns: readonly ColumnPreview[];
  readonly words: readonly UnknownWord[];
  readonly newAnimals: number;
  readonly knownAnimals: number;
  /** New records by what they are, snakes left out. */
  readonly records: readonly { readonly what: string; readonly count: number }[];
  /** New records in all, snakes too. */
  readonly fresh: number;
  /** Records that are here already. */
  readonly known: number;
  /** The first questions; there may be more. */
  readonly asks: readonly SheetAsk[];
  readonly askCount: number;
  /** Questions by what they are about, and how many of each are open. */
  readonly askKinds: readonly {
    readonly code: string;
    readonly count: number;
    readonly open: number;
  }[];
  readonly openCount: number;
  readonly leftOut: readonly LeftOut[];
  readonly leftOutCount: number;
  /** What has to be said of columns before anything can be taken in. */
  readonly mustSay: readonly string[];
}

/** A spreadsheet that was taken in, and can be undone as a whole. */
export interface SheetTaken {
  /** The five symbols at the end of the id of each of its records. */
  readonly mark: string;
  readonly name: string;
  /** Of the file, in bytes. */
  readonly size: number;
  /** Milliseconds since 1970. */
  readonly atMs: number;
  /** False where it was broken off: the same file again completes it. */
  readonly isWhole: boolean;
}

/** A file as the page hands it over. */
export interface SheetFile {
  readonly name: string;
  readonly size: number;
  arrayBuffer(): Promise<ArrayBuffer>;
}

// The desk's words about spreadsheets, a part of those in `desk.ts`.

export interface SheetCommands {
  /** Looks into a spreadsheet and says what it would add. Changes nothing. */
  readonly lookIntoSheet: {
    readonly ask: {
      /** Absent: the one looked into last. */
      readonly file?: SheetFile | undefined;
      readonly choices: SheetChoices;
    };
    readonly answer: Result<SheetPreview>;
  };
  /** Writes down the next part of what the last look found; asked again until all is written. */
  readonly takeInSheet: {
    readonly ask: null;
    readonly answer: Result<{
      readonly written: number;
      readonly total: number;
      readonly mark: string;
    }>;
  };
  /** What the last look leaves out, as CSV with the reasons. */
  readonly sheetLeftOut: {
    readonly ask: null;
    readonly answer: { readonly fileName: string; readonly text: string };
  };
  /** Spreadsheets that were taken in on this device and still count. */
  readonly sheetsTaken: {
    readonly ask: null;
    readonly answer: readonly (SheetTaken & {
      readonly records: number;
      /** What was written down since about snakes that came with it. */
      readonly since: number;
    })[];
  };
  /** Strikes all records of one, in one go. */
  readonly undoSheet: { readonly ask: string; readonly answer: Result<number> };
}
