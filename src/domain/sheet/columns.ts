import { POSITION } from '../commands/read-animal-lines.ts';
import { readAmount, unitInHeading, type Measured, type Unit } from './amount.ts';
import { guessUnit, type UnitGuess } from './column-unit.ts';
import { guessOrder, type OrderGuess } from './day-order.ts';
import { readDay } from './day.ts';
import { columnLetters, type GridRow } from './grid.ts';
import { isDayMeaning, meaningNames, meanings, measuredBy, type Meaning } from './meanings.ts';
import { isBlank, isPreyText, outcomeIn, sexIn } from './trade-text.ts';

/** What the keeper says of a column; what is left out is guessed. */
export interface ColumnChoice {
  readonly meaning?: Meaning | undefined;
  readonly order?: OrderGuess['order'] | undefined;
  readonly swapped?: boolean | undefined;
  readonly unit?: Unit | undefined;
}

/** A column as it is read. */
export interface Column {
  readonly index: number;
  readonly letters: string;
  /** The heading, or `Column C`. */
  readonly heading: string;
  readonly samples: readonly string[];
  readonly meaning: Meaning;
  readonly order?: OrderGuess | undefined;
  readonly kind?: Measured | undefined;
  readonly unit?: UnitGuess | undefined;
  /** The heading is a day itself: all weights below it are of that day. */
  readonly headingDay?: string | undefined;
}

export interface Table {
  /** The line of the headings; undefined where there are none. */
  readonly headingLine?: number | undefined;
  readonly columns: readonly Column[];
  readonly rows: readonly GridRow[];
}

const SAMPLES = 3;
const HEADING_WITHIN = 20;
const either = { order: 'day first', swapped: false } as const;

/** Guesses the headings and what each column holds; what the keeper said stands. */
export function readTable(
  rows: readonly GridRow[],
  choices: Readonly<Record<number, ColumnChoice>>,
): Table {
  const at = headingRow(rows);
  const heading = at === undefined ? undefined : rows[at];
  const data = rows.slice(at === undefined ? 0 : at + 1);
  const width = data.reduce((most, { cells }) => Math.max(most, cells.length), 0);
  const raw = Array.from({ length: width }, (_, index) => ({
    index,
    letters: columnLetters(index),
    words: heading?.cells[index]?.trim() ?? '',
    cells: data.flatMap(({ line, cells }) => {
      const text = cells[index] ?? '';
      return isBlank(text) ? [] : [{ line, text }];
    }),
  }));
  const guessed = guessMeanings(
    raw.map(({ words, cells }) => ({ words, cells: cells.map(({ text }) => text) })),
  );
  const columns = raw.map(({ index, letters, words, cells }): Column => {
    const choice = choices[index] ?? {};
    const meaning = choice.meaning ?? guessed[index] ?? 'nothing';
    const texts = cells.map(({ text }) => text);
    const headingDay = meaning === 'mass' && readDay(words, either) ? words : undefined;
    const kind = meaning in measuredBy ? measuredBy[meaning as keyof typeof measuredBy] : undefined;
    const unit = kind && guessUnit(headingDay === undefined ? words : '', texts, kind);
    const order = isDayMeaning(meaning) ? guessOrder(cells) : undefined;
    return {
      index,
      letters,
      heading: words === '' ? `Column ${letters}` : words,
      samples: [...new Set(texts)].slice(0, SAMPLES),
      meaning,
      headingDay,
      kind,
      unit: unit && withUnit(unit, choice.unit),
      order: order && withOrder(order, choice),
    };
  });
  return { headingLine: heading?.line, columns: orderFromOthers(columns, choices), rows: data };
}

const withUnit = (guess: UnitGuess, unit: Unit | undefined): UnitGuess =>
  unit === undefined ? guess : { ...guess, unit, isOpen: false };

function withOrder(guess: OrderGuess, { order, swapped }: ColumnChoice): OrderGuess {
  const isAnswered = order !== undefined && (!guess.looksSwapped || swapped !== undefined);
  return {
    ...guess,
    order: order ?? guess.order,
    swapped: swapped ?? false,
    isOpen: guess.isOpen && !isAnswered && !(guess.looksSwapped && swapped !== undefined),
  };
}

/** A column that does not tell is read like one that does; headings that are days, too. */
function orderFromOthers(
  columns: readonly Column[],
  choices: Readonly<Record<number, ColumnChoice>>,
): readonly Column[] {
  const headings = columns.flatMap(({ headingDay, index }) =>
    headingDay === undefined ? [] : [{ line: index, text: headingDay }],
  );
  const sure = columns.find(({ order }) => order && order.matters && !order.isOpen);
  const ofHeadings = guessOrder(headings);
  return columns.map((column) => {
    const { order, headingDay, index } = column;
    if (headingDay !== undefined) {
      const said = ofHeadings.isOpen && sure?.order ? { ...sure.order, isOpen: false } : ofHeadings;
      return { ...column, order: withOrder(said, choices[index] ?? {}) };
    }
    if (!order?.isOpen || order.looksSwapped || !sure?.order || /only month/.test(order.because)) {
      return column;
    }
    const because = `Read like ${sure.heading}: ${sure.order.because}`;
    return { ...column, order: { ...order, order: sure.order.order, because, isOpen: false } };
  });
}

