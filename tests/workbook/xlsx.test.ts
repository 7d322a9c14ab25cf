import { Buffer } from 'node:buffer';
import { describe, expect, test } from 'vitest';
import writeExcelFile from 'write-excel-file/node';
import { filled } from '../../src/domain/sheet/grid.ts';
import { openWorkbook } from '../../src/workbook/open-workbook.ts';
import { serialText } from '../../src/workbook/serial-date.ts';
import { isDateFormat } from '../../src/workbook/styles.ts';
import { makeXlsx, packed, xlsxParts } from './make-xlsx.ts';

function opened(bytes: Uint8Array) {
  const book = openWorkbook(bytes);
  if (!book.ok) throw new Error(book.problem.message);
  return book.value;
}

const cellsOf = (bytes: Uint8Array, sheet = 0) =>
  opened(bytes).sheets[sheet]!.rows.map(({ cells }) => cells);

const problemOf = (bytes: Uint8Array) => {
  const book = openWorkbook(bytes);
  return book.ok ? undefined : book.problem.code;
};

describe('a workbook by an independent writer', () => {
  test('gives back its texts, numbers, dates, yes and no, and what was merged', async () => {
    const buffer = await writeExcelFile([
      {
        sheet: 'Animals',
        data: [
          [{ value: 'Sorrel & <b>Rue</b>', rowSpan: 2 }, { value: 1640.5 }],
          [null, { value: new Date(Date.UTC(2024, 6, 31)), format: 'dd/mm/yyyy', type: Date }],
          [{ value: true, type: Boolean }, { value: 'ö ♀ "x"' }],
        ],
      },
      { sheet: 'Meals', data: [[{ value: 'second' }]] },
    ]).toBuffer();
    const book = opened(new Uint8Array(buffer));
    expect(book.sheets.map(({ name }) => name)).toEqual(['Animals', 'Meals']);
    const [animals] = book.sheets;
    expect(animals!.rows.map(({ cells }) => cells)).toEqual([
      ['Sorrel & <b>Rue</b>', '1640.5'],
      ['', '2024-07-31'],
      ['yes', 'ö ♀ "x"'],
    ]);
    expect(animals!.merged).toEqual([{ firstLine: 1, lastLine: 2, firstColumn: 0, lastColumn: 0 }]);
    expect(filled(animals!)[1]?.cells[0]).toBe('Sorrel & <b>Rue</b>');
  });
});

describe('a workbook written by hand, after ECMA-376 Part 1', () => {
  test('shared strings: rich text is one text, and how it is said is not part of it (18.4.8, 18.4.6)', () => {
    const book = makeXlsx({
      strings:
        '<si><t xml:space="preserve"> a&amp;b </t></si><si><r><t>rich</t></r><r><t>er</t></r><rPh sb="0" eb="1"><t>no</t></rPh></si>',
      sheets: [
        { name: 'A', data: '<row r="3"><c r="B3" t="s"><v>1</v></c><c t="s"><v>0</v></c></row>' },
      ],
    });
    expect(opened(book).sheets[0]!.rows).toEqual([{ line: 3, cells: ['', 'richer', ' a&b '] }]);
  });

  test('inline strings, errors, formulas with and without their last result (18.3.1.40)', () => {
    const book = makeXlsx({
      sheets: [
        {
          name: 'A',
          data: '<row><c t="inlineStr"><is><t>in line</t></is></c><c t="e"><v>#REF!</v></c><c><f>1+1</f><v>2</v></c><c><f>NOW()</f></c><c t="str"><f>A1</f><v>text</v></c></row>',
        },
      ],
    });
    expect(opened(book).sheets[0]).toMatchObject({
      rows: [{ line: 1, cells: ['in line', '#REF!', '2', '', 'text'] }],
      formulas: 3,
      formulasWithout: 1,
    });
  });

  test('names with a prefix are the same names', () => {
    const parts = xlsxParts({ sheets: [{ name: 'A', data: '' }] });
    const sheet =
      '<x:worksheet xmlns:x="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><x:sheetData><x:row r="1"><x:c r="A1"><x:v>7</x:v></x:c></x:row></x:sheetData></x:worksheet>';
    expect(cellsOf(packed({ ...parts, 'xl/worksheets/sheet1.xml': sheet }))).toEqual([['7']]);
  });

  test('a number is a date by its style alone, and by where counting began', () => {
    const book = (from1904: boolean) =>
      makeXlsx({
        from1904,
        formats: { 164: 'd/m/yyyy', 165: '0.00 &quot;days&quot;' },
        styles: [0, 14, 164, 165],
        sheets: [
          {
            name: 'A',
            data: '<row><c><v>45000</v></c><c s="1"><v>45000</v></c><c s="2"><v>45000.5</v></c><c s="3"><v>45000</v></c></row>',
          },
        ],
      });
    // 45000 is 15 March 2023 counted from 1900; from 1904 it is 1,462 days later.
    expect(cellsOf(book(false))).toEqual([['45000', '2023-03-15', '2023-03-15 12:00', '45000']]);
    expect(cellsOf(book(true))).toEqual([['45000', '2027-03-16', '2027-03-16 12:00', '45000']]);
  });
});

