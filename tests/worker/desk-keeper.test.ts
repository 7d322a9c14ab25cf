import { describe, expect, test } from 'vitest';
import { Fault } from '../../src/domain/core/fault.ts';
import type { AnimalId } from '../../src/domain/core/ids.ts';
import type { Draft } from '../../src/domain/events/event.ts';
import { createMemoryLog } from '../../src/store/memory-log.ts';
import { nightsAgo } from '../make.ts';
import { smallRat } from '../samples.ts';
import { aDevice, openTab, settleIn, type Tab } from './make-world.ts';

const weigh = (animal: AnimalId, massG: number): Draft => ({ type: 'weighed', animal, massG });
const lastMass = ({ picture }: Tab, animal: AnimalId) =>
  picture.animal(animal)?.weighings.at(-1)?.massG;

describe('a record', () => {
  test('is on disk, then in the picture, and says when, where and by whom', async () => {
    const device = aDevice();
    const tab = await openTab(device);
    const { sorrel } = await settleIn(tab);
    await tab.setInitials('  ab ');
    const done = await tab.record({ drafts: [weigh(sorrel, 1_510)] });
    expect(done).toMatchObject({ kind: 'done', ids: [expect.any(String)] });
    expect(lastMass(tab, sorrel)).toBe(1_510);
    expect((await tab.onDisk()).at(-1)).toMatchObject({
      type: 'weighed',
      massG: 1_510,
      at: '2026-11-24T22:00:00+01:00',
      place: 'B1-1',
      by: 'ab',
      device: 'TAB01',
    });
  });

  test('of fathers that comes with the eggs is of these eggs', async () => {
    const tab = await openTab(aDevice());
    const { sorrel } = await settleIn(tab);
    const sires = [{ male: 'unknown' as const, grounds: 'together' as const }];
    const done = await tab.record({
      drafts: [
        { type: 'laid', animal: sorrel, good: 6 },
        { type: 'paternity-stated', animal: sorrel, sires },
      ],
      accepted: ['not-gravid'],
    });
    expect(done.kind).toBe('done');
    const [eggs, fathers] = (await tab.onDisk()).slice(-2);
    expect(fathers).toMatchObject({ clutch: (eggs as { clutch?: string }).clutch });
  });

  test('is not in the picture before it is on disk', async () => {
    const memory = createMemoryLog();
    let arrived: () => void = () => undefined;
    const writing = new Promise<void>((resolve) => (arrived = resolve));
    let release: () => void = () => undefined;
    const disk = new Promise<void>((resolve) => (release = resolve));
    const device = aDevice(memory);
    const { sorrel } = await settleIn(await openTab(device));
    device.log = {
      ...memory,
      async append(records) {
        arrived();
        await disk;
        return memory.append(records);
      },
    };
    const tab = await openTab(device);
    const recording = tab.record({ drafts: [weigh(sorrel, 1_510)] });
    await writing;
    expect(lastMass(tab, sorrel)).toBe(1_500);
    release();
    await recording;
    expect(lastMass(tab, sorrel)).toBe(1_510);
  });

  test('that a full disk turns away rejects, and leaves everything as it was', async () => {
    const device = aDevice();
    const { sorrel } = await settleIn(await openTab(device));
    const full = new Fault('storage-full', 'This device is full.', 'Free some space.');
    const memory = device.log;
    device.log = { ...memory, append: async () => Promise.reject(full) };
    const tab = await openTab(device);
    const before = new Map(tab.picture.ledger.subjects);
    await expect(tab.record({ drafts: [weigh(sorrel, 1_510)] })).rejects.toBe(full);
    expect(tab.picture.ledger.subjects).toEqual(before);
    expect(tab.growths()).toBe(0);
    expect((await memory.readAfter(0)).position).toBe(tab.picture.ledger.size);
  });

  test('that is in doubt is asked about, written on the keeper’s word, and marked', async () => {
    const tab = await openTab(aDevice());
    const { sorrel } = await settleIn(tab);
    const before = (await tab.onDisk()).length;
    const drafts = [weigh(sorrel, 3_000)];
    const asked = await tab.record({ drafts });
    expect(asked).toMatchObject({ kind: 'asked', doubts: [{ code: 'gain' }] });
    expect(await tab.onDisk()).toHaveLength(before);
    expect(await tab.record({ drafts, accepted: ['gain'] })).toMatchObject({ kind: 'done' });
    expect((await tab.onDisk()).at(-1)).toMatchObject({ massG: 3_000, doubt: 'gain' });
    // The next one is not held against the doubted mass alone.
    expect(await tab.record({ drafts: [weigh(sorrel, 1_510)] })).toMatchObject({ kind: 'done' });
  });

  test('beside one that is in doubt is not marked for it', async () => {
    const tab = await openTab(aDevice());
    const { sorrel, cedar } = await settleIn(tab);
    const many: Draft = {
      type: 'meal-offered',
      animal: cedar,
      prey: { ...smallRat, eachG: 20, count: 4 },
      outcome: 'ate',
    };
    const drafts = [weigh(sorrel, 1_505), many];
    expect(await tab.record({ drafts })).toMatchObject({ doubts: [{ code: 'many' }] });
    await tab.record({ drafts, accepted: ['many'] });
    expect(tab.picture.animal(sorrel)?.weighings.at(-1)?.doubt).toBeUndefined();
  });

  test.each([
    { why: 'it lies in the future', more: { at: '2026-11-25T22:00:00+01:00' }, code: 'future' },
    { why: 'no ball python weighs that', more: { massG: 9_000 }, code: 'mass-out-of-range' },
    { why: 'a field has the wrong shape', more: { scale: '' }, code: 'not-well-formed' },
  ])('is refused, and nothing is written, where $why', async ({ more, code }) => {
    const tab = await openTab(aDevice());
    const { sorrel } = await settleIn(tab);
    const before = await tab.onDisk();
    const drafts = [weigh(sorrel, 1_510), { ...weigh(sorrel, 1_510), ...more } as Draft];
    expect(await tab.record({ drafts })).toMatchObject({ kind: 'refused', refusals: [{ code }] });
    expect(await tab.onDisk()).toEqual(before);
  });

  test('of an earlier night stays in that night', async () => {
    const tab = await openTab(aDevice());
    const { sorrel } = await settleIn(tab);
    const drafts: Draft[] = [
      { type: 'opaque-seen', animal: sorrel, at: nightsAgo(3), precision: 'day' },
    ];
    expect(await tab.record({ drafts })).toMatchObject({ kind: 'done' });
    expect((await tab.onDisk()).at(-1)).toMatchObject({ at: nightsAgo(3), precision: 'day' });
  });
});

