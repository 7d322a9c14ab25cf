import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { orderOf, readTime } from '../../../src/domain/csv/read-time.ts';
import { createWallReader } from '../../../src/domain/csv/wall-clock.ts';
import { runs } from '../../arbitrary.ts';

const UTC = (text: string): number => Date.parse(`${text}Z`);

describe('times as loggers write them', () => {
  test.each([
    { written: '2026-11-24T21:05:07+01:00', offsetMin: 60, wall: '2026-11-24T21:05:07' },
    { written: '2026-11-24T20:05:07Z', offsetMin: 0, wall: '2026-11-24T20:05:07' },
    { written: '2026-11-24T20:05:07.123-03:30', offsetMin: -210, wall: '2026-11-24T20:05:07' },
    { written: '2026-11-24 21:05', wall: '2026-11-24T21:05:00' },
    { written: '2026/11/24 21:05:07', wall: '2026-11-24T21:05:07' },
    { written: '24.11.2026 21:05', wall: '2026-11-24T21:05:00' },
    { written: '24.11.26, 21:05', wall: '2026-11-24T21:05:00' },
    { written: '4/3/2026 9:05:07 PM', wall: '2026-03-04T21:05:07' },
    { written: '4/3/2026 12:05 am', wall: '2026-03-04T00:05:00' },
    { written: '4/3/2026 12:05 p.m.', wall: '2026-03-04T12:05:00' },
    { written: '24 Nov 2026 21:05', wall: '2026-11-24T21:05:00' },
    { written: '24-Nov-26 21:05', wall: '2026-11-24T21:05:00' },
    { written: 'November 24, 2026 9:05 PM', wall: '2026-11-24T21:05:00' },
    {
      written: '1795554300',
      offsetMin: 0,
      wall: new Date(1795554300e3).toISOString().slice(0, 19),
    },
    { written: '1795554300123', offsetMin: 0, wall: '' },
  ])('$written', ({ written, wall, offsetMin }) => {
    const ms = wall === '' ? 1795554300123 : UTC(wall);
    expect(readTime(written, 'day first')).toEqual({ wallMs: ms, offsetMin });
  });

  test('3 April or 4 March: as the order says', () => {
    expect(readTime('4/3/2026 10:00', 'day first')?.wallMs).toBe(UTC('2026-03-04T10:00:00'));
    expect(readTime('4/3/2026 10:00', 'month first')?.wallMs).toBe(UTC('2026-04-03T10:00:00'));
  });

  test.each([
    '2026-02-30 10:00',
    '2026-11-24 25:00',
    '2026-11-24 10:60',
    '13/13/2026 10:00',
    '24.11.2026',
    '21:05',
    '24 Foo 2026 21:05',
    '0:30 13:00 PM',
    '10/10/2026 13:00 PM',
    '',
    'ERR',
  ])('%s is none', (written) => {
    expect(readTime(written, 'day first')).toBeUndefined();
  });

  test('29 February is a day in 2028 and none in 2027', () => {
    expect(readTime('29.02.2028 10:00', 'day first')).toBeDefined();
    expect(readTime('29.02.2027 10:00', 'day first')).toBeUndefined();
  });
});

test('a number over 12 says in which order dates are written', () => {
  expect(orderOf(['4/3/26', '24/3/26'])).toBe('day first');
  expect(orderOf(['4/3/26', '3/24/26'])).toBe('month first');
  expect(orderOf(['4/3/26', '5/3/26'])).toBeUndefined();
  expect(orderOf(['2026-03-24'])).toBeUndefined();
});

/** Minutes that a zone is ahead of UTC, by the browser's own tables. */
function zoneOf(timeZone: string): (ms: number) => number {
  const format = new Intl.DateTimeFormat('en-US', {
    timeZone,
    hourCycle: 'h23',
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: 'numeric',
    minute: 'numeric',
    second: 'numeric',
  });
  return (ms) => {
    const part = Object.fromEntries(
      format.formatToParts(ms).map(({ type, value }) => [type, Number(value)]),
    );
    const wall = Date.UTC(
      part['year']!,
      part['month']! - 1,
      part['day'],
      part['hour'],
      part['minute'],
      part['second'],
    );
    return Math.round((wall - ms) / 60_000);
  };
}

describe('wall clocks', () => {
  // Summer time in the EU, 2026: from 29 March to 25 October, changing at 01:00 UTC. Source:
  // Directive 2000/84/EC, articles 2 and 3.
  const berlin = createWallReader(zoneOf('Europe/Berlin'));

  test('an ordinary one means one instant', () => {
    expect(berlin(UTC('2026-07-01T12:00:00')).instants).toEqual([UTC('2026-07-01T10:00:00')]);
    expect(berlin(UTC('2026-11-24T12:00:00')).instants).toEqual([UTC('2026-11-24T11:00:00')]);
  });

  test('02:30 on 29 March 2026 never was', () => {
    expect(berlin(UTC('2026-03-29T02:30:00')).instants).toEqual([]);
    expect(berlin(UTC('2026-03-29T01:59:00')).instants).toHaveLength(1);
    expect(berlin(UTC('2026-03-29T03:00:00')).instants).toHaveLength(1);
  });

  test('02:30 on 25 October 2026 was twice', () => {
    expect(berlin(UTC('2026-10-25T02:30:00')).instants).toEqual([
      UTC('2026-10-25T00:30:00'),
      UTC('2026-10-25T01:30:00'),
    ]);
    expect(berlin(UTC('2026-10-25T03:00:00')).instants).toHaveLength(1);
  });

  test('every instant is among those that its own wall clock may mean', () => {
    const from = Date.UTC(2026, 0, 1) / 60_000;
    const zones = ['Europe/Berlin', 'America/New_York', 'Australia/Lord_Howe', 'Asia/Kathmandu'];
    const readers = zones.map((name) => {
      const zone = zoneOf(name);
      return { zone, read: createWallReader(zone) };
    });
    const minutes = fc.integer({ min: from, max: from + 2 * 525_600 });
    fc.assert(
      fc.property(minutes, fc.constantFrom(...readers), (minute, { zone, read }) => {
        const ms = minute * 60_000;
        expect(read(ms + zone(ms) * 60_000).instants).toContain(ms);
      }),
      runs(400),
    );
  });
});
