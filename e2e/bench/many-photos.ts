import type { Page } from '@playwright/test';
import { chanceFrom } from '../../demo-data/random.ts';
import { momentOf } from '../../src/domain/core/calendar.ts';
import {
  createMinter,
  type AnimalId,
  type DeviceId,
  type PhotoId,
} from '../../src/domain/core/ids.ts';
import type { RackEvent } from '../../src/domain/events/event.ts';

export const PHOTOS = 3_000;
export const PHOTO_BYTES = 80_000;

/** Records of so many pictures of these snakes, spread evenly over the years. */
export function photoRecords(
  animals: readonly AnimalId[],
  years: { readonly fromMs: number; readonly toMs: number; readonly offsetMin: number },
): readonly RackEvent[] {
  const { fromMs, toMs, offsetMin } = years;
  const chance = chanceFrom(11);
  let ms = fromMs;
  const device = 'PHT0S' as DeviceId;
  const minter = createMinter(device, () => ms);
  return Array.from({ length: PHOTOS }, (_, n) => {
    ms = Math.floor(fromMs + ((toMs - fromMs) * n) / PHOTOS);
    const at = momentOf({ ms, offsetMin });
    const animal = animals[chance.whole(0, animals.length - 1)];
    if (!animal) throw new Error('There is nobody to take a picture of.');
    return {
      id: minter.event(),
      at,
      precision: 'minute',
      loggedAt: at,
      device,
      type: 'photo-kept',
      v: 1,
      animal,
      photo: minter.photo(),
      bytes: PHOTO_BYTES,
    };
  });
}

/** Puts JPEGs of noise onto the app's shelf, all of one size; of forty pictures, over and over. */
export const fillShelf = (page: Page, ids: readonly PhotoId[]): Promise<void> =>
  page.evaluate(
    async ({ names, bytes }) => {
      const noise = async () => {
        const canvas = new OffscreenCanvas(320, 240);
        const pen = canvas.getContext('2d');
        const picture = new ImageData(320, 240);
        for (let n = 0; n < picture.data.length; n += 1) {
          picture.data[n] = n % 4 === 3 ? 255 : Math.random() * 256;
        }
        pen?.putImageData(picture, 0, 0);
        const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.8 });
        if (blob.size > bytes || blob.size < bytes / 2)
          throw new Error(`${blob.size} bytes of noise.`);
        // What follows the end of a JPEG belongs to it and is not looked at.
        const jpeg = new Uint8Array(bytes);
        jpeg.set(new Uint8Array(await blob.arrayBuffer()));
        return jpeg;
      };
      const jpegs = await Promise.all(Array.from({ length: 40 }, noise));
      const database = await new Promise<IDBDatabase>((resolve, reject) => {
        const request = indexedDB.open('nightdrop-photos', 1);
        request.addEventListener('upgradeneeded', () => request.result.createObjectStore('photos'));
        request.addEventListener('success', () => resolve(request.result));
        request.addEventListener('error', () => reject(new Error('The shelf did not open.')));
      });
      for (let from = 0; from < names.length; from += 100) {
        const writing = database.transaction('photos', 'readwrite');
        const shelf = writing.objectStore('photos');
        for (const [n, name] of names.slice(from, from + 100).entries()) {
          shelf.put(jpegs[n % jpegs.length], [name, bytes]);
        }
        await new Promise((resolve, reject) => {
          writing.addEventListener('complete', resolve);
          writing.addEventListener('abort', () => reject(new Error('The shelf is full.')));
        });
      }
      database.close();
    },
    { names: ids, bytes: PHOTO_BYTES },
  );
