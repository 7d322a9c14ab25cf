import { expect, test } from 'vitest';
import { photoId } from '../make-ids.ts';
import { aDevice, openTab, settleIn } from './make-world.ts';

const jpeg = new Uint8Array([255, 216, 255]);

test('a picture that is written down with a record is about it, and goes with it on undo', async () => {
  const tab = await openTab(aDevice());
  const { sorrel } = await settleIn(tab);
  const photo = await tab.keepPhoto(jpeg);
  const recorded = await tab.record({
    drafts: [
      { type: 'sign-seen', animal: sorrel, sign: 'glow' },
      { type: 'photo-kept', animal: sorrel, photo, bytes: jpeg.byteLength },
    ],
  });
  if (recorded.kind !== 'done') throw new Error(recorded.kind);
  const [sign, kept] = recorded.ids;
  expect(await tab.onDisk()).toContainEqual(
    expect.objectContaining({ id: kept, photo, about: sign }),
  );
  await tab.strike({ ids: recorded.ids, reason: 'Undone at once' });
  expect(tab.picture.ledger.stands(kept!)).toBe(false);
});

test('a picture by itself is about no record', async () => {
  const tab = await openTab(aDevice());
  const { sorrel } = await settleIn(tab);
  const photo = await tab.keepPhoto(jpeg);
  await tab.record({ drafts: [{ type: 'photo-kept', animal: sorrel, photo, bytes: 3 }] });
  const kept = (await tab.onDisk()).find((record) => (record as { photo?: string }).photo);
  expect(kept).not.toHaveProperty('about');
});

test('pictures are told apart, counted and thrown away; one of another device is missing', async () => {
  const tab = await openTab(aDevice());
  const first = await tab.keepPhoto(jpeg);
  const second = await tab.keepPhoto(new Uint8Array(5));
  expect(first).not.toBe(second);
  expect(await tab.photoRoom(null)).toMatchObject({ count: 2, bytes: 8 });
  expect(await tab.photo(first)).toEqual(jpeg);
  await tab.dropPhoto(first);
  expect(await tab.photo(first)).toBeUndefined();
  expect(await tab.photo(photoId(9))).toBeUndefined();
  expect(await tab.photoRoom(null)).toMatchObject({ count: 1, bytes: 5 });
});