const isNumber = (text: string): boolean => /^[+-]?[\d.,]+$/.test(text.trim());

const isData = (text: string): boolean => isNumber(text) || readDay(text, either) !== undefined;

/** How much a row looks like headings. */
function headingScore({ cells }: GridRow): number {
  const words = cells.filter((cell) => cell.trim() !== '');
  const known = new Set(words.flatMap((cell) => byHeading(cell) ?? []));
  // Days may be headings themselves, of what was weighed on them.
  const data = words.filter((cell) => isNumber(cell)).length;
  return words.length < 2 || known.size === 0 ? 0 : known.size - data / 4;
}

/** The first row with two words at least that looks like headings; a title above it does not. */
function headingRow(rows: readonly GridRow[]): number | undefined {
  const within = rows.slice(0, HEADING_WITHIN);
  let best: { readonly at: number; readonly score: number } | undefined;
  for (const [at, row] of within.entries()) {
    const found = headingScore(row);
    if (found > (best?.score ?? 0)) best = { at, score: found };
  }
  return best && best.score >= 1 ? best.at : undefined;
}

function byHeading(words: string): Meaning | undefined {
  const text = words.trim().toLowerCase().replaceAll(/\s+/g, ' ');
  return text === '' || text.length > 40
    ? undefined
    : meaningNames.find((meaning) => meanings[meaning].heading.test(text));
}

interface Raw {
  readonly words: string;
  readonly cells: readonly string[];
}

/** Of a file these stand in one column at most. */
const ONCE: readonly Meaning[] = [
  'name',
  'sex',
  'position',
  'hatched',
  'traits',
  'date',
  'time',
  'happening',
  'value',
];

function guessMeanings(columns: readonly Raw[]): readonly Meaning[] {
  const taken = new Set<Meaning>();
  const take = (meaning: Meaning): Meaning => {
    if (ONCE.includes(meaning) && taken.has(meaning)) return 'nothing';
    taken.add(meaning);
    return meaning;
  };
  const first = columns.map((column): Meaning | undefined => {
    if (column.cells.length === 0) return 'nothing';
    const headed = headedBy(column);
    return headed && take(headed);
  });
  return columns.map((column, index) => first[index] ?? take(byCells(column, taken) ?? 'nothing'));
}

/** By its heading, where what stands below it can be that. */
function headedBy({ words, cells }: Raw): Meaning | undefined {
  const meaning = byHeading(words);
  const isDay = mostly(cells, (cell) => readDay(cell, either) !== undefined);
  const isMass = mostly(cells, (cell) => readAmount(cell, 'mass', false) !== undefined);
  if (readDay(words, either) && isMass) return 'mass';
  switch (meaning) {
    case 'shed':
      return isDay ? 'shed on' : 'shed';
    case 'prey':
    case 'outcome':
      return isDay
        ? 'fed on'
        : meaning === 'prey' &&
            !mostly(cells, (cell) => isPreyText(cell)) &&
            mostly(cells, (cell) => outcomeIn(cell) !== undefined)
          ? 'outcome'
          : meaning;
    case 'mass':
      return isDay && !isMass ? 'weighed on' : 'mass';
    case 'fed on':
    case 'shed on':
    case 'weighed on':
      return isDay ? meaning : undefined;
    default:
      return meaning;
  }
}

const SHARE = 0.7;

const mostly = (cells: readonly string[], is: (cell: string) => boolean): boolean =>
  cells.length > 0 && cells.filter((cell) => is(cell)).length >= SHARE * cells.length;

const says = (kind: Measured) => (cell: string) =>
  readAmount(cell, kind, false)?.unit !== undefined;

/** By what stands in it, where the heading says nothing. */
function byCells({ words, cells }: Raw, taken: ReadonlySet<Meaning>): Meaning | undefined {
  const is = (what: (cell: string) => boolean): boolean => mostly(cells, what);
  const fresh = (meaning: Meaning): Meaning | undefined =>
    taken.has(meaning) ? undefined : meaning;
  if (is((cell) => readDay(cell, either) !== undefined)) return fresh('date');
  if (is((cell) => sexIn(cell) !== undefined)) return fresh('sex');
  if (is(says('warmth'))) return 'warmth';
  if (is(says('mass')) || (unitInHeading(words, 'mass') && is((cell) => isData(cell))))
    return 'mass';
  if (is((cell) => POSITION.test(cell.trim()))) return fresh('position');
  if (is((cell) => isPreyText(cell))) return fresh('prey');
  if (is((cell) => outcomeIn(cell) !== undefined && cell.length < 12)) return fresh('outcome');
  return is((cell) => !isData(cell) && cell.length <= 60) ? fresh('name') : undefined;
}
