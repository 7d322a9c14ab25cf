import { Buffer } from 'node:buffer';
import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { decodeText } from '../../src/workbook/decode-text.ts';
import { openWorkbook } from '../../src/workbook/open-workbook.ts';
import { runs } from '../arbitrary.ts';

const TEXT = 'Name;Größe\nBjörk Æ ½;5\nSorrel;7\n';

/**
 * In Windows-1252, which is ISO 8859-1 for all of these. Where the two differ, as in “Ž”, Node 20
 * decodes wrongly and browsers do not: that is looked at there.
 */
const windows = Buffer.from(TEXT, 'latin1');

const swapped = (bytes: Buffer) => Buffer.from(bytes).swap16();

describe('the encoding of a text', () => {
  test.each([
    ['UTF-8', 'UTF-8', Buffer.from(TEXT)],
    ['UTF-8 with a mark', 'UTF-8', Buffer.from(`\uFEFF${TEXT}`)],
    ['UTF-16 with a mark', 'UTF-16', Buffer.from(`\uFEFF${TEXT}`, 'utf16le')],
    ['UTF-16 the other way round', 'UTF-16', swapped(Buffer.from(`\uFEFF${TEXT}`, 'utf16le'))],
    ['UTF-16 without a mark', 'UTF-16', Buffer.from(TEXT, 'utf16le')],
    ['Windows-1252', 'Windows-1252', windows],
  ])('%s', (_what, encoding, bytes) => {
    expect(decodeText(new Uint8Array(bytes))).toEqual({ text: TEXT, encoding });
  });
});

describe('a text of cells', () => {
  test.each([',', ';', '\t'])('set apart by %j, is cut as Papa Parse cuts it', (delimiter) => {
    const cell = fc.stringMatching(/^[a-z0-9",;\n ]{0,8}[a-z]$/);
    fc.assert(
      fc.property(fc.array(fc.tuple(cell, cell, cell), { minLength: 3, maxLength: 12 }), (rows) => {
        const text = Papa.unparse(rows, { delimiter, quotes: true });
        const book = openWorkbook(new TextEncoder().encode(text));
        expect(book.ok && book.value.sheets[0]?.rows.map(({ cells }) => cells)).toEqual(rows);
      }),
      runs(60),
    );
  });
});
