import { readDay } from './day.ts';
import type { GridRow } from './grid.ts';
import type { CellAsk, Content, Item, When } from './item.ts';
import type { AmountRead, Cells, DayRead, Said } from './row-cells.ts';
import {
  happeningIn,
  isPreyText,
  isRegurgitation,
  outcomeIn,
  preyIn,
  shedIn,
  type Happening,
} from './trade-text.ts';
import type { WordsAsked } from './words-asked.ts';

const OUTCOMES = ['ate', 'refused', 'partly', 'left'] as const;
const QUALITIES = ['whole', 'pieces', 'caps left', 'tail tip left'] as const;
const HAPPENINGS: readonly Happening[] = [
  'weight',
  'meal',
  'refusal',
  'shed',
  'blue',
  'regurgitated',
  'length',
  'note',
];
const LONGEST_REMARK = 500;

/** The records that a row holds, in the order of what they are and not of its columns. */
export function readItems(row: GridRow, cells: Cells, asked: WordsAsked): readonly Item[] {
  const { line } = row;
  const items: Item[] = [];
  const dayOf = (said: Said | undefined): DayRead | undefined => said && cells.day(said);
  const [dateCell] = cells.all(row, 'date');
  const date = dayOf(dateCell);
  // A row whose day is not understood says nothing that can be placed.
  if (dateCell && !date) return [];
  const [timeCell] = cells.all(row, 'time');
  const clockMs = date?.clockMs ?? (date && timeCell && cells.clock(timeCell));
  const rowDay: DayRead | undefined = date && { ...date, clockMs };

  function put(
    content: Content,
    said: Said,
    day: DayRead | undefined,
    asks: readonly CellAsk[] = [],
  ) {
    const when: When | undefined = day && { day: day.day, clockMs: day.clockMs };
    const nth = items.filter(({ content: { type } }) => type === content.type).length;
    const key = `${line}/${content.type}${nth === 0 ? '' : `/${nth}`}`;
    items.push({
      key,
      line,
      text: said.text,
      when,
      content,
      asks: [...(day?.asks ?? []), ...asks],
    });
  }

  function weigh(said: Said, day: DayRead | undefined, amount: AmountRead | undefined) {
    if (!amount) return;
    const { base, value, unit, asks } = amount;
    const entered = unit === 'oz' || unit === 'lb' ? { entered: { value, unit } } : {};
    put({ type: 'weighed', massG: base, ...entered }, said, day, asks);
  }

  function meal(said: Said, day: DayRead | undefined, isRefused = false) {
    const outcomes = cells.all(row, 'outcome');
    const outcomeCell = outcomes.find(({ column }) => column === said.column) ?? outcomes[0];
    const isOutcome = outcomeCell?.column === said.column;
    const [preyMass] = cells.all(row, 'prey mass');
    const { text } = said;
    if (isRegurgitation(`${text} ${outcomeCell?.text ?? ''}`)) {
      put({ type: 'regurgitated' }, said, day);
      return;
    }
    const inText = outcomeIn(text);
    // One column may say both, as in `refused small rat`.
    const saysPrey = isPreyText(text);
    const outcome =
      outcomeCell && !(isOutcome && saysPrey)
        ? asked.meaningOf('meal', outcomeCell, outcomeIn(outcomeCell.text), OUTCOMES)
        : isRefused
          ? 'refused'
          : (inText ?? 'ate');
    if (outcome === undefined) {
      if (outcomeCell) cells.fault(outcomeCell, 'does not say whether it ate');
      return;
    }
    const isPrey = said.column.meaning === 'prey' || said.column.meaning === 'value';
    const named = saysPrey || (isPrey && inText === undefined) ? text : '';
    const prey = preyIn(named, preyMass && cells.amount(preyMass)?.base);
    put({ type: 'meal-offered', prey, outcome }, said, day);
  }

  function shed(said: Said, day: DayRead | undefined, isPlain: boolean) {
    const quality = isPlain
      ? (shedIn(said.text) ?? 'whole')
      : asked.meaningOf('shed', said, shedIn(said.text), QUALITIES);
    if (quality) put({ type: 'shed', quality }, said, day);
    else cells.fault(said, 'does not say how it shed');
  }

  function measure(said: Said, day: DayRead | undefined, amount: AmountRead | undefined) {
    if (!amount) return;
    if (amount.base < 15 || amount.base > 250) cells.fault(said, 'is no length of a ball python');
    else put({ type: 'measured', lengthCm: amount.base }, said, day, amount.asks);
  }

  const [weighedOn] = cells.all(row, 'weighed on');
  for (const said of cells.all(row, 'mass')) {
    const { headingDay, order } = said.column;
    const below = headingDay !== undefined && order ? readDay(headingDay, order) : undefined;
    const day = below ? { ...below, asks: [] } : (dayOf(weighedOn) ?? rowDay);
    weigh(said, day, cells.amount(said));
  }
  const [fedOn] = cells.all(row, 'fed on');
  const [mealCell] = [
    ...cells.all(row, 'prey'),
    ...cells.all(row, 'outcome'),
    ...(fedOn ? [fedOn] : []),
  ];
  if (mealCell && (!fedOn || cells.day(fedOn))) meal(mealCell, dayOf(fedOn) ?? rowDay);
  const [shedOn] = cells.all(row, 'shed on');
  const [shedCell] = [...cells.all(row, 'shed'), ...(shedOn ? [shedOn] : [])];
  if (shedCell && (!shedOn || cells.day(shedOn))) {
    shed(shedCell, dayOf(shedOn) ?? rowDay, shedCell === shedOn);
  }
  for (const said of cells.all(row, 'length')) measure(said, rowDay, cells.amount(said));
  const [what] = cells.all(row, 'happening');
  if (what) happen(what);
  remark();
  return items;

  function happen(said: Said): void {
    const [value] = cells.all(row, 'value');
    const kind = asked.meaningOf('happening', said, happeningIn(said.text), HAPPENINGS);
    const of = value ?? said;
    switch (kind) {
      case undefined:
        cells.fault(said, 'does not say what happened');
        break;
      case 'weight': {
        if (value) weigh(value, rowDay, cells.amount(withKind(value, 'mass')));
        else if (cells.all(row, 'mass').length === 0) cells.fault(said, 'says no weight');
        break;
      }
      case 'meal':
      case 'refusal':
        if (!mealCell) meal(of, rowDay, kind === 'refusal');
        break;
      case 'shed':
        if (!shedCell) shed(of, rowDay, true);
        break;
      case 'blue':
        put({ type: 'opaque-seen' }, said, rowDay);
        break;
      case 'regurgitated':
        put({ type: 'regurgitated' }, said, rowDay);
        break;
      case 'length':
        if (value) measure(value, rowDay, cells.amount(withKind(value, 'length')));
        break;
      case 'note':
        if (value) put({ type: 'noted', text: value.text.slice(0, LONGEST_REMARK) }, value, rowDay);
    }
  }

  /** Beside the first record of its row that takes one, else a note of its own. */
  function remark(): void {
    const [said] = cells.all(row, 'remark');
    if (!said) return;
    const text = said.text.replaceAll(/\s+/g, ' ').slice(0, LONGEST_REMARK);
    const at = items.findIndex(({ content: { type } }) =>
      ['weighed', 'meal-offered', 'shed'].includes(type),
    );
    const item = items[at];
    if (item) items[at] = { ...item, content: { ...item.content, remark: text } as Content };
    else put({ type: 'noted', text }, said, rowDay);
  }
}

/** A column of values of all kinds is measured by what happened; without a word, in the usual unit. */
const withKind = (said: Said, kind: 'mass' | 'length'): Said => ({
  ...said,
  column: {
    ...said.column,
    kind,
    unit: { unit: kind === 'mass' ? 'g' : 'cm', because: '', isOpen: false },
  },
});
