import { addDays as addDaysToDate } from 'date-fns/addDays';
import type * as z from 'zod/mini';

// The only module of the domain that knows dates: one meaning for "day", "night" and "moment".

/** A calendar day as a person writes it, `2026-03-29`: no time of day and no time zone. */
export type Day = string & z.core.$brand<'Day'>;

/**
 * A moment with the offset of the clock it was read from, `2026-03-29T23:10:00+02:00`.
 *
 * The local hour stays readable in it for ever, whatever zone or summer time comes later.
 * Source: RFC 3339 §5.6 `date-time`.
 */
export type Moment = string & z.core.$brand<'Moment'>;

/** What the outer layers read from the clock and hand in. */
export interface Clock {
  /** Milliseconds since 1970 UTC. */
  readonly ms: number;
  /** Minutes that local time is ahead of UTC. */
  readonly offsetMin: number;
}

/**
 * Milliseconds since 1970 UTC.
 *
 * Moments as this program writes them, to the second and with an offset, are read digit by digit:
 * `Date.parse` takes four times as long, and a start reads the whole log.
 */
export function instantMs(moment: Moment): number {
  const mark = moment.length === 25 ? moment.charAt(19) : '';
  const sign = mark === '+' ? 1 : mark === '-' ? -1 : 0;
  const year = sign === 0 ? 0 : 100 * twoAt(moment, 0) + twoAt(moment, 2);
  if (year < 100) return Date.parse(moment); // Date.UTC takes these for years of the 20th century.
  const local = Date.UTC(
    year,
    twoAt(moment, 5) - 1,
    twoAt(moment, 8),
    twoAt(moment, 11),
    twoAt(moment, 14),
    twoAt(moment, 17),
  );
  return local - sign * 60_000 * (60 * twoAt(moment, 20) + twoAt(moment, 23));
}

/** The number that two digits at a place of a text make. */
const twoAt = (text: string, at: number): number =>
  10 * text.charCodeAt(at) + text.charCodeAt(at + 1) - 11 * ZERO;
const ZERO = 48;

const two = (n: number): string => String(n).padStart(2, '0');

/**
 * The clock's reading as a moment, to the second.
 *
 * @example momentOf({ ms: 0, offsetMin: 60 }) //=> '1970-01-01T01:00:00+01:00'
 */
export function momentOf({ ms, offsetMin }: Clock): Moment {
  const local = new Date(ms + offsetMin * 60_000).toISOString().slice(0, 19);
  const ahead = Math.abs(offsetMin);
  const sign = offsetMin < 0 ? '-' : '+';
  return `${local}${sign}${two(Math.floor(ahead / 60))}:${two(ahead % 60)}` as Moment;
}

/**
 * Calendar days from one day to another.
 *
 * Unit: whole days, negative when `to` is the earlier one. A day of 23 or 25 hours counts as one.
 *
 * @example daysBetween('2026-03-28', '2026-03-30') //=> 2
 */
export const daysBetween = (from: Day, to: Day): number =>
  Math.round((utcMs(to) - utcMs(from)) / DAY_MS);

export const DAY_MS = 86_400_000;

/**
 * A day of UTC has always 24 hours, so no zone comes into it. A rule asks this a dozen times for each
 * snake: read digit by digit like a moment, it takes a twentieth of the time of two local dates.
 */
const utcMs = (day: Day): number =>
  Date.UTC(100 * twoAt(day, 0) + twoAt(day, 2), twoAt(day, 5) - 1, twoAt(day, 8));

export function addDays(day: Day, days: number): Day {
  // Within a month no calendar is needed, and a start asks this for each weight of each snake.
  const inMonth = twoAt(day, 8) + days;
  if (inMonth >= 1 && inMonth <= SHORTEST_MONTH && Number.isInteger(days))
    return `${day.slice(0, 8)}${two(inMonth)}` as Day;
  const date = addDaysToDate(localDate(day), days);
  const year = String(date.getFullYear()).padStart(4, '0');
  return `${year}-${two(date.getMonth() + 1)}-${two(date.getDate())}` as Day;
}

const SHORTEST_MONTH = 28;

/** The day's first moment on this device, which is all that day arithmetic needs. */
function localDate(day: Day): Date {
  const [year = 0, month = 1, date = 1] = day.split('-').map(Number);
  return new Date(year, month - 1, date);
}

/** Days from 1970-01-01 to a day: what a ramp over the years counts in. */
export const dayNumber = (day: Day): number => Date.parse(`${day}T00:00:00Z`) / DAY_MS;

/** The day of such a number. */
export const dayOfNumber = (number: number): Day =>
  new Date(number * DAY_MS).toISOString().slice(0, 10) as Day;

/** The number of a day of a year; where the month has fewer days, of its last one. */
export function dayNumberIn(year: number, month: number, date: number): number {
  const last = new Date(Date.UTC(year, month, 0)).getUTCDate();
  return Date.UTC(year, month - 1, Math.min(date, last)) / DAY_MS;
}

/**
 * What a clock on the wall shows, as if it stood in UTC; undefined for a date or time that is none.
 *
 * Unit: milliseconds since 1970.
 */
export function wallMs(
  [year, month, date]: readonly [number, number, number],
  [hour, minute, second]: readonly [number, number, number],
): number | undefined {
  if (hour > 23 || minute > 59 || second > 59) return undefined;
  const ms = Date.UTC(year, month - 1, date, hour, minute, second);
  const read = new Date(ms);
  const isThatDay = read.getUTCMonth() === month - 1 && read.getUTCDate() === date;
  return isThatDay && year > 99 ? ms : undefined;
}

/** The month of a day, 1 to 12. */
export const monthOf = (day: Day): number => Number(day.slice(5, 7));

/**
 * The room night a moment belongs to: before the rollover hour, it is still the evening before.
 *
 * Read from the moment's own local time, so that no later change of zone moves a record.
 *
 * @example roomNight('2026-11-25T00:20:00+01:00', 12) //=> '2026-11-24'
 */
export function roomNight(moment: Moment, rolloverHour: number): Day {
  const day = moment.slice(0, 10) as Day;
  const localHour = moment.endsWith('Z') ? new Date(moment).getUTCHours() : twoAt(moment, 11);
  return localHour < rolloverHour ? addDays(day, -1) : day;
}

/** Late evening of a day, for records that say only the day. */
export const eveningOf = (day: Day, offsetMin: number): Moment =>
  momentOf({ ms: Date.parse(`${day}T21:00:00Z`) - offsetMin * 60_000, offsetMin });
