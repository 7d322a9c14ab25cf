import { describe, expect, test } from 'vitest';
import type { AnimalId } from '../../src/domain/core/ids.ts';
import type { Draft } from '../../src/domain/events/event.ts';
import { createMemoryLog } from '../../src/store/memory-log.ts';
import { anEvent } from '../make.ts';
import { aDevice, openTab, settleIn, type Tab } from './make-world.ts';

const note = (animal: AnimalId, text: string): Draft => ({ type: 'noted', animal, text });
const subjects = (tab: Tab) => tab.picture.ledger.subjects;

describe('two tabs on one log', () => {
  test('follow each other, lose nothing and double nothing', async () => {
    const device = aDevice();
    const [one, other] = [await openTab(device, 'TAB01'), await openTab(device, 'TAB02')];
    const { sorrel, cedar } = await settleIn(one);
    await other.collection.follow();
    await Promise.all(
      Array.from({ length: 12 }, (_, i) => {
        const tab = i % 2 === 0 ? one : other;
        return tab.record({ drafts: [note(i % 3 === 0 ? sorrel : cedar, `note ${i}`)] });
      }),
    );
    await Promise.all([one.wake(null), other.wake(null)]);
    const disk = await one.onDisk();
    expect(one.picture.ledger.size).toBe(disk.length);
    expect(other.picture.ledger.size).toBe(disk.length);
    expect(subjects(other)).toEqual(subjects(one));
    expect(new Set(disk.map((each) => (each as { id: string }).id)).size).toBe(disk.length);
  });

  test('count a record they cannot read once, however often they are told of it', async () => {
    const device = aDevice();
    const tab = await openTab(device);
    await device.log.append([{ type: 'levitated', v: 1 }]);
    await Promise.all([tab.collection.follow(), tab.collection.follow(), tab.wake(null)]);
    expect(tab.keeper.status().unreadable).toBe(1);
  });

  test('open a log of which they can read nothing, as an old program does, however long it is', async () => {
    const device = aDevice();
    await device.log.append(Array.from({ length: 200_000 }, (_, n) => ({ type: 'levitated', n })));
    const tab = await openTab(device);
    expect(tab.keeper.status().unreadable).toBe(200_000);
    await tab.collection.settle();
    const next = await openTab(device);
    await next.collection.readHistory();
    expect(next.keeper.status().unreadable).toBe(200_000);
  });

  test('take in a growth that was read while they wrote themselves, in whatever order it lies', async () => {
    const memory = createMemoryLog();
    const device = aDevice(memory);
    const tab = await openTab(device);
    const { sorrel } = await settleIn(tab);
    const before = tab.picture.ledger.size;
    let meanwhile = async () => {};
    const read = memory.readAfter.bind(memory);
    // A log may hand back packed records before single ones: their order is not promised.
    device.log.readAfter = async (position) => {
      await meanwhile();
      const { records, position: last } = await read(position);
      return { records: records.toReversed(), position: last };
    };
    const theirs = [anEvent('noted'), anEvent('noted')];
    let hasWritten = false;
    meanwhile = async () => {
      if (hasWritten) return;
      hasWritten = true;
      await tab.record({ drafts: [note(sorrel, 'ours')] });
      await memory.append(theirs);
    };
    await tab.collection.follow();
    await tab.collection.follow();
    expect(tab.picture.ledger.size).toBe(before + 1 + theirs.length);
  });
});

describe('a start from the saved picture', () => {
  async function savedDevice() {
    const device = aDevice();
    const tab = await openTab(device);
    const snakes = await settleIn(tab);
    await tab.collection.settle();
    return { device, tab, ...snakes };
  }

  test('shows the same before the log is read, and after', async () => {
    const { device, tab } = await savedDevice();
    const next = await openTab(device);
    expect(next.picture.ledger.hasHistory).toBe(false);
    expect(subjects(next)).toEqual(subjects(tab));
    expect(next.picture.walk()).toEqual(tab.picture.walk());
    await next.collection.readHistory();
    expect(next.keeper.status()).toMatchObject({ isWhole: true, records: tab.picture.ledger.size });
    expect(subjects(next)).toEqual(subjects(tab));
  });

  test('takes in what was written after it was saved, and before the log was read', async () => {
    const { device, tab, sorrel } = await savedDevice();
    await tab.record({ drafts: [note(sorrel, 'after it was saved')] });
    const next = await openTab(device, 'TAB02');
    await next.record({ drafts: [note(sorrel, 'before it was read')] });
    await next.collection.readHistory();
    await tab.collection.follow();
    expect(subjects(next)).toEqual(subjects(tab));
    expect(next.picture.ledger.history(sorrel).map((event) => event.type)).toEqual(
      tab.picture.ledger.history(sorrel).map((event) => event.type),
    );
  });

  test('asked for twice at once, the log is taken in once', async () => {
    const { device, sorrel } = await savedDevice();
    const next = await openTab(device);
    await Promise.all([next.collection.readHistory(), next.collection.readHistory()]);
    await next.record({ drafts: [note(sorrel, 'later')] });
    expect(next.picture.ledger.size).toBe((await next.onDisk()).length);
  });

  test('with the clock set back since, a record of then can still be corrected', async () => {
    const { device, sorrel } = await savedDevice();
    device.clock = { ...device.clock, ms: device.clock.ms - 86_400_000 };
    const next = await openTab(device, 'TAB02');
    const [weighing] = next.picture.animal(sorrel)!.weighings;
    const replaces = { id: weighing!.id, reason: 'mistyped' };
    await next.record({ drafts: [{ type: 'weighed', animal: sorrel, massG: 1_530, replaces }] });
    await next.collection.readHistory();
    expect(next.picture.animal(sorrel)?.weighings.map(({ massG }) => massG)).toEqual([1_530]);
  });

  test('is not taken for an empty collection', async () => {
    const { device } = await savedDevice();
    const next = await openTab(device);
    expect(next.keeper.status()).toMatchObject({ animals: 2, tubs: 4 });
    expect(subjects(next).size).toBeGreaterThan(0);
  });
});

test('an early record of another phone, the newest in the file last, leaves later ids later', async () => {
  const device = aDevice();
  const tab = await openTab(device);
  const late = anEvent('arrived', { id: `ZZ0000000000MAKE1` as never });
  await device.log.append([late, anEvent('noted')]);
  await tab.collection.follow();
  expect(tab.world.minter.event() > late.id).toBe(true);
});
