import { momentOf, type Day } from '../core/calendar.ts';
import { lineWords } from '../csv/line-words.ts';
import type { Draft } from '../events/event.ts';
import { contradictionIn, readAmount } from './amount.ts';
import { readTable, type Column, type Table } from './columns.ts';
import { dryRun, type DryRun, type DryRunWorld } from './dry-run.ts';
import { filled, type Grid, type Workbook } from './grid.ts';
import type { Fault } from './item.ts';
import type { ColumnPreview, LeftOut, SheetChoices, SheetPreview } from './preview.ts';
import { readRows } from './read-rows.ts';

/** A look at a file: what is shown of it, what would be written, and what is left out. */
export interface Look {
  readonly preview: SheetPreview;
  readonly drafts: readonly Draft[];
  readonly leftOut: readonly Fault[];
  readonly table: Table;
}

/** As many questions as a screen is sent at once. */
const MOST_ASKS = 300;

const emptyGrid: Grid = { name: '', rows: [], merged: [], formulas: 0, formulasWithout: 0 };

/** Reads a workbook by the keeper's choices and holds it against the collection. */
export function lookInto(
  { kind, sheets }: Workbook,
  choices: SheetChoices,
  world: Omit<DryRunWorld, 'answers'>,
): Look {
  const grid = sheets[choices.sheet] ?? sheets[0] ?? emptyGrid;
  const table = readTable(choices.leaveMerged ? grid.rows : filled(grid), choices.columns);
  const read = readRows(table, choices.words, momentOf(world.clock).slice(0, 10) as Day);
  const run = dryRun(read, { ...world, answers: choices.answers });
  const open = run.asks.filter(({ answer }) => answer === undefined);
  const leftOut = [
    ...run.faults,
    ...run.asks
      .filter(
        ({ answer, code }) => answer === undefined || (answer === 'leave' && code !== 'name-slip'),
      )
      .map(({ line, text, messages, answer, name }): Fault => {
        const why = `${messages.join(' ')} ${answer ? 'You left it out.' : 'Not answered.'}`;
        return { line, heading: name, text, why };
      }),
  ];
  return {
    table,
    drafts: run.drafts,
    leftOut,
    preview: {
      kind,
      sheets: sheets.map(({ name, rows }) => ({ name, rows: rows.length })),
      sheet: Math.max(0, sheets.indexOf(grid)),
      merged: grid.merged.length,
      formulas: grid.formulas,
      formulasWithout: grid.formulasWithout,
      headingLine: table.headingLine,
      rows: table.rows.length,
      columns: table.columns.map((column) => columnPreview(column, table)),
      words: read.words,
      newAnimals: run.newAnimals,
      knownAnimals: run.knownAnimals,
      records: countsOf(run),
      fresh: run.drafts.length,
      known: run.known,
      asks: run.asks.slice(0, MOST_ASKS),
      askCount: run.asks.length,
      askKinds: kindsOf(run),
      openCount: open.length,
      leftOut: grouped(run.faults),
      leftOutCount: run.faults.length,
      mustSay: mustSay(table),
    },
  };
}

/** The same word on a screen as in a list of what was taken in. */
const RECORD_WORDS: readonly (readonly [Draft['type'], string, string])[] = [
  ['weighed', 'weight', 'weights'],
  ['meal-offered', 'meal', 'meals'],
  ['shed', 'shed', 'sheds'],
  ['opaque-seen', 'in blue', 'in blue'],
  ['regurgitated', 'meal brought up', 'meals brought up'],
  ['measured', 'length', 'lengths'],
  ['noted', 'note', 'notes'],
  ['moved', 'tub', 'tubs'],
  ['identified', 'known snake described', 'known snakes described'],
];

const countsOf = ({ drafts }: DryRun): SheetPreview['records'] =>
  RECORD_WORDS.flatMap(([type, one, many]) => {
    const count = drafts.filter((draft) => draft.type === type).length;
    return count === 0 ? [] : [{ what: count === 1 ? one : many, count }];
  });

function kindsOf({ asks }: DryRun): SheetPreview['askKinds'] {
  const kinds = new Map<string, { code: string; count: number; open: number }>();
  for (const { code, answer } of asks) {
    const kind = kinds.get(code) ?? { code, count: 0, open: 0 };
    kind.count += 1;
    if (answer === undefined) kind.open += 1;
    kinds.set(code, kind);
  }
  return [...kinds.values()];
}

/** One line for each reason, however many rows it holds for. */
function grouped(faults: readonly Fault[]): readonly LeftOut[] {
  const groups = new Map<string, Fault[]>();
  for (const fault of faults) {
    const key = `${fault.heading}/${fault.why}`;
    groups.set(key, [...(groups.get(key) ?? []), fault]);
  }
  return [...groups.values()].flatMap((group) => {
    const [first] = group;
    if (!first) return [];
    return {
      why: first.why,
      heading: first.heading,
      count: group.length,
      lines: lineWords(group.map(({ line }) => line)),
      example: first.text.slice(0, 40),
    };
  });
}

function columnPreview(column: Column, { rows }: Table): ColumnPreview {
  const { index, letters, heading, samples, meaning, unit, kind, order } = column;
  return {
    index,
    letters,
    heading,
    samples,
    meaning,
    unit: unit && kind && { ...unit, kind },
    order: order?.matters || order?.looksSwapped ? order : undefined,
    notes: contradictions(column, rows),
  };
}

/** Amounts said twice that are not the same, as in `30 °C (90 °F)`. */
function contradictions({ index, kind, unit }: Column, rows: Table['rows']): readonly string[] {
  if (!kind || !unit) return [];
  const found = rows.flatMap(({ line, cells }) => {
    const read = readAmount(cells[index] ?? '', kind, false);
    const why = read && contradictionIn({ ...read, unit: read.unit ?? unit.unit }, kind);
    return why === undefined ? [] : [{ line, why }];
  });
  const [first] = found;
  return first
    ? [
        `${found.length === 1 ? 'One value contradicts' : `${found.length} values contradict`} itself: ${first.why}, on line ${first.line}.`,
      ]
    : [];
}

function mustSay({ columns, rows }: Table): readonly string[] {
  const said = columns.flatMap(({ heading, unit, order, meaning }) => [
    ...(unit?.isOpen && meaning !== 'warmth' ? [`the unit of ${heading}`] : []),
    ...(order?.isOpen ? [`the order of dates in ${heading}`] : []),
  ]);
  const hasWho = columns.some(({ meaning }) => meaning === 'name' || meaning === 'position');
  return hasWho || rows.length === 0 ? said : ['which column holds the names', ...said];
}
