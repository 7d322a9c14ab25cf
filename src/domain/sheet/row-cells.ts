import type { Day } from '../core/calendar.ts';
import { dateWords } from '../core/day-words.ts';
import { hasDecimalComma, inBase, readAmount, contradictionIn, type Unit } from './amount.ts';
import type { Column, Table } from './columns.ts';
import { readClockMs, readDay } from './day.ts';
import type { GridRow } from './grid.ts';
import type { CellAsk, Fault, When } from './item.ts';
import type { Meaning } from './meanings.ts';
import { isBlank } from './trade-text.ts';

/** A cell that says something, and its column. */
export interface Said {
  readonly column: Column;
  readonly text: string;
  readonly heading: string;
  readonly line: number;
}

/** An amount in the unit used inside, and as it was written where that was another. */
export interface AmountRead {
  readonly base: number;
  readonly value: number;
  readonly unit: Unit;
  readonly asks: readonly CellAsk[];
}

export interface DayRead extends When {
  readonly asks: readonly CellAsk[];
}

const OLDEST_DAY = '1990-01-01';
/** An apostrophe keeps a spreadsheet from reckoning with what stands behind it. */
const withoutGuard = (text: string): string => text.replace(/^'(?=\s*[=+\-@＝＋－＠])/, '');

/** Reads the cells of rows by what their columns hold, and keeps what it does not understand. */
export function createCells({ columns, rows }: Table, today: Day) {
  const faults = new Map<string, Fault>();
  const commas = new Map(
    columns.map(({ index, kind }) => [
      index,
      kind !== undefined && hasDecimalComma(rows.map(({ cells }) => cells[index] ?? '')),
    ]),
  );

  const fault = ({ line, heading, text }: Said, why: string): undefined => {
    faults.set(`${line}/${heading}/${why}`, { line, heading, text, why });
    return undefined;
  };

  return {
    fault,
    /** Each once, however often its cell was looked at. */
    faults: (): readonly Fault[] => [...faults.values()],
    /** All cells of a row that hold this and say something. */
    all: ({ cells, line }: GridRow, meaning: Meaning): readonly Said[] =>
      columns.flatMap((column) => {
        const text = withoutGuard((cells[column.index] ?? '').trim());
        return column.meaning !== meaning || isBlank(text)
          ? []
          : [{ column, text, line, heading: column.heading }];
      }),

    amount(said: Said): AmountRead | undefined {
      const { column, text } = said;
      const { kind, unit } = column;
      if (!kind) return undefined;
      const read = readAmount(text, kind, commas.get(column.index) ?? false);
      const own = read?.unit ?? unit?.unit;
      if (!read || own === undefined)
        return fault(said, `is no ${kind === 'mass' ? 'weight' : kind}`);
      const twice = contradictionIn({ ...read, unit: own }, kind);
      return {
        base: Math.round(inBase(kind, read.value, own) * 10) / 10,
        value: read.value,
        unit: own,
        asks:
          twice === undefined
            ? []
            : [{ code: 'says-two', message: `${twice}. Take ${read.value} ${own}?` }],
      };
    },

    day(said: Said): DayRead | undefined {
      const { column, text } = said;
      if (!column.order) return undefined;
      const read = readDay(text, column.order);
      if (!read)
        return fault(said, text.startsWith('#') ? 'is an error of the workbook' : 'is no day');
      if (read.day < OLDEST_DAY) return fault(said, 'is before 1990');
      if (read.day > today) return fault(said, 'is still to come');
      const ask = {
        code: 'other-order',
        message: `“${text}” can only be ${dateWords(read.day)}, unlike the rest of its column. Read it so?`,
      };
      return { day: read.day, clockMs: read.clockMs, asks: read.againstOrder ? [ask] : [] };
    },

    clock(said: Said): number | undefined {
      return readClockMs(said.text) ?? fault(said, 'is no time of day');
    },
  };
}

export type Cells = ReturnType<typeof createCells>;
