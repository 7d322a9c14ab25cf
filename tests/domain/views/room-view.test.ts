import { describe, expect, test } from 'vitest';
import { logDrafts } from '../../../src/domain/room/log-drafts.ts';
import type { Reading } from '../../../src/domain/state/readings.ts';
import { roomView } from '../../../src/domain/views/room-view.ts';
import { anEvent, aPicture } from '../../make.ts';
import { rackId, roomId } from '../../make-ids.ts';
import { aProgramme, minuteOf, readingsFrom } from '../room/make-air.ts';

const room = roomId(1);
const begun = '2026-01-01T12:00:00+01:00' as never;
const made = [
  anEvent('room-made', { room, at: begun }),
  anEvent('rack-made', { room, at: begun }),
  anEvent('room-programme-set', { room, ...aProgramme(), at: begun }),
];
const logged = (readings: readonly Reading[], sensor = 'shelf') =>
  logDrafts({ room, spot: 'air', sensor }, readings, '°C').map((draft) =>
    anEvent('room-logged', draft as never),
  );

const viewOf = (events: readonly Parameters<typeof aPicture>[0][number][], span = '7/0') =>
  roomView(`${room}/${span}` as never, aPicture([...made, ...events]))!;

describe('a room’s screen', () => {
  test('shows the newest reading of each place, whoever made it, and how it stands', () => {
    const sensor = logged(readingsFrom('2026-11-24T18:00:00+01:00', 60, [26, 26]));
    const hand = anEvent('room-read', {
      room,
      tempC: 19.8,
      at: '2026-11-24T21:59:00+01:00' as never,
    });
    const hot = anEvent('room-read', {
      room,
      spot: 'hot spot',
      rack: rackId(1),
      tempC: 32,
      at: '2026-11-24T21:00:00+01:00' as never,
    });
    // 21:59 is two hours less a minute into the night: 20–27 °C is still in band, 19.8 is not.
    expect(viewOf([...sensor, hand, hot]).last).toMatchObject([
      { where: 'Air', tempC: 19.8, by: 'By hand', ageMin: 1, stands: 'below' },
      { where: 'Hot spot, rack B', tempC: 32, by: 'By hand', ageMin: 60, stands: 'in band' },
    ]);
  });

  test('says what the programme asks for now, and until when', () => {
    expect(viewOf([]).target).toEqual({ part: 'night', airC: 21, hotSpotC: 32, untilMin: 480 });
  });

  test('lists every record, the newest first, and says why one was struck', () => {
    const hand = anEvent('room-read', {
      room,
      tempC: 24.5,
      at: '2026-11-24T21:00:00+01:00' as never,
    });
    const struck = anEvent('struck', { target: hand.id, reason: 'wrong room' });
    const { history, last } = viewOf([hand, struck]);
    expect(history[0]).toMatchObject({ words: 'air 24.5 °C', struck: 'wrong room' });
    expect(history.map(({ words }) => words)).toContain('programme Test from 2020-01-01');
    expect(last).toEqual([]);
  });

  test('is none for a room that is not', () => {
    expect(roomView(`${roomId(9)}/7/0`, aPicture(made))).toBeUndefined();
  });

  test('spans end now, and go back by their own length', () => {
    const { span } = viewOf([], '7/2');
    expect(new Date(span.toMs).toISOString()).toBe('2026-11-10T21:00:00.000Z');
    expect(new Date(span.fromMs).toISOString()).toBe('2026-11-03T21:00:00.000Z');
  });

  test('tells how far back the newest readings lie', () => {
    const old = logged(readingsFrom('2026-11-01T12:00:00+01:00', 60, [25, 25]));
    expect(viewOf(old).span).toMatchObject({ newestBack: 3 });
    expect(viewOf(old, '7/3').span.series[0]?.statistics.readings).toBe(2);
  });
});

describe('the curve', () => {
  test('leaves a gap open', () => {
    const readings = [
      ...readingsFrom('2026-11-24T10:00:00+01:00', 60, [25, 25.5]),
      ...readingsFrom('2026-11-24T15:00:00+01:00', 60, [26]),
    ];
    const [series] = viewOf(logged(readings), '1/0').span.series;
    expect(series?.points.map(([, tempC]) => tempC)).toEqual([25, 25.5, null, 26]);
    expect(series?.isThinned).toBe(false);
  });

  test('of very many readings keeps the lowest and the highest of them', () => {
    const temps = Array.from({ length: 8_000 }, (_, n) => 24 + Math.sin(n / 40));
    temps[3_333] = 12.3;
    temps[5_555] = 38.7;
    const readings = readingsFrom('2026-11-01T00:00:00+01:00', 4, temps);
    const [series] = viewOf(logged(readings), '30/0').span.series;
    const shown = series?.points.flatMap(([, tempC]) => tempC ?? []) ?? [];
    expect(series?.isThinned).toBe(true);
    expect(shown.length).toBeLessThan(1_000);
    expect(Math.min(...shown)).toBe(12.3);
    expect(Math.max(...shown)).toBe(38.7);
    const times = series?.points.map(([ms]) => ms) ?? [];
    expect(times).toEqual(times.toSorted((a, b) => a - b));
  });

  test('lies over the programme’s band: nights 20–22, days 25–27, between them both', () => {
    const readings = readingsFrom('2026-11-24T12:00:00+01:00', 60, [26, 26]);
    const [series] = viewOf(logged(readings), '1/0').span.series;
    const at = (ms: number) => Math.round(ms / 60_000) - minuteOf('2026-11-23T22:00:00+01:00');
    expect(
      series?.bands.map(({ fromMs, toMs, lowC, highC }) => [at(fromMs), at(toMs), lowC, highC]),
    ).toEqual([
      [0, 600, 20, 22],
      [600, 720, 20, 27],
      [720, 1_320, 25, 27],
      [1_320, 1_440, 20, 27],
    ]);
  });
});
