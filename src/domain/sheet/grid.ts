/** A row of a table, and the number a spreadsheet shows at its left. */
export interface GridRow {
  readonly line: number;
  readonly cells: readonly string[];
}

/** Cells joined into one that shows the first of them; all counted from 0. */
export interface Merged {
  readonly firstLine: number;
  readonly lastLine: number;
  readonly firstColumn: number;
  readonly lastColumn: number;
}

/**
 * One sheet as plain text, whatever file it came from. A real date is written `2024-07-31`, with a
 * time `2024-07-31 21:10`, so that it can be read in one way only.
 */
export interface Grid {
  readonly name: string;
  readonly rows: readonly GridRow[];
  readonly merged: readonly Merged[];
  /** Cells that are reckoned from others: what was reckoned last is taken. */
  readonly formulas: number;
  /** Of these, the ones whose result the file does not hold. */
  readonly formulasWithout: number;
}

/** A file taken apart. */
export interface Workbook {
  /** What kind of file it was found to be, in words. */
  readonly kind: string;
  readonly sheets: readonly Grid[];
}

/** Letters of a column as spreadsheets show them. @example columnLetters(27) //=> 'AB' */
export function columnLetters(column: number): string {
  const last = String.fromCharCode(65 + (column % 26));
  return column < 26 ? last : columnLetters(Math.floor(column / 26) - 1) + last;
}

/** Every cell of a merged block says what its first cell says. */
export function filled({ rows, merged }: Grid): readonly GridRow[] {
  if (merged.length === 0) return rows;
  const byLine = new Map(rows.map(({ line, cells }) => [line, [...cells]]));
  for (const { firstLine, lastLine, firstColumn, lastColumn } of merged) {
    const text = byLine.get(firstLine)?.[firstColumn] ?? '';
    for (let line = firstLine; line <= lastLine; line += 1) {
      const cells = byLine.get(line);
      if (!cells) continue;
      for (let column = firstColumn; column <= lastColumn; column += 1) {
        while (cells.length < column) cells.push('');
        cells[column] = text;
      }
    }
  }
  return rows.map(({ line, cells }) => ({ line, cells: byLine.get(line) ?? cells }));
}
