import { readXml } from './read-xml.ts';

/** Formats that every spreadsheet knows by number alone. Source: ECMA-376 Part 1, 18.8.30. */
const isBuiltInDate = (id: number): boolean =>
  (id >= 14 && id <= 22) ||
  (id >= 27 && id <= 36) ||
  (id >= 45 && id <= 47) ||
  (id >= 50 && id <= 58);

/** Whether a number format of the file's own shows a date or a time. */
export function isDateFormat(code: string): boolean {
  const [first = ''] = code.split(';');
  const bare = first
    .replaceAll(/"[^"]*"|\\.|_.|\*./g, '')
    .replaceAll(/\[(?!h+\]|m+\]|s+\])[^\]]*\]/gi, '');
  return /[dmyhs]/i.test(bare) && !/general/i.test(bare);
}

/** Which styles of cells show a date, by their number. */
export function dateStyles(xml: string | undefined): ReadonlySet<number> {
  const own = new Map<number, string>();
  const dates = new Set<number>();
  let inCells = false;
  let style = 0;
  if (xml === undefined) return dates;
  readXml(xml, {
    open(name, attribute) {
      if (name === 'numFmt') {
        own.set(Number(attribute('numFmtId')), attribute('formatCode') ?? '');
      } else if (name === 'cellXfs') inCells = true;
      else if (name === 'xf' && inCells) {
        const id = Number(attribute('numFmtId') ?? 0);
        const code = own.get(id);
        if (code === undefined ? isBuiltInDate(id) : isDateFormat(code)) dates.add(style);
        style += 1;
      }
    },
    close(name) {
      if (name === 'cellXfs') inCells = false;
    },
  });
  return dates;
}
