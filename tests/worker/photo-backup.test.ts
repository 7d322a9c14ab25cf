import { expect, test } from 'vitest';
import type { FileLike, FileSpot } from '../../src/domain/file-like.ts';
import { aJpeg } from '../store/photo-archive.ts';
import { aDevice, openTab, settleIn, type Tab } from './make-world.ts';

/** A phone with two snakes, one of them with two pictures. */
async function withPictures() {
  const device = aDevice();
  const tab = await openTab(device);
  const { sorrel } = await settleIn(tab);
  const photos = [await tab.keepPhoto(aJpeg(900)), await tab.keepPhoto(aJpeg(1_100))];
  for (const photo of photos) {
    await tab.record({ drafts: [{ type: 'photo-kept', animal: sorrel, photo, bytes: 900 }] });
  }
  return { device, tab, sorrel, photos };
}

async function fileOf(tab: Tab): Promise<Blob> {
  const { file } = await tab.backUpWithPhotos(null);
  if (!(file instanceof Blob)) throw new Error('No file was made.');
  return file;
}

test('records and pictures come to another phone by one file; twice is once', async () => {
  const { tab, photos } = await withPictures();
  const file = await fileOf(tab);
  const device = aDevice();
  const other = await openTab(device, 'TAB02');
  const looked = await other.lookInto(file);
  if (!looked.ok) throw new Error(looked.problem.message);
  expect(looked.value.pictures).toEqual({ fresh: 2, freshBytes: 2_000, known: 0 });
  expect(await device.photos.list()).toEqual([]);
  await other.takeIn(null);
  expect(await other.photo(photos[1]!)).toEqual(aJpeg(1_100));
  expect(await other.onDisk()).toHaveLength((await tab.onDisk()).length);
  const again = await other.lookInto(file);
  expect(again).toMatchObject({ value: { fresh: 0, pictures: { fresh: 0, known: 2 } } });
});

test('a picture that is here is not written over', async () => {
  const { tab, device, photos } = await withPictures();
  const file = await fileOf(tab);
  await device.photos.drop(photos[0]!);
  await device.photos.drop(photos[1]!);
  await device.photos.keep(photos[1]!, aJpeg(7));
  await tab.lookInto(file);
  await tab.takeIn(null);
  expect(await tab.photo(photos[0]!)).toEqual(aJpeg(900));
  expect(await tab.photo(photos[1]!)).toEqual(aJpeg(7));
});

test('a damaged picture turns the whole archive away', async () => {
  const { tab } = await withPictures();
  const bytes = new Uint8Array(await (await fileOf(tab)).arrayBuffer());
  // In the last picture: behind it lies only the list of contents, of less than 500 bytes.
  const at = bytes.byteLength - 900;
  bytes[at] = (bytes[at] ?? 0) ^ 1;
  const device = aDevice();
  const other = await openTab(device, 'TAB02');
  const looked = await other.lookInto(new Blob([bytes]));
  expect(looked).toMatchObject({ ok: false, problem: { code: 'backup-damaged' } });
  expect((await other.takeIn(null)).ok).toBe(false);
  expect(await other.onDisk()).toEqual([]);
  expect(await device.photos.list()).toEqual([]);
});

test('pictures lie on this phone alone until a backup with them has left it', async () => {
  const { tab, sorrel } = await withPictures();
  const one = { animal: sorrel, name: 'Sorrel' };
  expect(await tab.photoRoom(null)).toMatchObject({ onlyHere: 2, shows: [{ ...one, count: 2 }] });
  const { newest } = await tab.backUpWithPhotos(null);
  expect(await tab.photoRoom(null)).toMatchObject({ onlyHere: 2 });
  await tab.backedUp(newest ? { newestSafePhoto: newest } : {});
  expect(await tab.photoRoom(null)).toMatchObject({ count: 2, onlyHere: 0, shows: [] });
  // One without pictures takes none of them away.
  const photo = await tab.keepPhoto(aJpeg(5));
  await tab.record({ drafts: [{ type: 'photo-kept', animal: sorrel, photo, bytes: 5 }] });
  await tab.backedUp({});
  expect(await tab.photoRoom(null)).toMatchObject({ onlyHere: 1, shows: [{ ...one, count: 1 }] });
});

test('into a file of the keeper’s it is the same archive, closed at the end', async () => {
  const { tab } = await withPictures();
  let written: FileLike | undefined;
  let isClosed = false;
  const spot: FileSpot = {
    createWritable: async () => ({
      write: async (whole) => {
        written = whole;
      },
      close: async () => {
        isClosed = true;
      },
      abort: async () => undefined,
    }),
  };
  const made = await tab.backUpWithPhotos(spot);
  expect(made).toMatchObject({ pictures: 2 });
  expect(made.file).toBeUndefined();
  expect(isClosed).toBe(true);
  const other = await openTab(aDevice(), 'TAB02');
  expect(await other.lookInto(written!)).toMatchObject({ value: { pictures: { fresh: 2 } } });
});

test('a file that fails leaves no backup behind', async () => {
  const { tab } = await withPictures();
  let isAborted = false;
  const spot: FileSpot = {
    createWritable: async () => ({
      write: () => Promise.reject(new Error('The card was taken out.')),
      close: async () => undefined,
      abort: async () => {
        isAborted = true;
      },
    }),
  };
  await expect(tab.backUpWithPhotos(spot)).rejects.toThrow(/card was taken out/);
  expect(isAborted).toBe(true);
});
