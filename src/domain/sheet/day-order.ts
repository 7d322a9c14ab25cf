import type { DateOrder } from '../csv/read-time.ts';
import { isRealDate, type DayReading } from './day.ts';

/** A cell and the line it stands on. */
export interface Placed {
  readonly line: number;
  readonly text: string;
}

/** In which order a column writes day and month, and what says so. */
export interface OrderGuess extends DayReading {
  readonly because: string;
  readonly isOpen: boolean;
  /** Whether any of its dates can be read in two ways. */
  readonly matters: boolean;
  /** Real dates stand beside dates in words of digits, and look as if they were swapped. */
  readonly looksSwapped: boolean;
}

const TWO_NUMBERS = /^\s*(\d{1,2})([-/.])(\d{1,2})[-/.]\d/;

/** What a column's dates say of their own order, all of them. */
export function guessOrder(cells: readonly Placed[]): OrderGuess {
  const proof: { [Order in DateOrder]?: Placed } = {};
  let written = 0;
  let dots = 0;
  for (const cell of cells) {
    const [, first, mark, second] = TWO_NUMBERS.exec(cell.text) ?? [];
    if (mark === undefined) continue;
    written += 1;
    if (mark === '.') dots += 1;
    if (Number(first) > 12 && Number(second) <= 12) proof['day first'] ??= cell;
    if (Number(second) > 12 && Number(first) <= 12) proof['month first'] ??= cell;
  }
  const looksSwapped = mayBeSwapped(cells, proof);
  const guess = { matters: written > 0, looksSwapped, swapped: false };
  const { 'day first': day, 'month first': month } = proof;
  if (day && month) {
    const because = `${said(day)} can only be day first, ${said(month)} only month first. Say what holds for the others.`;
    return { ...guess, order: 'day first', because, isOpen: true };
  }
  const one = day ?? month;
  const because = one
    ? `${said(one)} can only be ${day ? 'day' : 'month'} first.`
    : written === 0
      ? 'Each date can be read in one way only.'
      : dots === written
        ? 'Dates with dots are written day first.'
        : 'Each of these dates can be read in both orders.';
  return {
    ...guess,
    order: month ? 'month first' : 'day first',
    because: looksSwapped ? `${because} ${SWAPPED}` : because,
    isOpen: looksSwapped || (!one && written > 0 && dots < written),
  };
}

const SWAPPED =
  'The other dates are real dates, and none has a day over 12: a program may have taken day for month in them.';

const said = ({ text, line }: Placed): string => `“${text.trim().slice(0, 20)}” on line ${line}`;

/** So many real dates are seldom all of the first twelve days of a month: under one in 200. */
const ENOUGH_REAL = 6;

function mayBeSwapped(
  cells: readonly Placed[],
  proof: { readonly [Order in DateOrder]?: Placed },
): boolean {
  if (!proof['day first'] && !proof['month first']) return false;
  const real = cells.filter(({ text }) => isRealDate(text));
  return (
    real.length >= ENOUGH_REAL && real.every(({ text }) => Number(text.trim().slice(8, 10)) <= 12)
  );
}
