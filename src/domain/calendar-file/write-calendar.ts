import { addDays, daysBetween, momentOf, type Clock, type Day } from '../core/calendar.ts';
import { contentLine, textValue } from './content-line.ts';
import type { CalendarEntry, LookEntry, WindowEntry } from './entry.ts';
import { spanWords, dayWords } from './span-words.ts';

/**
 * The coming windows as an iCalendar file that any calendar can take in. Source: RFC 5545.
 *
 * No time in it names a zone. A window is whole days (`VALUE=DATE`), and those are the same days
 * everywhere. A look is at an hour of the snake room, `21:00`, and is written as floating local time
 * (§3.3.5, form 1): it stays 21:00 when the clocks change. UTC would be an hour off after a change,
 * and a named zone would need that zone's rules in the file (§3.6.5), which a later law can make
 * wrong. The price: a calendar carried to another zone rings by that zone's clock.
 *
 * An alarm stands a number of days and hours from the midnight its entry begins at, which is what
 * §3.8.6.3 offers for local time; an absolute one would have to be UTC. Some calendars count those as
 * exact hours and ring an hour off where the clocks change in between. An alarm on the evening before
 * the first day has only the hours to that midnight to count, and is right in all of them.
 *
 * A second file takes the place of the first: the uids are the same, and `SEQUENCE` and `DTSTAMP` rise
 * with time (RFC 5546 §2.1.5). Nothing is known of older exports, so the sequence is the minutes since
 * 2020.
 */
export function writeCalendar(entries: readonly CalendarEntry[], made: Clock): string {
  const stamp = utcTime(made);
  const sequence = Math.max(0, Math.floor((made.ms - YEAR_2020_MS) / 60_000));
  const events = entries.toSorted(inOrder).map((entry) =>
    block('VEVENT', [
      contentLine('UID', textValue(entry.uid)),
      contentLine('DTSTAMP', stamp),
      contentLine('SEQUENCE', String(sequence)),
      ...(entry.kind === 'window' ? windowLines(entry) : lookLines(entry)),
      contentLine('DESCRIPTION', textValue(entry.details)),
      // An expectation does not make the keeper busy.
      contentLine('TRANSP', 'TRANSPARENT'),
    ]),
  );
  return block('VCALENDAR', [
    contentLine('VERSION', '2.0'),
    contentLine('PRODID', '-//Nightdrop//Coming windows//EN'),
    contentLine('CALSCALE', 'GREGORIAN'),
    ...events,
  ]);
}

const YEAR_2020_MS = 1_577_836_800_000;

const inOrder = (a: CalendarEntry, b: CalendarEntry): number =>
  inText(a.firstDay, b.firstDay) || inText(a.uid, b.uid);
const inText = (a: string, b: string): number => (a < b ? -1 : Number(a > b));

const block = (name: string, lines: readonly string[]): string =>
  contentLine('BEGIN', name) + lines.join('') + contentLine('END', name);

function windowLines(entry: WindowEntry): readonly string[] {
  const { firstDay, lastDay, alarmAt } = entry;
  const title = windowTitle(entry);
  return [
    contentLine('SUMMARY', textValue(title)),
    contentLine('DTSTART;VALUE=DATE', dateValue(firstDay)),
    // The first day that no longer belongs to it. Source: RFC 5545 §3.6.1.
    contentLine('DTEND;VALUE=DATE', dateValue(addDays(lastDay, 1))),
    ...(alarmAt ? [alarm(title, 24 * daysBetween(firstDay, alarmAt.day) + alarmAt.hour)] : []),
  ];
}

/** @example 'Sorrel: lay, 12–22 May, most likely 16 May' */
export function windowTitle({ title, firstDay, lastDay, likelyDay }: WindowEntry): string {
  const span = firstDay === lastDay ? '' : `, ${spanWords(firstDay, lastDay)}`;
  return `${title}${span}${likelyDay === undefined ? '' : `, most likely ${dayWords(likelyDay)}`}`;
}

function lookLines({ title, firstDay, lastDay, hour }: LookEntry): readonly string[] {
  const times = daysBetween(firstDay, lastDay) + 1;
  return [
    contentLine('SUMMARY', textValue(title)),
    contentLine('DTSTART', `${dateValue(firstDay)}T${String(hour).padStart(2, '0')}0000`),
    contentLine('DURATION', 'PT15M'),
    // Counted, not bounded: an UNTIL is read in local time by some calendars and in UTC by others.
    ...(times > 1 ? [contentLine('RRULE', `FREQ=DAILY;COUNT=${times}`)] : []),
    alarm(title, 0),
  ];
}

/** Rings some hours after the start, or before it where they are negative. */
const alarm = (words: string, hours: number): string =>
  block('VALARM', [
    contentLine('ACTION', 'DISPLAY'),
    contentLine('DESCRIPTION', textValue(words)),
    contentLine('TRIGGER', durationOf(hours)),
  ]);

/** @example durationOf(-30) //=> '-P1DT6H' */
function durationOf(hours: number): string {
  const days = Math.floor(Math.abs(hours) / 24);
  const rest = Math.abs(hours) % 24;
  const time = rest > 0 ? `T${rest}H` : '';
  if (days === 0 && rest === 0) return 'PT0S';
  return `${hours < 0 ? '-' : ''}P${days > 0 ? `${days}D` : ''}${time}`;
}

const dateValue = (day: Day): string => day.replaceAll('-', '');

const utcTime = ({ ms }: Clock): string =>
  `${momentOf({ ms, offsetMin: 0 }).slice(0, 19).replaceAll(/[-:]/g, '')}Z`;
