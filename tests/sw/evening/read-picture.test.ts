import { expect, test } from 'vitest';
import { readPicture } from '../../../src/sw/evening/read-picture.ts';
import { eveningView } from '../../../src/domain/views/evening-view.ts';
import { createMemoryLog } from '../../../src/store/memory-log.ts';
import { clockAt, TONIGHT } from '../../make.ts';
import { aDevice, openTab, settleIn } from '../../worker/make-world.ts';

// The page's own collection is the oracle: asleep or awake, the same records give the same evening.

async function aRoom() {
  const device = aDevice();
  const tab = await openTab(device);
  const { sorrel, cedar } = await settleIn(tab);
  const read = () => readPicture(device.log, device.shelf, device.clock);
  return { device, tab, sorrel, cedar, read };
}

test('reads the whole log where no picture was saved', async () => {
  const { tab, device, read } = await aRoom();
  expect(device.shelf.saved).toBeUndefined();
  expect(eveningView(await read())).toEqual(eveningView(tab.picture));
  expect(eveningView(tab.picture).count).toBeGreaterThan(0);
});

test('takes the saved picture where nothing came after it', async () => {
  const { tab, device, read } = await aRoom();
  await tab.collection.settle();
  let reads = 0;
  const counted = {
    readAfter: (position: number) => {
      reads += 1;
      return device.log.readAfter(position);
    },
  };
  const picture = await readPicture(counted, device.shelf, device.clock);
  expect(picture.ledger.hasHistory).toBe(false); // So it came from the saved one,
  expect(reads).toBe(1); // and nothing else was read.
  expect(eveningView(picture)).toEqual(eveningView(tab.picture));
  expect(eveningView(await read())).toEqual(eveningView(tab.picture));
});

test('a correction written after the picture was saved counts', async () => {
  const { tab, sorrel, read } = await aRoom();
  const fed = await tab.record({
    drafts: [
      {
        type: 'meal-offered',
        animal: sorrel,
        prey: { kind: 'rat', size: 'small', eachG: 65, count: 1, state: 'thawed' },
        outcome: 'ate',
      },
    ],
  });
  if (fed.kind !== 'done') throw new Error('The meal was not written.');
  const before = eveningView(tab.picture).count;
  await tab.collection.settle();
  await tab.strike({ ids: fed.ids, reason: 'wrong tub' });
  expect(eveningView(tab.picture).count).toBe(before + 2); // The meal, and the scan that waited for it.
  expect(eveningView(await read())).toEqual(eveningView(tab.picture));
});

test('time alone moves the evening on', async () => {
  const { tab, device, read } = await aRoom();
  await tab.collection.settle();
  device.clock = clockAt('2027-01-20T22:00:00+01:00');
  tab.collection.refresh();
  const later = eveningView(await read());
  expect(later.night).toBe('2027-01-20');
  expect(later).toEqual(eveningView(tab.picture));
});

test('records of a newer version do not stand in the way, and nothing is written', async () => {
  const { device, tab, read } = await aRoom();
  await device.log.append([{ id: 'from another age', type: 'flown', v: 9 }]);
  const before = await tab.onDisk();
  const notes = await device.notes.load();
  expect(eveningView(await read())).toEqual(eveningView(tab.picture));
  expect(await tab.onDisk()).toEqual(before);
  expect(await device.notes.load()).toEqual(notes);
  expect(device.shelf.saved).toBeUndefined();
});

test('a device with no records has a free evening', async () => {
  const picture = await readPicture(createMemoryLog(), aDevice().shelf, clockAt(TONIGHT));
  expect(eveningView(picture).count).toBe(0);
});
