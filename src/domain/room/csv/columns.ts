import { needsOrder, orderOf, readTime, type DateOrder } from '../../csv/read-time.ts';
import type { CsvRow } from '../../csv/split-csv.ts';

/** What the columns of a file hold; numbers count from 0. */
export interface ColumnMap {
  /** Date and time in one column, or the date alone. */
  readonly date: number;
  /** The time of day, where it has a column of its own. */
  readonly time?: number | undefined;
  readonly temp: number;
  readonly humidity?: number | undefined;
  readonly order: DateOrder;
  readonly unit: '°C' | '°F';
}

/** A file as it is built, as far as can be guessed; the keeper looks at it before anything counts. */
export interface Guess {
  readonly map: ColumnMap;
  /** The header's words, or `Column 3`. */
  readonly names: readonly string[];
  /** Index of the first row that holds a reading. */
  readonly firstRow: number;
  /** What could as well be otherwise. */
  readonly unsure: readonly ('order' | 'unit')[];
}

const ROWS_LOOKED_AT = 200;
/** Warmer than any room in °C, cooler than most in °F. */
const UNIT_LINE = 45;

/** A number as files of any region write it, with its unit or without. */
export function readNumber(text: string): number | undefined {
  const [, digits] =
    /^\s*([+-]?\d+(?:[.,]\d+)?)\s*(?:[°º\uFFFD]?\s*[CF]|%(?:\s*rh)?)?\s*$/i.exec(text) ?? [];
  return digits === undefined ? undefined : Number(digits.replace(',', '.'));
}

/** The text to be read as date and time. */
export const timeText = ({ cells }: CsvRow, { date, time }: Pick<ColumnMap, 'date' | 'time'>) =>
  time === undefined ? (cells[date] ?? '') : `${cells[date] ?? ''} ${cells[time] ?? ''}`;

const isTime = (text: string): boolean =>
  readTime(text, 'day first') !== undefined || readTime(text, 'month first') !== undefined;

/** Guesses what the columns hold; undefined where no row has a time and a temperature. */
export function guessColumns(rows: readonly CsvRow[]): Guess | undefined {
  const looked = rows.slice(0, ROWS_LOOKED_AT);
  const when = guessTimeColumns(looked);
  if (!when) return undefined;
  const { firstRow } = when;
  const data = rows.slice(firstRow, firstRow + ROWS_LOOKED_AT);
  const width = Math.max(...data.map(({ cells }) => cells.length));
  const header = headerOf(rows[firstRow - 1], width);
  const names = Array.from({ length: width }, (_, i) => header[i]?.trim() || `Column ${i + 1}`);
  const isTaken = (column: number): boolean => column === when.date || column === when.time;
  const numeric = names.flatMap((name, column) => {
    const numbers = data.flatMap(({ cells }) => readNumber(cells[column] ?? '') ?? []);
    const isNumeric = !isTaken(column) && numbers.length > 0 && !isCount(numbers);
    return isNumeric
      ? [{ name, column, numbers, cells: data.map((row) => row.cells[column]) }]
      : [];
  });
  const humidity = numeric.find(({ name }) => /hum|\brh\b|% ?rh|feucht/i.test(name));
  const temp = bestTemperature(numeric.filter(({ column }) => column !== humidity?.column));
  if (!temp) return undefined;
  const unit = unitOf(temp.name, temp.cells, temp.numbers);
  const dates = data.map(({ cells }) => cells[when.date] ?? '');
  const order = orderOf(rows.slice(firstRow).map(({ cells }) => cells[when.date] ?? ''));
  return {
    map: {
      date: when.date,
      time: when.time,
      temp: temp.column,
      humidity: humidity?.column,
      order: order ?? orderByTheClock(data, when),
      unit: unit.unit,
    },
    names,
    firstRow,
    unsure: [
      ...(order === undefined && dates.some(needsOrder) ? (['order'] as const) : []),
      ...(unit.isSure ? [] : (['unit'] as const)),
    ],
  };
}

interface TimeColumns {
  readonly date: number;
  readonly time?: number | undefined;
  readonly firstRow: number;
}

/** The first row that holds a time says in which columns; date and time may stand side by side. */
function guessTimeColumns(rows: readonly CsvRow[]): TimeColumns | undefined {
  for (const [firstRow, { cells }] of rows.entries()) {
    const date = cells.findIndex(isTime);
    if (date >= 0 && cells.some((cell, i) => i !== date && readNumber(cell) !== undefined)) {
      return { date, firstRow };
    }
    const alone = cells.findIndex((cell, i) => isTime(`${cell} ${cells[i + 1] ?? ''}`));
    if (alone >= 0) return { date: alone, time: alone + 1, firstRow };
  }
  return undefined;
}

/** The row above the first reading, if it names columns. */
const headerOf = (row: CsvRow | undefined, width: number): readonly string[] =>
  row && row.cells.length > width / 2 && row.cells.every((cell) => readNumber(cell) === undefined)
    ? row.cells
    : [];

/** A column that only counts the rows. */
const isCount = (numbers: readonly number[]): boolean =>
  numbers.length > 2 && numbers.every((each, i) => i === 0 || each === (numbers[i - 1] ?? 0) + 1);

interface NumericColumn {
  readonly name: string;
  readonly column: number;
  readonly numbers: readonly number[];
  readonly cells: readonly (string | undefined)[];
}

function bestTemperature(columns: readonly NumericColumn[]): NumericColumn | undefined {
  const named = columns.filter(({ name }) =>
    /temp|celsius|fahrenheit|[°º\uFFFD] ?[cf]\b/i.test(name),
  );
  // Loggers work these out from the temperature itself.
  const measured = named.filter(({ name }) => !/dew|feels|index|wet|tau/i.test(name));
  return measured[0] ?? named[0] ?? columns[0];
}

function unitOf(
  name: string,
  cells: readonly (string | undefined)[],
  numbers: readonly number[],
): { readonly unit: ColumnMap['unit']; readonly isSure: boolean } {
  const stated = [name, cells[0] ?? ''].map((text) =>
    /fahrenheit|[°º\uFFFD] ?F\b|[([_ ]F[)\]]?$|\dF$/i.test(text)
      ? '°F'
      : /celsius|[°º\uFFFD] ?C\b|[([_ ]C[)\]]?$|\dC$/i.test(text)
        ? '°C'
        : undefined,
  );
  const unit = stated.find((each) => each !== undefined);
  if (unit) return { unit, isSure: true };
  const middle = numbers.toSorted((a, b) => a - b)[Math.floor(numbers.length / 2)] ?? 0;
  return { unit: middle > UNIT_LINE ? '°F' : '°C', isSure: false };
}

/** Where dates may be read both ways: as the readings follow each other in smaller steps. */
function orderByTheClock(data: readonly CsvRow[], when: TimeColumns): DateOrder {
  const length = (order: DateOrder): number => {
    const times = data.flatMap((row) => readTime(timeText(row, when), order)?.wallMs ?? []);
    return times.reduce((sum, each, i) => sum + Math.abs(each - (times[i - 1] ?? each)), 0);
  };
  return length('month first') < length('day first') ? 'month first' : 'day first';
}
