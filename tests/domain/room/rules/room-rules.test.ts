import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { momentOf, type Clock } from '../../../../src/domain/core/calendar.ts';
import type { Draft } from '../../../../src/domain/events/event.ts';
import { logDrafts } from '../../../../src/domain/room/log-drafts.ts';
import { roomRules } from '../../../../src/domain/room/rules/all.ts';
import { sources } from '../../../../src/domain/sources.ts';
import type { Measured } from '../../../../src/domain/state/readings.ts';
import { tonightView } from '../../../../src/domain/views/tonight-view.ts';
import { anEvent, aPicture, clockAt, TONIGHT } from '../../../make.ts';
import { rackId, roomId } from '../../../make-ids.ts';
import { aProgramme } from '../make-air.ts';

const room = roomId(1);
const now: Clock = clockAt(TONIGHT);
const made = [anEvent('room-made', { room, at: '2026-01-01T12:00:00+01:00' as never })];

const hoursAgo = (hours: number) => momentOf({ ...now, ms: now.ms - hours * 3_600_000 });
const minuteAgo = (hours: number) => Math.floor((now.ms - hours * 3_600_000) / 60_000);

/** A sensor's temperatures, the last one so many hours ago. */
function sensor(
  temps: readonly number[],
  { lastHoursAgo = 0.5, everyMin = 10, where = { spot: 'air', sensor: 'shelf' } as const } = {},
  measured: Measured & { readonly sensor: string } = where,
) {
  const last = minuteAgo(lastHoursAgo);
  const readings = temps.map((tempC, i) => ({
    minute: last - (temps.length - 1 - i) * everyMin,
    offsetMin: 60,
    tempC,
  }));
  return logDrafts({ room, ...measured }, readings, '°C').map((draft) =>
    anEvent('room-logged', draft as never),
  );
}

const byHand = (tempC: number, hours: number, parts: Partial<Draft> = {}) =>
  anEvent('room-read', { room, tempC, at: hoursAgo(hours), ...parts });

const programme = (parts: Parameters<typeof aProgramme>[0] = {}) =>
  anEvent('room-programme-set', {
    room,
    at: '2026-01-02T12:00:00+01:00' as never,
    ...aProgramme(parts),
  });

type Events = readonly Parameters<typeof aPicture>[0][number][];
const said = (events: Events) => tonightView(aPicture([...made, ...events])).rooms;
const rulesOf = (events: Events) => said(events).map(({ rule }) => rule);
const steady = (tempC: number, readings: number) => Array<number>(readings).fill(tempC);

// Common practice, no source: a room under 22 or over 32 °C for two hours; a hot spot over 36 °C.
describe('[R1] a room too cold', () => {
  test('for two hours is said, with the readings it rests on', () => {
    expect(said(sensor(steady(21.5, 13)))).toMatchObject([
      {
        rule: 'R1',
        room,
        name: 'Snake room',
        asks: '21.5 °C: under 22.0 °C for 2 h',
        because: [expect.stringContaining('13 readings'), expect.stringContaining('30 min ago')],
      },
    ]);
  });

  test('for less than two hours, or on the limit, is not', () => {
    expect(rulesOf(sensor(steady(21.5, 12)))).toEqual([]);
    expect(rulesOf(sensor(steady(22, 40)))).toEqual([]);
  });

  test('is not said across a gap in the readings', () => {
    expect(rulesOf(sensor(steady(21, 2), { everyMin: 121 }))).toEqual([]);
    expect(rulesOf(sensor(steady(21, 2), { everyMin: 120 }))).toEqual(['R1']);
  });

  test('is not said of readings over a day old', () => {
    expect(rulesOf(sensor(steady(21, 20), { lastHoursAgo: 23.9 }))).toEqual(['R1']);
    expect(rulesOf(sensor(steady(21, 20), { lastHoursAgo: 24.1 }))).toEqual([]);
  });

  test('is over when the newest reading is well, or someone has read it well since', () => {
    expect(rulesOf(sensor([...steady(21, 20), 23]))).toEqual([]);
    expect(rulesOf([...sensor(steady(21, 20)), byHand(24, 0.1)])).toEqual([]);
    expect(rulesOf([...sensor(steady(21, 20)), byHand(20, 0.1)])).toEqual(['R1']);
  });

  test('is not said of a night that the programme wants that cold', () => {
    const cool = programme({ steps: [{ month: 1, day: 1, dayC: 21.5, nightC: 21 }] });
    expect(rulesOf([cool, ...sensor(steady(21, 20))])).toEqual([]);
    expect(rulesOf([cool, ...sensor(steady(19.5, 20))])).toEqual(['R1']);
  });

  test('a warm programme does not raise the limit', () => {
    expect(
      rulesOf([
        programme({ steps: [{ month: 1, day: 1, dayC: 29, nightC: 28 }] }),
        ...sensor(steady(24, 20)),
      ]),
    ).toEqual([]);
  });
});

