import { writeCsv } from '../register/write-csv.ts';
import type { Fault } from './item.ts';
import type { Table } from './columns.ts';

/**
 * What is left out of a file, as CSV: the line, the reason, and the row as it stands, to be mended
 * and taken in again. It begins with a byte order mark, by which spreadsheets know UTF-8.
 */
export function leftOutFile(faults: readonly Fault[], { rows, columns }: Table): string {
  const byLine = new Map(rows.map(({ line, cells }) => [line, cells]));
  const reasons = new Map<number, string[]>();
  for (const { line, heading, text, why } of faults) {
    const words = text === '' ? why : `${heading}: “${text}” ${why}`;
    reasons.set(line, [...(reasons.get(line) ?? []), words]);
  }
  const lines = [...reasons]
    .toSorted(([a], [b]) => a - b)
    .map(([line, words]) => [
      String(line),
      words.join('; '),
      ...columns.map(({ index }) => byLine.get(line)?.[index] ?? ''),
    ]);
  const head = ['Line', 'Left out because', ...columns.map(({ heading }) => heading)];
  return `\uFEFF${writeCsv([head, ...lines])}`;
}
