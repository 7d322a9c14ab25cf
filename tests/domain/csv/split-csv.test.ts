import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { guessSeparator, separators, splitCsv } from '../../../src/domain/csv/split-csv.ts';
import { runs } from '../../arbitrary.ts';

const cells = (text: string, separator: (typeof separators)[number] = ',') => {
  const rows = splitCsv(text, separator);
  return rows.ok ? rows.value.map((row) => row.cells) : rows.problem.code;
};

// The examples of RFC 4180 §2, by its numbers.
describe('RFC 4180', () => {
  test.each([
    { rule: '1', text: 'aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n' },
    { rule: '2', text: 'aaa,bbb,ccc\r\nzzz,yyy,xxx' },
    { rule: '5', text: '"aaa","bbb","ccc"\r\nzzz,yyy,xxx' },
  ])('rule $rule', ({ text }) => {
    expect(cells(text)).toEqual([
      ['aaa', 'bbb', 'ccc'],
      ['zzz', 'yyy', 'xxx'],
    ]);
  });

  test('rule 6: a quoted cell may hold line breaks, quotes and commas', () => {
    expect(cells('"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx')).toEqual([
      ['aaa', 'b\r\nbb', 'ccc'],
      ['zzz', 'yyy', 'xxx'],
    ]);
  });

  test('rule 7: two quotation marks are one', () => {
    expect(cells('"aaa","b""bb","ccc"')).toEqual([['aaa', 'b"bb', 'ccc']]);
  });
});

test('lines are counted as an editor counts them, also inside a cell and over empty ones', () => {
  const rows = splitCsv('a,b\n\n"x\ny",z\r\nlast,one\r', ',');
  expect(rows).toMatchObject({
    value: [{ line: 1 }, { line: 3 }, { line: 5, cells: ['last', 'one'] }],
  });
});

test('a mark at the start that says UTF-8 is no part of the first cell', () => {
  expect(cells('\uFEFFtime,temp\n1,2')).toEqual([
    ['time', 'temp'],
    ['1', '2'],
  ]);
});

test('a quotation mark inside a plain cell is one', () => {
  expect(cells('5" probe,21')).toEqual([['5" probe', '21']]);
});

test('a quotation mark that is never closed is refused, with its line', () => {
  expect(splitCsv('a,b\n1,"2\n3,4', ',')).toMatchObject({
    problem: { message: 'A quotation mark on line 2 is never closed.' },
  });
});

// An independent reader of CSV: Papa Parse.
test('any table is read as Papa Parse reads it', () => {
  const cell = fc.oneof(
    fc.string({ maxLength: 8 }),
    fc.constantFrom('', ' ', '"', '""', 'a,b', 'x;y', 'm\tn', 'l\r\nm', '21,5', '5" probe'),
  );
  const table = fc.array(fc.array(cell, { minLength: 2, maxLength: 5 }), { minLength: 1 });
  fc.assert(
    fc.property(
      table,
      fc.constantFrom(...separators),
      fc.constantFrom('\n', '\r\n'),
      fc.boolean(),
      (rows, separator, newline, isAllQuoted) => {
        const text = Papa.unparse(rows, { delimiter: separator, newline, quotes: isAllQuoted });
        const theirs = Papa.parse<string[]>(text, { delimiter: separator, newline }).data;
        expect(cells(text, separator)).toEqual(theirs);
        expect(theirs).toEqual(rows);
      },
    ),
    runs(500),
  );
});

test.each([
  { text: 'Time,Temp\n2026-11-24 10:00,21.5\n2026-11-24 10:05,21.6', is: ',' },
  { text: 'Zeit;Temp\n24.11.2026 10:00;21,5\n24.11.2026 10:05;21,6', is: ';' },
  { text: 'Time\tTemp, °C\n24/11/2026 10:00\t21.5\n24/11/2026 10:05\t21.6', is: '\t' },
  { text: '"Date, time","Temp; air"\n"1/2/26, 10:00","21,5"', is: ',' },
  { text: 'no table at all\nin this text', is: undefined },
])('the separator of $text is $is', ({ text, is }) => {
  expect(guessSeparator(text)).toBe(is);
});
