import type { Grid, GridRow, Merged } from '../domain/sheet/grid.ts';
import { readXml } from './read-xml.ts';
import { serialText } from './serial-date.ts';
import { TooLarge } from './unpack.ts';

/** What the cells of all sheets refer to. */
export interface Shared {
  readonly strings: readonly string[];
  readonly dateStyles: ReadonlySet<number>;
  readonly from1904: boolean;
}

const MOST_ROWS = 50_000;
const MOST_COLUMNS = 200;

interface OpenCell {
  readonly column: number;
  readonly type: string;
  readonly style: number;
  value: string;
  hasValue: boolean;
  isFormula: boolean;
}

/**
 * One sheet of an XLSX file as text. Source: ECMA-376 Part 1, 18.3.
 *
 * Errors: throws TooLarge for more rows than can be looked at, and any other error where it is no
 * whole XML.
 */
export function readSheet(name: string, xml: string, shared: Shared): Grid {
  const rows: GridRow[] = [];
  const merged: Merged[] = [];
  let formulas = 0;
  let formulasWithout = 0;
  let line = 0;
  let cells: string[] = [];
  let cell: OpenCell | undefined;
  let takes = false;
  let last = -1;

  function endCell({ column, type, style, value, hasValue, isFormula }: OpenCell): void {
    if (isFormula) {
      formulas += 1;
      if (!hasValue) formulasWithout += 1;
    }
    if (column >= MOST_COLUMNS || value === '') return;
    while (cells.length < column) cells.push('');
    cells[column] = textOf(value, type, style, shared);
  }

  readXml(xml, {
    open(tag, attribute) {
      switch (tag) {
        case 'row':
          line = Number(attribute('r') ?? line + 1);
          cells = [];
          last = -1;
          break;
        case 'c': {
          const ref = attribute('r');
          last = ref === undefined ? last + 1 : columnOf(ref);
          cell = {
            column: last,
            type: attribute('t') ?? 'n',
            style: Number(attribute('s') ?? 0),
            value: '',
            hasValue: false,
            isFormula: false,
          };
          break;
        }
        case 'v':
        case 't':
          takes = cell !== undefined;
          if (cell) cell.hasValue = true;
          break;
        case 'f':
          if (cell) cell.isFormula = true;
          break;
        case 'rPh':
          cell = undefined; // How to say it, beside what is said.
          break;
        case 'mergeCell': {
          const block = mergedOf(attribute('ref') ?? '');
          if (block) merged.push(block);
          break;
        }
        default:
      }
    },
    text(text) {
      if (takes && cell) cell.value += text;
    },
    close(tag) {
      if (tag === 'v' || tag === 't') takes = false;
      else if (tag === 'c' && cell) {
        endCell(cell);
        cell = undefined;
      } else if (tag === 'row' && cells.some((each) => each.trim() !== '')) {
        rows.push({ line, cells });
        if (rows.length > MOST_ROWS) throw new TooLarge();
      }
    },
  });
  return { name, rows, merged, formulas, formulasWithout };
}

function textOf(
  value: string,
  type: string,
  style: number,
  { strings, dateStyles, from1904 }: Shared,
): string {
  switch (type) {
    case 's':
      return strings[Number(value)] ?? '';
    case 'b':
      return value === '1' ? 'yes' : 'no';
    case 'd':
      return value.replace(/T00:00(?::00(?:\.0+)?)?Z?$/, '').replace('T', ' ');
    case 'n': {
      const number = Number(value);
      if (!Number.isFinite(number)) return value;
      const date = dateStyles.has(style) ? serialText(number, from1904) : undefined;
      // What 64 bits add to a decimal fraction, as in 62.300000000000004, was never typed.
      return date ?? String(Number(number.toPrecision(15)));
    }
    default:
      return value;
  }
}

/** @example columnOf('AB12') //=> 27 */
function columnOf(ref: string): number {
  let column = 0;
  for (const letter of ref.toUpperCase()) {
    if (letter < 'A' || letter > 'Z') break;
    column = column * 26 + letter.charCodeAt(0) - 64;
  }
  return column - 1;
}

function mergedOf(ref: string): Merged | undefined {
  const [, from = '', top = '', to = '', bottom = ''] =
    /^([A-Z]+)(\d+):([A-Z]+)(\d+)$/i.exec(ref) ?? [];
  return from === ''
    ? undefined
    : {
        firstLine: Number(top),
        lastLine: Number(bottom),
        firstColumn: columnOf(from),
        lastColumn: Math.min(columnOf(to), MOST_COLUMNS - 1),
      };
}