test('the same mass typed for two snakes in a row is asked about', async () => {
  const tab = await openTab(aDevice());
  const { sorrel, cedar } = await settleIn(tab);
  await tab.record({ drafts: [weigh(sorrel, 1_510)] });
  const asked = await tab.record({ drafts: [weigh(cedar, 1_510)] });
  expect(asked).toMatchObject({ kind: 'asked', doubts: [{ code: 'repeated' }] });
});

test('a struck record no longer counts, and stays on disk with its reason', async () => {
  const tab = await openTab(aDevice());
  const { sorrel } = await settleIn(tab);
  const done = await tab.record({ drafts: [weigh(sorrel, 1_510)] });
  const ids = done.kind === 'done' ? done.ids : [];
  expect(await tab.strike({ ids, reason: 'wrong snake' })).toMatchObject({ kind: 'done' });
  expect(lastMass(tab, sorrel)).toBe(1_500);
  expect((await tab.onDisk()).slice(-2)).toMatchObject([
    { massG: 1_510 },
    { type: 'struck', target: ids[0], reason: 'wrong snake' },
  ]);
});

test('a card is given once, however often it is asked for', async () => {
  const tab = await openTab(aDevice());
  const { sorrel, cedar } = await settleIn(tab);
  await tab.giveCard([sorrel]);
  await tab.giveCard([sorrel, cedar]);
  const cards = [...tab.picture.ledger.subjects.values()].filter(
    (each) => 'kind' in each && each.kind === 'label' && each.to?.kind === 'animal',
  );
  expect(cards).toHaveLength(2);
});

test('a list with one animal that does not fit is refused whole', async () => {
  const tab = await openTab(aDevice());
  await settleIn(tab);
  const before = await tab.onDisk();
  const wanted = [
    { name: 'Tansy', sex: 'unknown', position: 'B2-1' },
    { name: 'Bryony', sex: 'unknown', position: 'B9-9' },
  ] as const;
  expect(await tab.addAnimals(wanted)).toMatchObject({ problem: { code: 'no-such-position' } });
  expect(await tab.onDisk()).toEqual(before);
});

test('a backup is due a week after the last one', async () => {
  const device = aDevice();
  const tab = await openTab(device);
  await settleIn(tab);
  await tab.backedUp({});
  const later = async (days: number) => {
    device.clock = { ...device.clock, ms: device.clock.ms + days * 86_400_000 };
    await tab.wake(null);
    return tab.keeper.status().backupDue;
  };
  expect(await later(6.9)).toBe(false);
  expect(await later(0.2)).toBe(true);
});