describe('[R2] a room too warm', () => {
  test('for two hours is said', () => {
    expect(said(sensor(steady(32.5, 13)))).toMatchObject([
      { rule: 'R2', asks: '32.5 °C: over 32.0 °C for 2 h' },
    ]);
  });

  test('for less, or on the limit, is not', () => {
    expect(rulesOf(sensor(steady(32.5, 12)))).toEqual([]);
    expect(rulesOf(sensor(steady(32, 40)))).toEqual([]);
  });
});

describe('[R3] a hot spot too hot', () => {
  const rack = rackId(1);
  const rackMade = anEvent('rack-made', { rack, room, at: '2026-01-01T12:00:00+01:00' as never });
  const spot = { spot: 'hot spot', rack, sensor: 'mat' } as const;

  test('even once is said, and names the rack', () => {
    const events = [rackMade, ...sensor([32, 36.1, 32, 32], {}, spot)];
    expect(said(events)).toMatchObject([{ rule: 'R3', asks: 'Rack B: hot spot 36.1 °C' }]);
  });

  test('on the limit is not', () => {
    expect(rulesOf([rackMade, ...sensor([32, 36, 32], {}, spot)])).toEqual([]);
  });

  test('is over once someone has read that rack by hand and found it well', () => {
    const hot = [rackMade, ...sensor([37, 32], { lastHoursAgo: 3 }, spot)];
    expect(rulesOf([...hot, byHand(32, 1, { spot: 'hot spot', rack } as never)])).toEqual([]);
    expect(rulesOf([...hot, byHand(32, 1, { spot: 'hot spot' } as never)])).toEqual(['R3']);
    expect(rulesOf([...hot, byHand(25, 1)])).toEqual(['R3']);
  });

  test('air over 36 °C for a moment is not a hot spot', () => {
    expect(rulesOf(sensor([37, 37]))).toEqual([]);
  });
});

describe('[R4] a room not read', () => {
  const daily = (days: number, lastHours: number) =>
    Array.from({ length: days }, (_, n) => byHand(25, lastHours + 24 * n));

  test('though it is read every day, is said once it is late', () => {
    expect(rulesOf(daily(7, 40))).toEqual(['R4']);
    expect(rulesOf(daily(6, 40))).toEqual(['R4']);
  });

  test('is not said where there is no such habit', () => {
    expect(rulesOf(daily(5, 40))).toEqual([]);
    expect(rulesOf(daily(1, 40))).toEqual([]);
    expect(rulesOf([])).toEqual([]);
  });

  test('is not said too soon, and not for ever', () => {
    expect(rulesOf(daily(7, 35))).toEqual([]);
    expect(rulesOf(daily(7, 4 * 24 + 1))).toEqual([]);
  });

  test('is not said where a sensor has read it since', () => {
    expect(rulesOf([...daily(7, 40), ...sensor(steady(25, 3))])).toEqual([]);
  });
});

test('rooms and animals together alarm five times at most', () => {
  const rooms = [1, 2, 3, 4, 5, 6, 7].flatMap((n) => {
    const cold = sensor(steady(20, 20)).map((each) => ({ ...each, room: roomId(n) }));
    return [anEvent('room-made', { room: roomId(n) }), ...cold];
  });
  const lost = [anEvent('arrived'), anEvent('left', { how: 'escaped' })];
  const { rooms: alarms, alarms: animals } = tonightView(aPicture([...rooms, ...lost]));
  expect(alarms.length + animals.length).toBe(5);
});

const here = new URL('.', import.meta.url);
const tests = readdirSync(here)
  .map((file) => readFileSync(new URL(file, here), 'utf8'))
  .join('\n');

test.each(roomRules)('rule $id has a test that names it, and a source', ({ id, source }) => {
  expect(tests).toMatch(new RegExp(`(test|describe)[^\\n]*'\\[${id}\\] `));
  expect(sources).toHaveProperty(source);
});

test('no two rules about rooms share an id, and every file of one is listed', () => {
  const folder = new URL('../../../../src/domain/room/rules/', import.meta.url);
  const files = readdirSync(folder).filter((file) => file.startsWith('rule-'));
  expect(files.length).toBe(roomRules.length);
  expect(new Set(roomRules.map(({ id }) => id)).size).toBe(roomRules.length);
});
