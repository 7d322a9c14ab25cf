import { ok, refuse, type Result } from '../domain/core/result.ts';
import { guessSeparator, splitCsv } from '../domain/csv/split-csv.ts';
import type { Workbook } from '../domain/sheet/grid.ts';
import { decodeText } from './decode-text.ts';
import { readXlsx } from './read-xlsx.ts';
import { TooLarge } from './unpack.ts';

/** What one file may have: a life's worth of records is a tenth of it. */
const MOST_BYTES = 16_000_000;
const MOST_ROWS = 50_000;

const tooLarge = () =>
  refuse(
    'sheet-too-large',
    'This file is too large: 16 MB, 50,000 rows and 200 MB once unpacked are the most. Split it by years.',
  );

/** Errors: refuses a file that is no table, is damaged or too large, saying which. */
export function openWorkbook(bytes: Uint8Array): Result<Workbook> {
  if (bytes.length > MOST_BYTES) return tooLarge();
  if (bytes.length === 0) return refuse('sheet-empty', 'This file is empty.');
  const [first = 0, second = 0] = bytes;
  if (first === 0x50 && second === 0x4b) return openXlsx(bytes);
  if (first === 0xd0 && second === 0xcf) {
    return refuse(
      'sheet-old',
      'This is a workbook of the old kind, or one with a password. Save it as XLSX or CSV without one.',
    );
  }
  return openText(bytes);
}

function openXlsx(bytes: Uint8Array): Result<Workbook> {
  try {
    const sheets = readXlsx(bytes).filter(({ rows }) => rows.length > 0);
    if (sheets.length === 0) return refuse('sheet-empty', 'There is no table in this file.');
    return ok({ kind: 'XLSX', sheets });
  } catch (error) {
    return error instanceof TooLarge
      ? tooLarge()
      : refuse(
          'sheet-damaged',
          'This file is damaged or no XLSX workbook. Save it anew as XLSX or CSV.',
        );
  }
}

const separatorWords = { ',': 'commas', ';': 'semicolons', '\t': 'tabs' } as const;

function openText(bytes: Uint8Array): Result<Workbook> {
  const { text, encoding } = decodeText(bytes);
  if (text.includes('\0')) {
    return refuse('sheet-no-table', 'This file is no table. Save it as XLSX or CSV.');
  }
  const separator = guessSeparator(text) ?? ',';
  const rows = splitCsv(text, separator);
  if (!rows.ok) return rows;
  if (rows.value.length > MOST_ROWS) return tooLarge();
  if (rows.value.length === 0) return refuse('sheet-empty', 'There is no table in this file.');
  const grid = { name: 'Table', rows: rows.value, merged: [], formulas: 0, formulasWithout: 0 };
  return ok({
    kind: `text, set apart by ${separatorWords[separator]}, ${encoding}`,
    sheets: [grid],
  });
}
