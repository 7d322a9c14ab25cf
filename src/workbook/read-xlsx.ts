import type { Grid } from '../domain/sheet/grid.ts';
import { readSheet } from './read-sheet.ts';
import { readXml } from './read-xml.ts';
import { dateStyles } from './styles.ts';
import { unpack } from './unpack.ts';

/**
 * The sheets of an XLSX file, as text. Source: ECMA-376 Part 1, 18.2.
 *
 * Errors: throws TooLarge, or any other error where the file is damaged.
 */
export function readXlsx(bytes: Uint8Array): readonly Grid[] {
  const parts = unpack(bytes);
  const links = linksIn(parts.get('xl/_rels/workbook.xml.rels') ?? '');
  const part = (kind: string): string | undefined =>
    parts.get([...links.values()].find(({ type }) => type.endsWith(`/${kind}`))?.path ?? '');
  const book = parts.get('xl/workbook.xml');
  if (book === undefined) throw new Error('There is no workbook in it.');
  const sheets: { readonly name: string; readonly link: string }[] = [];
  let from1904 = false;
  readXml(book, {
    open(name, attribute) {
      if (name === 'workbookPr') from1904 = /^(?:1|true)$/.test(attribute('date1904') ?? '');
      if (name === 'sheet') {
        sheets.push({ name: attribute('name') ?? 'Sheet', link: attribute('r:id') ?? '' });
      }
    },
  });
  const shared = {
    strings: sharedStrings(part('sharedStrings')),
    dateStyles: dateStyles(part('styles')),
    from1904,
  };
  return sheets.flatMap(({ name, link }) => {
    const xml = parts.get(links.get(link)?.path ?? '');
    // A sheet that is a chart has no table.
    return xml === undefined ? [] : [readSheet(name, xml, shared)];
  });
}

interface Link {
  readonly type: string;
  readonly path: string;
}

function linksIn(xml: string): ReadonlyMap<string, Link> {
  const links = new Map<string, Link>();
  if (xml === '') return links;
  readXml(xml, {
    open(name, attribute) {
      if (name !== 'Relationship') return;
      const target = attribute('Target') ?? '';
      const path = target.startsWith('/') ? target.slice(1) : `xl/${target.replace(/^\.\//, '')}`;
      links.set(attribute('Id') ?? '', { type: attribute('Type') ?? '', path });
    },
  });
  return links;
}

function sharedStrings(xml: string | undefined): readonly string[] {
  const strings: string[] = [];
  if (xml === undefined) return strings;
  let text = '';
  let takes = false;
  let saysHow = false;
  readXml(xml, {
    open(name) {
      if (name === 'si') text = '';
      else if (name === 'rPh') saysHow = true;
      else if (name === 't') takes = !saysHow;
    },
    text(found) {
      if (takes) text += found;
    },
    close(name) {
      if (name === 't') takes = false;
      else if (name === 'rPh') saysHow = false;
      else if (name === 'si') strings.push(text);
    },
  });
  return strings;
}
