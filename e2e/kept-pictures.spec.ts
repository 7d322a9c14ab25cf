import { expect, test, type Page } from '@playwright/test';
import { press, typeNumber } from './at-tub.ts';
import { backUp, beginWithThree, controlled, walkTo, walkToSnake, written } from './keeper.ts';
import { keepPicture } from './keep-picture.ts';
import { openDemo } from './screens.ts';
import { serve } from './serve.ts';

// Pictures lie apart from the log, and on this device alone.

const widthOfThumbnail = (page: Page) =>
  page
    .getByRole('img', { name: /^Picture/ })
    .first()
    .evaluate((image: HTMLImageElement) => image.naturalWidth);

async function keptPictures(page: Page, database: string): Promise<number> {
  return page.evaluate(
    (name) =>
      new Promise<number>((resolve, reject) => {
        const request = indexedDB.open(name);
        request.addEventListener('error', () => reject(request.error ?? new Error(name)));
        request.addEventListener('success', () => {
          const counted = request.result.transaction('photos').objectStore('photos').count();
          counted.addEventListener('success', () => {
            request.result.close();
            resolve(counted.result);
          });
        });
      }),
    database,
  );
}

async function scanWithPicture(page: Page): Promise<void> {
  await press(page, /^Follicles/);
  await keepPicture(page);
  await typeNumber(page, '18');
  await press(page, 'Next: second axis');
  await typeNumber(page, '16');
  await press(page, 'Write 18 × 16 mm');
  await expect(written(page, '18 × 16 mm')).toBeVisible();
}

test('a picture is kept with its scan, smaller, and is there without a network', async ({
  page,
}) => {
  const served = await serve();
  await beginWithThree(page, served.url);
  await controlled(page);
  const tub = await walkToSnake(page, 'Marrow');
  await scanWithPicture(page);
  await expect(page.getByRole('img', { name: /^Picture/ })).toBeVisible();
  expect(await widthOfThumbnail(page)).toBe(1_280);

  await served.stop();
  await page.reload();
  await page.getByRole('button', { name: /^Picture/ }).click();
  await expect(page.getByRole('dialog').getByRole('img')).toBeVisible();
  expect(await widthOfThumbnail(page)).toBe(1_280);
  await press(page, 'Close');

  const { records: all } = await backUp(page);
  const kept = all.find(({ type }) => type === 'photo-kept');
  expect(kept?.['about']).toBe(all.find(({ type }) => type === 'follicles-scanned')?.id);
  await expect(page.getByText('1 picture on this phone, 0.1 MB.')).toBeVisible();

  // Undo takes both back: they were written in one go.
  await walkTo(page, tub);
  await scanWithPicture(page);
  await press(page, 'Undo');
  await expect(written(page, /^Undone/)).toBeVisible();
  const struck = (await backUp(page)).records.filter(({ type }) => type === 'struck');
  expect(struck).toHaveLength(2);
});

test('pictures of the demo are erased with it', async ({ page }) => {
  await openDemo(page);
  await page
    .getByRole('link', { name: /Feed 1/ })
    .first()
    .click();
  await press(page, 'More');
  await press(page, 'Picture');
  await keepPicture(page);
  await press(page, 'Write');
  await expect(written(page, 'picture kept')).toBeVisible();
  expect(await keptPictures(page, 'nightdrop-demo-photos')).toBe(1);
  await walkTo(page, '/shelf');
  await press(page, 'Erase the demo');
  await expect(page.getByRole('button', { name: 'Begin my collection' })).toBeVisible();
  expect(await keptPictures(page, 'nightdrop-demo-photos')).toBe(0);
});
