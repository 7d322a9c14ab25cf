import type { Day } from '../core/calendar.ts';
import { POSITION } from '../commands/read-animal-lines.ts';
import { readDay } from './day.ts';
import type { Table } from './columns.ts';
import type { GridRow } from './grid.ts';
import type { Facts, Fault, RowRead, UnknownWord } from './item.ts';
import { createCells, type Cells } from './row-cells.ts';
import { readItems } from './row-items.ts';
import { sexIn } from './trade-text.ts';
import { createWordsAsked, type WordsAsked } from './words-asked.ts';

/** A table as it was understood, row by row. */
export interface RowsRead {
  readonly rows: readonly RowRead[];
  readonly faults: readonly Fault[];
  readonly words: readonly UnknownWord[];
}

const LONGEST = { name: 60, traits: 300 };

/** Reads each row of a table; `words` are what the keeper said of words that were not known. */
export function readRows(
  table: Table,
  words: Readonly<Record<string, string>>,
  today: Day,
): RowsRead {
  const cells = createCells(table, today);
  const asked = createWordsAsked(words);
  const rows = table.rows.map((row): RowRead => {
    const [name] = cells.all(row, 'name');
    const isTooLong = name !== undefined && name.text.length > LONGEST.name;
    if (isTooLong) cells.fault(name, `is too long: a name has ${LONGEST.name} letters at most`);
    return {
      line: row.line,
      name: isTooLong ? '' : (name?.text.replaceAll(/\s+/g, ' ') ?? ''),
      facts: factsIn(row, cells, asked),
      items: readItems(row, cells, asked),
    };
  });
  return { rows, faults: cells.faults(), words: asked.all() };
}

const SEXES = ['female', 'male', 'unknown'] as const;

function factsIn(row: GridRow, cells: Cells, asked: WordsAsked): Facts {
  const [sex] = cells.all(row, 'sex');
  const [hatched] = cells.all(row, 'hatched');
  const [arrived] = cells.all(row, 'arrived');
  const [position] = cells.all(row, 'position');
  const traits = cells.all(row, 'traits').map(({ text }) => text);
  const place = position?.text.toUpperCase().replaceAll(/\s+/g, '');
  const isPlace = place !== undefined && POSITION.test(place) && !readDay(place, READ);
  if (position && !isPlace) cells.fault(position, 'is no tub, like B4-2');
  const joined = traits.join(', ');
  if (joined.length > LONGEST.traits) {
    const [said] = cells.all(row, 'traits');
    if (said) cells.fault(said, `is too long: genes have ${LONGEST.traits} letters at most`);
  }
  return {
    sex: sex && asked.meaningOf('sex', sex, sexIn(sex.text), SEXES),
    hatchedDay: hatched && cells.day(hatched)?.day,
    arrivedDay: arrived && cells.day(arrived)?.day,
    traits: joined === '' || joined.length > LONGEST.traits ? undefined : joined,
    position: isPlace ? place : undefined,
  };
}

const READ = { order: 'day first', swapped: false } as const;
