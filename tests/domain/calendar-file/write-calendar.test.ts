import fc from 'fast-check';
import ICAL from 'ical.js';
import { describe, expect, test } from 'vitest';
import { contentLine, textValue } from '../../../src/domain/calendar-file/content-line.ts';
import type {
  CalendarEntry,
  LookEntry,
  WindowEntry,
} from '../../../src/domain/calendar-file/entry.ts';
import { writeCalendar } from '../../../src/domain/calendar-file/write-calendar.ts';
import { runs } from '../../arbitrary.ts';
import { clockAt, day } from '../../make.ts';
import { readCalendar } from './read-calendar.ts';

const made = clockAt('2027-03-01T20:15:00+01:00');

const laying: WindowEntry = {
  kind: 'window',
  uid: 'lay.a-000000000000001',
  title: 'Sorrel: lay',
  details: 'Ovulation seen on 28 March.\nThe pre-lay shed came 17 days later.',
  firstDay: day('2027-05-12'),
  lastDay: day('2027-05-22'),
  likelyDay: day('2027-05-16'),
  alarmAt: { day: day('2027-05-11'), hour: 18 },
};

const look: LookEntry = {
  kind: 'look',
  uid: 'look.c-000000000000001',
  title: 'Look at the eggs',
  details: 'Every night.',
  firstDay: day('2027-03-25'),
  lastDay: day('2027-03-31'),
  hour: 21,
};

const readBack = (...entries: readonly CalendarEntry[]) =>
  readCalendar(writeCalendar(entries, made));

const octets = (line: string): number => new TextEncoder().encode(line).length;
/** Lines as they lie in the file, folds and all. */
const lines = (text: string): readonly string[] => text.split('\r\n').slice(0, -1);

describe('a window', () => {
  test('is whole days in no zone, the last one included', () => {
    // DTEND is the day after the last. Source: RFC 5545 §3.6.1, "non-inclusive end".
    expect(readBack(laying)).toMatchObject([
      {
        uid: laying.uid,
        isDate: true,
        start: '2027-05-12',
        end: '2027-05-23',
        zone: 'floating',
        summary: 'Sorrel: lay, 12–22 May, most likely 16 May',
        description: laying.details,
      },
    ]);
  });

  test('of one day says its day in no words, since the calendar does', () => {
    const [one] = readBack({ ...laying, lastDay: laying.firstDay, likelyDay: undefined });
    expect(one).toMatchObject({ summary: 'Sorrel: lay', start: '2027-05-12', end: '2027-05-13' });
  });

  test('ends in the next month, or year, where it does', () => {
    const [next] = readBack({
      ...laying,
      firstDay: day('2027-12-28'),
      lastDay: day('2027-12-31'),
      likelyDay: undefined,
    });
    expect(next).toMatchObject({ end: '2028-01-01', summary: 'Sorrel: lay, 28–31 Dec' });
    const [over] = readBack({ ...laying, firstDay: day('2028-02-27'), lastDay: day('2028-03-01') });
    expect(over?.summary).toContain('27 Feb – 1 Mar');
    expect(over?.end).toBe('2028-03-02');
  });

  test.each([
    ['2027-05-11', 18, '-PT6H', '2027-05-11T18:00:00'],
    ['2027-05-10', 18, '-P1DT6H', '2027-05-10T18:00:00'],
    ['2027-05-10', 0, '-P2D', '2027-05-10T00:00:00'],
    ['2027-05-12', 0, 'PT0S', '2027-05-12T00:00:00'],
    ['2027-05-12', 18, 'PT18H', '2027-05-12T18:00:00'],
    ['2027-05-16', 21, 'P4DT21H', '2027-05-16T21:00:00'],
  ])('with an alarm on %s at %i rings then: %s', (on, hour, written, rings) => {
    const text = writeCalendar([{ ...laying, alarmAt: { day: day(on), hour } }], made);
    expect(lines(text)).toContain(`TRIGGER:${written}`);
    expect(readCalendar(text)[0]?.alarms).toEqual([rings]);
  });

  test('without an alarm has none', () => {
    expect(readBack({ ...laying, alarmAt: undefined })[0]?.alarms).toEqual([]);
  });
});

describe('a look', () => {
  test('is at the same local hour of each of its days, and rings then', () => {
    const [read] = readBack(look);
    expect(read?.zone).toBe('floating');
    expect(read?.alarms).toEqual(['2027-03-25T21:00:00']);
    expect(read?.times).toEqual(
      [25, 26, 27, 28, 29, 30, 31].map((date) => `2027-03-${date}T21:00:00`),
    );
  });

  test('on one day is there once', () => {
    expect(readBack({ ...look, lastDay: look.firstDay })[0]?.times).toEqual([
      '2027-03-25T21:00:00',
    ]);
  });
});

