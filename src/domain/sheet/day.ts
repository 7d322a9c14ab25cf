import { dayOfNumber, wallMs, type Day } from '../core/calendar.ts';
import { readClock, readDate, type DateOrder } from '../csv/read-time.ts';

/** How the dates of a column are to be read. */
export interface DayReading {
  readonly order: DateOrder;
  /** Real dates have day and month swapped, as after a program that took one for the other. */
  readonly swapped: boolean;
}

export interface WrittenDay {
  readonly day: Day;
  /** Milliseconds into the day, where the cell says a time as well. */
  readonly clockMs?: number | undefined;
  /** It can be read in the other order alone. */
  readonly againstOrder: boolean;
}

/** Days counted from 1900, as a spreadsheet leaves them in a text: of the years 2000 to 2063. */
const SERIAL = /^(?:3[7-9]|[45]\d)\d{3}$/;
/** Such a count of 1 January 1970. Source: ECMA-376 Part 1, 18.17.4.1. */
const SERIAL_OF_1970 = 25_569;

const ISO = /^\d{4}-\d{1,2}-\d{1,2}$/;

/** Undefined: no day, or none that ever was. */
export function readDay(text: string, { order, swapped }: DayReading): WrittenDay | undefined {
  const [, date = '', clock = ''] = /^(.*?)(?:(?:T|,?\s+)(\d{1,2}:.+))?$/i.exec(text.trim()) ?? [];
  if (SERIAL.test(date)) {
    return { day: dayOfNumber(Number(date) - SERIAL_OF_1970), againstOrder: false };
  }
  const time = clock === '' ? undefined : readClock(clock)?.clock;
  if (clock !== '' && !time) return undefined;
  const clockMs = time && (time[0] * 3_600 + time[1] * 60) * 1_000;
  const bare = date.replace(/^(?:mon|tue|wed|thu|fri|sat|sun)[a-z]*[.,]?\s+/i, '');
  const day = dayIn(bare, order, swapped);
  if (day) return { day, clockMs, againstOrder: false };
  const other = dayIn(bare, order === 'day first' ? 'month first' : 'day first', swapped);
  return other && { day: other, clockMs, againstOrder: true };
}

function dayIn(text: string, order: DateOrder, swapped: boolean): Day | undefined {
  const read = readDate(text, order);
  if (!read) return undefined;
  const [year, month, date] = read;
  const parts = swapped && ISO.test(text) && date <= 12 ? ([year, date, month] as const) : read;
  const ms = wallMs(parts, [0, 0, 0]);
  return ms === undefined ? undefined : dayOfNumber(ms / 86_400_000);
}

/** A time of day alone, in milliseconds. */
export function readClockMs(text: string): number | undefined {
  const clock = readClock(text)?.clock;
  if (!clock || clock[0] > 23 || clock[1] > 59) return undefined;
  return (clock[0] * 3_600 + clock[1] * 60) * 1_000;
}

export const isRealDate = (text: string): boolean => /^\d{4}-\d{2}-\d{2}(?: |$)/.test(text.trim());