describe('day counts', () => {
  // ECMA-376 Part 1, 18.17.4.1: limits of both date bases, and the 29 February 1900 that never was.
  test.each([
    { serial: 1, from1904: false, text: '1900-01-01' },
    { serial: 59, from1904: false, text: '1900-02-28' },
    { serial: 60, from1904: false, text: undefined },
    { serial: 61, from1904: false, text: '1900-03-01' },
    { serial: 2_958_465, from1904: false, text: '9999-12-31' },
    { serial: 2_958_466, from1904: false, text: undefined },
    { serial: 1, from1904: true, text: '1904-01-02' },
    { serial: 2_957_003, from1904: true, text: '9999-12-31' },
    { serial: 45_504.875, from1904: false, text: '2024-07-31 21:00' },
    { serial: 0.25, from1904: false, text: '06:00' },
    { serial: -1, from1904: false, text: undefined },
  ])('$serial from $from1904 is $text', ({ serial, from1904, text }) => {
    expect(serialText(serial, from1904)).toBe(text);
  });

  test.each([
    ['yyyy-mm-dd', true],
    ['[$-409]d-mmm-yy;@', true],
    ['h:mm AM/PM', true],
    ['[h]:mm', true],
    ['General', false],
    ['0.00', false],
    ['#,##0 "days"', false],
    ['[Red]0.0', false],
    ['0\\d', false],
  ])('the format %s shows a date: %s', (code, isDate) => {
    expect(isDateFormat(code)).toBe(isDate);
  });
});

describe('a file that is not to be trusted', () => {
  const good = xlsxParts({ sheets: [{ name: 'A', data: '<row><c><v>1</v></c></row>' }] });

  /** What a central directory says a part unpacks to: 24 bytes behind its signature. APPNOTE 4.3.12. */
  function declare(bytes: Uint8Array, isPart: (size: number) => boolean, size: number): Uint8Array {
    const view = new DataView(bytes.buffer);
    let changed = 0;
    for (let at = 0; at + 28 < bytes.length; at += 1) {
      if (view.getUint32(at, true) !== 0x02014b50 || !isPart(view.getUint32(at + 24, true)))
        continue;
      view.setUint32(at + 24, size, true);
      changed += 1;
    }
    expect(changed).toBe(1);
    return bytes;
  }

  const large = () => {
    const data = `<row>${'<c><v>1</v></c>'.repeat(200_000)}</row>`;
    return packed(xlsxParts({ sheets: [{ name: 'A', data }] }));
  };
  const isLarge = (size: number) => size > 1_000_000;

  test('one that unpacks to more than it may is turned away before it is unpacked', () => {
    expect(problemOf(declare(large(), isLarge, 300_000_000))).toBe('sheet-too-large');
  });

  test('one that lies about what it unpacks to gets no more room than it said', () => {
    expect(problemOf(declare(large(), isLarge, 500))).toBe('sheet-damaged');
  });

  test.each([
    ['cut off', () => packed(good).slice(0, 300), 'sheet-damaged'],
    [
      'with a broken sheet',
      () => packed({ ...good, 'xl/worksheets/sheet1.xml': '<worksheet><sheetData>' }),
      'sheet-damaged',
    ],
    ['with a workbook that is missing', () => packed({ 'a.xml': '<a/>' }), 'sheet-damaged'],
    ['with no row', () => packed(xlsxParts({ sheets: [{ name: 'A', data: '' }] })), 'sheet-empty'],
    ['of the old kind', () => new Uint8Array([0xd0, 0xcf, 0x11, 0xe0]), 'sheet-old'],
    ['empty', () => new Uint8Array(), 'sheet-empty'],
    [
      'that is a picture',
      () => new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0, 0, 0, 13, 0, 1, 2, 200]),
      'sheet-no-table',
    ],
    ['of 100 MB', () => new Uint8Array(100_000_000), 'sheet-too-large'],
    ['of 50,001 rows', () => Buffer.from('a,b\n'.repeat(50_001)), 'sheet-too-large'],
    ['with a quotation mark never closed', () => Buffer.from('a,b\n"c,d\n'), 'csv-open-quote'],
  ])('%s', (_what, bytes, code) => {
    expect(problemOf(new Uint8Array(bytes()))).toBe(code);
  });

  test('entities of its own making are not blown up', () => {
    const sheet =
      '<!DOCTYPE z [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;">]><worksheet><sheetData><row><c t="str"><v>&b;</v></c></row></sheetData></worksheet>';
    const book = openWorkbook(packed({ ...good, 'xl/worksheets/sheet1.xml': sheet }));
    expect(JSON.stringify(book)).not.toContain('aaaa');
  });
});
