import fc from 'fast-check';
import Papa from 'papaparse';
import { expect, test } from 'vitest';
import { writeCsv } from '../../../src/domain/register/write-csv.ts';
import { runs } from '../../arbitrary.ts';

// Source: RFC 4180, section 2, rules 1 and 5 to 7.
test('lines end in CRLF, and what needs quotes has them', () => {
  expect(
    writeCsv([
      ['a', 'b c', ''],
      ['1,5', 'say "hi"', 'two\nlines'],
    ]),
  ).toBe('a,b c,\r\n"1,5","say ""hi""","two\nlines"\r\n');
});

const anyCell = fc.oneof(
  fc.string({ unit: 'grapheme', maxLength: 20 }),
  fc.constantFrom('=1+1', '+4', '-2', '@x', '\t=1', '\r=1', ' =1', 'a"b', 'a,b', 'a\r\nb', '', '"'),
);
const anyTable = fc
  .integer({ min: 2, max: 5 })
  .chain((columns) =>
    fc.array(fc.array(anyCell, { minLength: columns, maxLength: columns }), { minLength: 1 }),
  );

const isFormula = (cell: string): boolean => /^[=+\-@\t\r]/.test(cell.trimStart() || cell);

// Papa Parse shares nothing with our writer.
test('another reader gets every cell back, and none that a spreadsheet would reckon', () => {
  fc.assert(
    fc.property(anyTable, (table) => {
      const read = Papa.parse<string[]>(writeCsv(table).replace(/\r\n$/, ''), {
        newline: '\r\n',
        delimiter: ',',
      });
      expect(read.errors).toEqual([]);
      const back = read.data.map((row) => row.map((cell) => cell.replace(/^'/, '')));
      expect(back).toEqual(table.map((row) => row.map((cell) => cell.replace(/^'/, ''))));
      expect(read.data.flat().filter(isFormula)).toEqual([]);
    }),
    runs(500),
  );
});

// Source: OWASP, CSV Injection: the signs at which spreadsheets begin a formula.
test.each(['=HYPERLINK("x")', '+1', '-1', '@SUM(A1)', '\tx', '\rx', '  =1', '＝1'])(
  '%j is made text',
  (cell) => {
    const [[read = ''] = []] = Papa.parse<string[]>(writeCsv([[cell, '']]), {
      newline: '\r\n',
    }).data;
    expect(read).toBe(`'${cell}`);
  },
);
