import { zipSync } from 'fflate';

const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const OFFICE = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const PACKAGE = 'http://schemas.openxmlformats.org/package/2006/relationships';

/** What a workbook is made of, as XML: for what a writer of workbooks cannot say. */
export interface RawWorkbook {
  /** What stands inside of `sheetData` and behind it. */
  readonly sheets: readonly {
    readonly name: string;
    readonly data: string;
    readonly after?: string;
  }[];
  readonly strings?: string;
  /** Number formats of the file's own, and the format of each style. */
  readonly formats?: Readonly<Record<number, string>>;
  readonly styles?: readonly number[];
  readonly from1904?: boolean;
}

/** The parts of a workbook by ECMA-376, not yet packed. */
export function xlsxParts({ sheets, strings, formats = {}, styles = [0], from1904 }: RawWorkbook) {
  const links = [
    ...sheets.map((_, i) => ({
      id: `rId${i + 1}`,
      type: 'worksheet',
      target: `worksheets/sheet${i + 1}.xml`,
    })),
    { id: 'rId98', type: 'styles', target: 'styles.xml' },
    ...(strings === undefined
      ? []
      : [{ id: 'rId99', type: 'sharedStrings', target: '/xl/sharedStrings.xml' }]),
  ];
  return {
    'xl/workbook.xml': `<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}"><workbookPr${from1904 ? ' date1904="1"' : ''}/><sheets>${sheets
      .map(({ name }, i) => `<sheet name="${name}" sheetId="${i + 1}" r:id="rId${i + 1}"/>`)
      .join('')}</sheets></workbook>`,
    'xl/_rels/workbook.xml.rels': `<Relationships xmlns="${PACKAGE}">${links
      .map(
        ({ id, type, target }) =>
          `<Relationship Id="${id}" Type="${OFFICE}/${type}" Target="${target}"/>`,
      )
      .join('')}</Relationships>`,
    'xl/styles.xml': `<styleSheet xmlns="${MAIN}"><numFmts>${Object.entries(formats)
      .map(([id, code]) => `<numFmt numFmtId="${id}" formatCode="${code}"/>`)
      .join('')}</numFmts><cellStyleXfs><xf numFmtId="14"/></cellStyleXfs><cellXfs>${styles
      .map((id) => `<xf numFmtId="${id}"/>`)
      .join('')}</cellXfs></styleSheet>`,
    ...(strings === undefined
      ? {}
      : { 'xl/sharedStrings.xml': `<sst xmlns="${MAIN}">${strings}</sst>` }),
    ...Object.fromEntries(
      sheets.map(({ data, after = '' }, i) => [
        `xl/worksheets/sheet${i + 1}.xml`,
        `<worksheet xmlns="${MAIN}"><sheetData>${data}</sheetData>${after}</worksheet>`,
      ]),
    ),
  };
}

export const packed = (parts: Readonly<Record<string, string>>): Uint8Array => {
  const encoder = new TextEncoder();
  return zipSync(
    Object.fromEntries(Object.entries(parts).map(([name, text]) => [name, encoder.encode(text)])),
  );
};

export const makeXlsx = (book: RawWorkbook): Uint8Array => packed(xlsxParts(book));
