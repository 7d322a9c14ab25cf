import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { momentOf } from '../../../src/domain/core/calendar.ts';
import type { RackEvent } from '../../../src/domain/events/event.ts';
import { logDrafts, noveltyOf } from '../../../src/domain/room/log-drafts.ts';
import { seriesOf } from '../../../src/domain/room/series.ts';
import { MOST_READINGS } from '../../../src/domain/events/room.ts';
import { createLedger } from '../../../src/domain/state/ledger.ts';
import type { Room } from '../../../src/domain/state/place.ts';
import type { Reading } from '../../../src/domain/state/readings.ts';
import { runs } from '../../arbitrary.ts';
import { anEvent } from '../../make.ts';
import { roomId } from '../../make-ids.ts';
import { minuteOf, readingsFrom } from './make-air.ts';

const room = roomId(1);
const shelf = { spot: 'air', sensor: 'shelf' } as const;
const START = minuteOf('2026-11-20T00:00:00Z');

const logged = (readings: readonly Reading[]): RackEvent[] =>
  logDrafts({ room, ...shelf }, readings, '°C').map((draft) =>
    anEvent('room-logged', draft as never),
  );

function roomAfter(events: readonly RackEvent[]): { room: Room; events: readonly RackEvent[] } {
  const ledger = createLedger();
  ledger.add(events);
  return { room: ledger.subjects.get(room) as Room, events: ledger.history(room) };
}

describe('a sensor’s readings as records', () => {
  const anyReadings = fc
    .uniqueArray(fc.integer({ min: 0, max: 9_000 }), { minLength: 1, maxLength: 60 })
    .map((all) =>
      all
        .toSorted((a, b) => a - b)
        .map((since, i): Reading => {
          const offsetMin = since < 4_000 ? 120 : 60;
          const humidityPercent = i % 3 === 0 ? 55 + (i % 5) : undefined;
          return { minute: START + since, offsetMin, tempC: 20 + (i % 70) / 10, humidityPercent };
        }),
    );

  test('hold every one of them, whatever their order and however often they come', () => {
    fc.assert(
      fc.property(anyReadings, fc.integer({ min: 1, max: 60 }), (readings, cut) => {
        // Two exports that overlap, and the first one again.
        const parts = [readings.slice(0, cut), readings.slice(Math.floor(cut / 2)), readings];
        const events = parts.flatMap(logged);
        for (const order of [events, events.toReversed(), [...events, ...events]]) {
          expect(seriesOf(roomAfter(order).events)).toEqual([
            { ...shelf, rack: undefined, readings },
          ]);
        }
      }),
      runs(60),
    );
  });

  test('never hold more than they may, nor two offsets', () => {
    // 123 hours before the clocks change, 12 readings each.
    const many = readingsFrom('2026-10-20T00:00:00+02:00', 5, Array(5_000).fill(24), 120);
    const readings = many.map((each) =>
      each.minute < minuteOf('2026-10-25T01:00:00Z') ? each : { ...each, offsetMin: 60 },
    );
    const drafts = logDrafts({ room, ...shelf }, readings, '°C') as {
      at: string;
      readings: unknown[];
    }[];
    expect(drafts.map((draft) => draft.readings.length)).toEqual([1_476, 2_000, 1_524]);
    expect(drafts.map(({ at }) => at.slice(19))).toEqual(['+02:00', '+01:00', '+01:00']);
    expect(Math.max(...drafts.map((draft) => draft.readings.length))).toBeLessThanOrEqual(
      MOST_READINGS,
    );
  });

  test('a file taken in again has nothing new in it', () => {
    const readings = readingsFrom('2026-11-20T00:00:00+01:00', 5, [21, 22, 23]);
    expect(noveltyOf(readings, [])).toMatchObject({ known: 0, differing: 0 });
    expect(noveltyOf(readings, readings)).toEqual({ fresh: [], known: 3, differing: 0 });
    const other = readingsFrom('2026-11-20T00:05:00+01:00', 5, [25, 23, 24]);
    expect(noveltyOf(other, readings)).toMatchObject({ known: 1, differing: 1 });
  });
});

describe('what a room keeps for tonight', () => {
  const at = (minute: number) => momentOf({ ms: minute * 60_000, offsetMin: 0 });

  test('is the last day of each sensor, and not its years', () => {
    const year = readingsFrom('2026-01-01T00:00:00Z', 60, Array(24 * 300).fill(25), 0);
    const [series] = roomAfter(logged(year)).room.air.recent;
    expect(series?.readings).toEqual(year.slice(-24));
  });

  test('is the last fifteen days by hand, so that a habit shows', () => {
    const days = Array.from({ length: 40 }, (_, n) =>
      anEvent('room-read', { room, tempC: 25, at: at(START + n * 1_440) }),
    );
    expect(roomAfter(days).room.air.recent[0]?.readings).toHaveLength(15);
  });

  test('a struck reading is not kept', () => {
    const wrong = anEvent('room-read', { room, tempC: 5, at: at(START) });
    const right = anEvent('room-read', { room, tempC: 25, at: at(START - 60) });
    const struck = anEvent('struck', { target: wrong.id });
    expect(roomAfter([right, wrong, struck]).room.air.recent[0]?.readings).toMatchObject([
      { tempC: 25 },
    ]);
  });

  test('air and each hot spot, each sensor and the hand, are apart', () => {
    const events = [
      anEvent('room-read', { room, spot: 'air' }),
      anEvent('room-read', { room, spot: 'hot spot' }),
      anEvent('room-logged', { room, spot: 'air', sensor: 'shelf' }),
      anEvent('room-logged', { room, spot: 'air', sensor: 'door' }),
    ];
    expect(roomAfter(events).room.air.recent).toHaveLength(4);
  });
});
