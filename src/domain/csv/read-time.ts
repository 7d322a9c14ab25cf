import { wallMs } from '../core/calendar.ts';

/** In which order a date with a two-digit month and day is written. */
export const dateOrders = ['day first', 'month first'] as const;
export type DateOrder = (typeof dateOrders)[number];

/** What a clock on the wall showed, or a moment that needs no zone to be known. */
export interface WrittenTime {
  /** Milliseconds since 1970, as if the clock stood in UTC. */
  readonly wallMs: number;
  /** Minutes that the clock was ahead of UTC, where the file says so. */
  readonly offsetMin?: number | undefined;
}

const MONTHS = 'jan feb mar apr may jun jul aug sep oct nov dec'.split(' ');

const TIME =
  /^(\d{1,2}):(\d{2})(?::(\d{2})(?:[.,]\d+)?)?\s*(?:([ap])\.?m\.?)?\s*(z|utc|gmt|[+-]\d{2}:?\d{2})?$/i;

type Three = readonly [number, number, number];

/**
 * A date and a time as loggers write them: ISO 8601, day or month first, months by English name,
 * 12 or 24 hours, with an offset or without; or seconds or milliseconds since 1970.
 *
 * Undefined: not understood, or no such day or hour.
 */
export function readTime(written: string, order: DateOrder): WrittenTime | undefined {
  const text = written.trim();
  if (/^\d{10}(?:\.\d+)?$|^\d{13}$/.test(text)) {
    const ms = text.length === 13 ? Number(text) : Math.floor(Number(text)) * 1000;
    return { wallMs: ms, offsetMin: 0 };
  }
  const cut = /^(.+?)(?:T|,?\s+)(\d{1,2}:.+)$/i.exec(text);
  const date = readDate(cut?.[1] ?? '', order);
  const time = readClock(cut?.[2] ?? '');
  if (!date || !time) return undefined;
  const ms = wallMs(date, time.clock);
  return ms === undefined ? undefined : { wallMs: ms, offsetMin: time.offsetMin };
}

/** Year, month and date of a written day, which may be no such day: `wallMs` tells. */
export function readDate(text: string, order: DateOrder): Three | undefined {
  const iso = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})$/.exec(text);
  if (iso) return [Number(iso[1]), Number(iso[2]), Number(iso[3])];
  const numbers = /^(\d{1,2})[-/.](\d{1,2})[-/.](\d{4}|\d{2})$/.exec(text);
  if (numbers) {
    const [first, second] = [Number(numbers[1]), Number(numbers[2])];
    const year = fullYear(numbers[3] ?? '');
    return order === 'day first' ? [year, second, first] : [year, first, second];
  }
  const named = /^(\d{1,2})[-. ]+([a-z]{3,9})[-., ]+(\d{4}|\d{2})$/i.exec(text);
  if (named) return withMonth(named[3] ?? '', named[2] ?? '', named[1] ?? '');
  const american = /^([a-z]{3,9})\.? +(\d{1,2}),? +(\d{4})$/i.exec(text);
  return american ? withMonth(american[3] ?? '', american[1] ?? '', american[2] ?? '') : undefined;
}

const fullYear = (text: string): number => Number(text) + (text.length === 2 ? 2000 : 0);

function withMonth(year: string, name: string, date: string): Three | undefined {
  const month = MONTHS.indexOf(name.slice(0, 3).toLowerCase()) + 1;
  return month === 0 ? undefined : [fullYear(year), month, Number(date)];
}

/** A time of day, with its offset where it says one. */
export function readClock(
  text: string,
): { readonly clock: Three; readonly offsetMin: number | undefined } | undefined {
  const [, hours = '', minutes, seconds = '0', half, zone] = TIME.exec(text.trim()) ?? [];
  if (minutes === undefined) return undefined;
  let hour = Number(hours);
  if (half !== undefined) {
    if (hour < 1 || hour > 12) return undefined;
    hour = (hour % 12) + (half.toLowerCase() === 'p' ? 12 : 0);
  }
  return { clock: [hour, Number(minutes), Number(seconds)], offsetMin: readOffset(zone) };
}

function readOffset(zone: string | undefined): number | undefined {
  if (zone === undefined) return undefined;
  const [, sign, hours, minutes] = /^([+-])(\d{2}):?(\d{2})$/.exec(zone) ?? [];
  return sign === undefined ? 0 : Number(`${sign}1`) * (60 * Number(hours) + Number(minutes));
}

/**
 * What dates say of their own order: a number over 12 is no month. Undefined where every date may
 * be read both ways.
 */
export function orderOf(dates: Iterable<string>): DateOrder | undefined {
  const votes = { 'day first': 0, 'month first': 0 };
  for (const date of dates) {
    const [, first, second] = /^\s*(\d{1,2})[-/.](\d{1,2})[-/.]\d/.exec(date) ?? [];
    if (Number(first) > 12) votes['day first'] += 1;
    if (Number(second) > 12) votes['month first'] += 1;
  }
  if (votes['day first'] === votes['month first']) return undefined;
  return votes['day first'] > votes['month first'] ? 'day first' : 'month first';
}

/** Whether a date is written so that its order has to be known. */
export const needsOrder = (written: string): boolean =>
  /^\s*\d{1,2}[-/.]\d{1,2}[-/.]\d/.test(written);
