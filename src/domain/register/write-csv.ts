const CRLF = '\r\n';

/**
 * What a spreadsheet takes for the start of a formula, blanks before it or not. Source: OWASP, CSV
 * Injection.
 */
const FORMULA = /^\s*[=+\-@\t\r＝＋－＠]/;

/**
 * A table as RFC 4180 has it: CRLF after each line, and quotes round what holds a quote, a comma or
 * a line's end. A cell that a spreadsheet would take for a formula gets an apostrophe before it,
 * which says that it is text.
 */
export const writeCsv = (rows: readonly (readonly string[])[]): string =>
  rows.map((row) => `${row.map(cellText).join(',')}${CRLF}`).join('');

const cellText = (cell: string): string => {
  const text = FORMULA.test(cell) ? `'${cell}` : cell;
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
};