describe('the file', () => {
  const text = writeCalendar([look, laying], made);

  test('is one calendar with what RFC 5545 §3.6 demands of it', () => {
    const calendar = new ICAL.Component(ICAL.parse(text) as unknown[]);
    expect(calendar.name).toBe('vcalendar');
    expect(calendar.getFirstPropertyValue('version')).toBe('2.0');
    expect(calendar.getFirstPropertyValue('prodid')).toMatch(/^-\/\/Nightdrop\/\//);
    for (const event of calendar.getAllSubcomponents('vevent')) {
      for (const name of ['uid', 'dtstamp', 'dtstart', 'summary']) {
        expect(event.getAllProperties(name)).toHaveLength(1);
      }
      // §3.6.6: a DISPLAY alarm has these three, once each.
      for (const alarm of event.getAllSubcomponents('valarm')) {
        expect(alarm.getFirstPropertyValue('action')).toBe('DISPLAY');
        expect(alarm.getAllProperties('description')).toHaveLength(1);
        expect(alarm.getAllProperties('trigger')).toHaveLength(1);
      }
    }
  });

  test('says in UTC when it was made', () => {
    // 20:15 at +01:00.
    expect(lines(text).filter((line) => line.startsWith('DTSTAMP'))).toEqual(
      Array.from({ length: 2 }, () => 'DTSTAMP:20270301T191500Z'),
    );
  });

  test('ends every line with CR LF, and has no other line break', () => {
    expect(text.endsWith('END:VCALENDAR\r\n')).toBe(true);
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
  });

  test('with nothing in it is still a calendar', () => {
    expect(readBack()).toEqual([]);
  });

  test('says the same in whatever order the entries come', () => {
    expect(writeCalendar([laying, look], made)).toBe(text);
  });
});

describe('a second export', () => {
  const later = clockAt('2027-03-02T20:16:00+01:00');
  const moved = { ...laying, firstDay: day('2027-05-14'), lastDay: day('2027-05-20') };

  // RFC 5546 §2.1.5: of two with one UID, the greater SEQUENCE counts, then the later DTSTAMP.
  test('takes the place of the first: same uid, greater sequence, later stamp', () => {
    const [first] = readBack(laying);
    const [second] = readCalendar(writeCalendar([moved], later));
    expect(second?.uid).toBe(first?.uid);
    expect(second?.start).toBe('2027-05-14');
    expect(second!.sequence).toBeGreaterThan(first!.sequence);
  });

  test('has a sequence that fits: RFC 5545 §3.3.8, at most 2147483647', () => {
    const [last] = readCalendar(writeCalendar([laying], clockAt('2999-12-31T20:00:00+01:00')));
    expect(last!.sequence).toBeLessThan(2_147_483_647);
    const [early] = readCalendar(writeCalendar([laying], clockAt('1999-12-31T20:00:00+01:00')));
    expect(early!.sequence).toBe(0);
  });
});

describe('text', () => {
  // What a line may carry: RFC 5545 §3.3.11 leaves out controls but for the tab; we write a line
  // break in one way. Half a surrogate pair is no text at all.
  const anyText = fc
    .string({ unit: 'binary', maxLength: 300 })
    .map((text) => text.replaceAll(/[\u0000-\u0008\u000b-\u001f\u007f]/g, '')); // eslint-disable-line no-control-regex
  const hostile = fc.constantFrom(
    'END:VEVENT\nBEGIN:VALARM',
    'Sorrel; "the, best" \\ of \\n all',
    'DTSTART:20270101T000000Z',
    '🐍'.repeat(60),
    'é'.repeat(200),
    ' leading and trailing ',
    '蛇'.repeat(50) + ',;\\',
    '👩🏽‍🔬'.repeat(12),
  );

  test('of any kind comes back as it was, and in no line over 75 octets', () => {
    fc.assert(
      fc.property(fc.oneof(anyText, hostile), fc.oneof(anyText, hostile), (title, details) => {
        const text = writeCalendar([{ ...look, title, details, uid: `look.${title}` }], made);
        const [read, ...more] = readCalendar(text);
        expect(more).toEqual([]);
        expect(read?.summary).toBe(title);
        expect(read?.description).toBe(details);
        expect(read?.uid).toBe(`look.${title}`);
        expect(Math.max(...lines(text).map(octets))).toBeLessThanOrEqual(75);
      }),
      runs(500),
    );
  });

  test('folds as late as it may, and never inside a character', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', minLength: 1, maxLength: 200 }), (value) => {
        const written = lines(contentLine('SUMMARY', textValue(value)));
        for (const [i, line] of written.entries()) {
          // Lossless in UTF-8: no half of a character stands at an end.
          expect(new TextDecoder().decode(new TextEncoder().encode(line))).toBe(line);
          const next = written[i + 1];
          if (next === undefined) continue;
          const [, first = ''] = Array.from(next);
          expect(octets(line) + octets(first)).toBeGreaterThan(75);
        }
      }),
      runs(300),
    );
  });

  test('that UTF-8 cannot carry or a calendar must not hold is made harmless', () => {
    expect(textValue('a\u0000b\u0007c\u007fd\te')).toBe('abcd\te');
    expect(textValue('x\ud800y')).toBe('x\ufffdy');
    expect(textValue('one\r\ntwo\rthree')).toBe('one\\ntwo\\nthree');
  });
});
