import { ok, refuse, type Result } from '../core/result.ts';

/** One record of a CSV file, and the line it begins on, counted from 1 as editors do. */
export interface CsvRow {
  readonly line: number;
  readonly cells: readonly string[];
}

export const separators = [';', '\t', ','] as const;
export type Separator = (typeof separators)[number];

/**
 * Cuts a CSV text into rows and cells. Source: RFC 4180 §2, and for the separator what exports of
 * other regions use. Empty lines are left out. Where a file strays from the standard, its text is
 * kept as it is: a quotation mark inside a plain cell is one, as in `5" probe`.
 *
 * Errors: refuses a text in which a quotation mark is never closed, and names its line.
 */
export function splitCsv(text: string, separator: Separator): Result<readonly CsvRow[]> {
  const rows: CsvRow[] = [];
  let line = 1;
  let at = text.startsWith('\uFEFF') ? 1 : 0;
  while (at < text.length) {
    const begun = line;
    const cells: string[] = [];
    for (;;) {
      let cell = '';
      if (text.charAt(at) === '"') {
        const closed = readQuoted(text, at);
        if (!closed) {
          return refuse('csv-open-quote', `A quotation mark on line ${line} is never closed.`);
        }
        cell = closed.cell;
        line += closed.breaks;
        at = closed.end;
      }
      const end = endOfCell(text, at, separator);
      cells.push(cell + text.slice(at, end));
      at = end + 1;
      if (text.charAt(end) !== separator) break;
    }
    if (text.charAt(at - 1) === '\r' && text.charAt(at) === '\n') at += 1;
    line += 1;
    if (cells.length > 1 || cells[0]?.trim() !== '') rows.push({ line: begun, cells });
  }
  return ok(rows);
}

/** Where the cell ends that begins at a place: at a separator, the line's end or the text's. */
function endOfCell(text: string, from: number, separator: Separator): number {
  for (let at = from; at < text.length; at += 1) {
    const symbol = text.charAt(at);
    if (symbol === separator || symbol === '\n' || symbol === '\r') return at;
  }
  return text.length;
}

/** A quoted cell, with `""` for a quotation mark in it, and the line breaks inside. */
function readQuoted(
  text: string,
  from: number,
): { readonly cell: string; readonly end: number; readonly breaks: number } | undefined {
  let cell = '';
  for (let at = from + 1; ;) {
    const quote = text.indexOf('"', at);
    if (quote < 0) return undefined;
    cell += text.slice(at, quote);
    if (text.charAt(quote + 1) !== '"') {
      return { cell, end: quote + 1, breaks: cell.match(/\r\n|\n|\r/g)?.length ?? 0 };
    }
    cell += '"';
    at = quote + 2;
  }
}

/** Lines looked at to find out how a file is built. */
const FIRST_LINES = 60;
const FIRST_LETTERS = 40_000;

/**
 * The separator a text seems to be written with: the one that cuts most of its first lines into the
 * same number of cells, two at least.
 */
export function guessSeparator(text: string): Separator | undefined {
  const start = text
    .slice(0, FIRST_LETTERS)
    // A quoted cell may hold line breaks, and the separator of others.
    .replaceAll(/(^|[\t;,\r\n])"(?:[^"]|"")*"/g, '$1')
    .split(/\r\n|\n|\r/, FIRST_LINES)
    .filter((each) => each !== '');
  let best: { readonly separator: Separator; readonly score: number } | undefined;
  for (const separator of separators) {
    const counts = new Map<number, number>();
    for (const each of start) {
      const cells = each.split(separator).length;
      if (cells > 1) counts.set(cells, (counts.get(cells) ?? 0) + 1);
    }
    const score = Math.max(0, ...counts.values());
    if (score > (best?.score ?? 0)) best = { separator, score };
  }
  return best?.separator;
}
