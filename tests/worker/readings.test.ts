import { describe, expect, test } from 'vitest';
import type { RoomId } from '../../src/domain/core/ids.ts';
import type { LabelCode } from '../../src/domain/core/code.ts';
import { findByCode } from '../../src/domain/views/capture-view.ts';
import { labelsView } from '../../src/domain/views/labels-view.ts';
import { roomView } from '../../src/domain/views/room-view.ts';
import { textFile } from '../store/text-file.ts';
import { aDevice, openTab, settleIn, type Device, type Tab } from './make-world.ts';

/** A file of one reading every five minutes, in UTC, up to the evening the tests are set in. */
function sensorFile(days: number, skip: readonly number[] = []): string {
  const end = Date.parse('2026-11-24T20:00:00Z');
  const lines = ['time,temp °C,humidity'];
  const readings = days * 288;
  for (let n = 0; n < readings; n += 1) {
    if (skip.includes(n)) continue;
    const at = new Date(end - (readings - 1 - n) * 300_000).toISOString();
    lines.push(`${at},${(20 + ((n * 7) % 60) / 10).toFixed(1)},${50 + (n % 10)}`);
  }
  return lines.join('\n');
}

async function withRoom(device: Device = aDevice()): Promise<{ tab: Tab; room: RoomId }> {
  const tab = await openTab(device);
  await settleIn(tab);
  const [room] = labelsView(tab.picture).unlabelledRooms;
  if (!room) throw new Error('There is a room.');
  return { tab, room };
}

const readingsOf = (tab: Tab, room: RoomId) => roomView(`${room}/400/0`, tab.picture)!.span.series;

describe('a sensor’s file', () => {
  test('is written only on the keeper’s word, in records of 2,000 readings at most', async () => {
    const { tab, room } = await withRoom();
    const before = await tab.onDisk();
    const looked = await tab.lookIntoReadings({
      room,
      sensor: 'shelf',
      spot: 'air',
      file: textFile(sensorFile(30)),
    });
    expect(looked).toMatchObject({ value: { readings: 8_640, fresh: 8_640, known: 0, gaps: 0 } });
    expect(await tab.onDisk()).toEqual(before);
    expect(await tab.takeInReadings(null)).toMatchObject({ value: { readings: 8_640 } });
    const written = (await tab.onDisk()).slice(before.length) as { readings: unknown[] }[];
    expect(written.map(({ readings }) => readings.length)).toEqual([
      2_000, 2_000, 2_000, 2_000, 640,
    ]);
    expect(readingsOf(tab, room)[0]?.statistics.readings).toBe(8_640);
  });

  test('taken in twice doubles nothing, and a longer one adds what is new', async () => {
    const { tab, room } = await withRoom();
    const look = (text: string) =>
      tab.lookIntoReadings({ room, sensor: 'shelf', spot: 'air', file: textFile(text) });
    await look(sensorFile(2, [100, 101]));
    await tab.takeInReadings(null);
    const before = await tab.onDisk();
    expect(await look(sensorFile(2, [100, 101]))).toMatchObject({
      value: { fresh: 0, known: 574 },
    });
    expect(await tab.takeInReadings(null)).toMatchObject({ ok: false });
    expect(await tab.onDisk()).toEqual(before);
    expect(await look(sensorFile(2))).toMatchObject({
      value: { fresh: 2, known: 574, differing: 0 },
    });
    await tab.takeInReadings(null);
    expect(readingsOf(tab, room)[0]?.statistics.readings).toBe(576);
  });

  test('of another sensor at the same place is another series', async () => {
    const { tab, room } = await withRoom();
    for (const sensor of ['shelf', 'door']) {
      await tab.lookIntoReadings({ room, sensor, spot: 'air', file: textFile(sensorFile(1)) });
      await tab.takeInReadings(null);
    }
    expect(readingsOf(tab, room).map(({ label }) => label)).toEqual(['Air · door', 'Air · shelf']);
  });

  test('that is wrong changes nothing and says why, and cannot be taken in', async () => {
    const { tab, room } = await withRoom();
    const before = await tab.onDisk();
    const looked = await tab.lookIntoReadings({
      room,
      sensor: 'shelf',
      spot: 'air',
      file: textFile('name,sex\nSorrel,female'),
    });
    expect(looked).toMatchObject({ problem: { code: 'csv-no-readings' } });
    expect(await tab.takeInReadings(null)).toMatchObject({ ok: false });
    expect(await tab.onDisk()).toEqual(before);
  });

  test('can be looked into again with other columns, without picking it again', async () => {
    const { tab, room } = await withRoom();
    const where = { room, sensor: 'shelf', spot: 'air' } as const;
    await tab.lookIntoReadings({ ...where, file: textFile(sensorFile(1)) });
    const map = { date: 0, temp: 2, order: 'day first', unit: '°F' } as const;
    const looked = await tab.lookIntoReadings({ ...where, map });
    // 50 °F is 10 °C: NIST SP 811 (2008), Appendix B.8.
    expect(looked).toMatchObject({ value: { lowC: 10, map } });
  });

  test('is all there after a start from the saved picture, before and after history', async () => {
    const device = aDevice();
    const { tab, room } = await withRoom(device);
    await tab.lookIntoReadings({
      room,
      sensor: 'shelf',
      spot: 'air',
      file: textFile(sensorFile(20)),
    });
    await tab.takeInReadings(null);
    await tab.collection.settle();
    const later = await openTab(device);
    const first = roomView(`${room}/400/0`, later.picture);
    expect(first).toMatchObject({ isWhole: false, last: [{ where: 'Air', by: 'shelf' }] });
    expect(first?.span.series[0]?.statistics.readings).toBe(288);
    await later.collection.readHistory();
    expect(readingsOf(later, room)).toEqual(readingsOf(tab, room));
  });
});

describe('a room’s label', () => {
  test('is given once and leads to the room', async () => {
    const { tab, room } = await withRoom();
    await tab.giveCard([room]);
    await tab.giveCard([room]);
    const { labelled, unlabelledRooms } = labelsView(tab.picture);
    const rooms = labelled.filter(({ kind }) => kind === 'room');
    expect(rooms).toMatchObject([{ title: 'Snakes' }]);
    expect(unlabelledRooms).toEqual([]);
    const code = rooms[0]?.code ?? ('' as LabelCode);
    expect(findByCode(code, tab.picture)).toEqual({ kind: 'room', room });
  });
});

describe('a reading by hand', () => {
  test.each([
    { typed: 'in °F, though °C was meant', tempC: -3.33, entered: 26, meant: 26 },
    { typed: 'in °C, though °F was meant', tempC: 79, meant: 26.11 },
  ])('typed $typed, is asked about', async ({ tempC, entered, meant }) => {
    const { tab, room } = await withRoom();
    const asked = await tab.record({
      drafts: [
        {
          type: 'room-read',
          room,
          spot: 'air',
          tempC,
          ...(entered === undefined ? {} : { entered: { unit: '°F' as const, temp: entered } }),
        },
      ],
    });
    expect(asked).toMatchObject({ kind: 'asked', doubts: [{ code: 'room-temperature' }] });
    const value = asked.kind === 'asked' ? asked.doubts[0]?.instead?.value : undefined;
    expect(value).toBeCloseTo(meant, 2);
  });

  test('that a room can have is written without a word', async () => {
    const { tab, room } = await withRoom();
    const drafts = [{ type: 'room-read', room, spot: 'air', tempC: 25 } as const];
    expect(await tab.record({ drafts })).toMatchObject({ kind: 'done' });
  });
});
