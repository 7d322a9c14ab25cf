import { readFile } from 'node:fs/promises';
import { expect, test, type Browser, type Page } from '@playwright/test';
import { passesAxe } from './access-check.ts';
import { press } from './at-tub.ts';
import { keepPicture } from './keep-picture.ts';
import { backUp, beginWithThree, recordCount, walkTo, walkToSnake, written } from './keeper.ts';
import { serve, type Served } from './serve.ts';

let served: Served;
test.beforeAll(async () => {
  served = await serve();
});
test.afterAll(() => served.stop());

/** Three snakes, and a picture of one of them. */
async function beginWithPicture(page: Page): Promise<void> {
  await beginWithThree(page, served.url);
  await walkToSnake(page, 'Marrow');
  await press(page, 'More');
  await press(page, 'Picture');
  await keepPicture(page);
  await press(page, 'Write');
  await expect(written(page, 'picture kept')).toBeVisible();
  await walkTo(page, '/safe');
}

/** As on a phone, where no window asks where to put a file. */
const withoutPicker = (page: Page) =>
  page.addInitScript(() => {
    delete (window as { showSaveFilePicker?: unknown }).showSaveFilePicker;
  });

async function download(page: Page): Promise<{ readonly name: string; readonly bytes: Buffer }> {
  await walkTo(page, '/safe');
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    press(page, 'Back up with pictures'),
  ]);
  return { name: file.suggestedFilename(), bytes: await readFile(await file.path()) };
}

async function pick(page: Page, buffer: Buffer): Promise<void> {
  await walkTo(page, '/safe');
  await page
    .getByLabel('Backup file')
    .setInputFiles({ name: '2026-11-24.nightdrop.zip', mimeType: 'application/zip', buffer });
}

async function emptyBrowser(browser: Browser): Promise<Page> {
  const page = await (await browser.newContext()).newPage();
  await page.goto(served.url);
  await press(page, 'Take in a backup');
  await expect(page.getByRole('heading', { level: 1, name: 'Backup and restore' })).toBeVisible();
  return page;
}

test('records and pictures come to an empty browser by one file', async ({ page, browser }) => {
  await withoutPicker(page);
  await beginWithPicture(page);
  await expect(page.getByText('1 picture is only on this phone')).toBeVisible();
  await page.getByText('Which', { exact: true }).click();
  await expect(page.getByRole('link', { name: 'Marrow: 1 picture' })).toBeVisible();
  await passesAxe(page);

  const { name, bytes } = await download(page);
  expect(name).toMatch(/^\d{4}-\d\d-\d\d\.nightdrop\.zip$/);
  await expect(written(page, 'Backed up, with 1 picture')).toBeVisible();
  await expect(page.getByText('All of them were in your last backup with pictures.')).toBeVisible();

  const other = await emptyBrowser(browser);
  await pick(other, bytes);
  await expect(other.getByText(/^1 picture new \(0\.1 MB\), 0 you have already\.$/)).toBeVisible();
  await other.getByRole('button', { name: /^Add \d+ records, 1 picture$/ }).click();
  await written(other, /records taken in$/).waitFor();
  expect((await backUp(other)).records).toEqual((await backUp(page)).records);
  await walkToSnake(other, 'Marrow');
  await other.getByRole('heading', { level: 1 }).getByRole('link').click();
  await other.getByRole('button', { name: /^Picture/ }).click();
  await expect(other.getByRole('dialog').getByRole('img')).toBeVisible();

  // Twice is once.
  await pick(other, bytes);
  await expect(other.getByText(/^0 pictures new, 1 you have already\.$/)).toBeVisible();
  await expect(other.getByRole('button', { name: /^Add 0 records/ })).toBeDisabled();
});

test('archives that are no good say why, and change nothing', async ({ page, browser }) => {
  await withoutPicker(page);
  await beginWithPicture(page);
  const { bytes } = await download(page);
  const other = await emptyBrowser(browser);
  const picture = bytes.lastIndexOf(Buffer.from([0xff, 0xd8, 0xff]));
  const damaged = Buffer.from(bytes);
  damaged[picture + 500] = (damaged[picture + 500] ?? 0) ^ 1;
  const records = bytes.indexOf('Marrow');
  const changed = Buffer.from(bytes);
  changed[records] = 'm'.charCodeAt(0);
  const bad: readonly (readonly [string, Buffer, RegExp])[] = [
    ['cut off', bytes.subarray(0, bytes.length - 30), /This archive ends early/],
    ['cut off early', bytes.subarray(0, 200), /This archive ends early/],
    ['a picture damaged', damaged, /Picture 1 of 1 is damaged/],
    ['a record changed', changed, /records in this archive are damaged/],
  ];
  for (const [what, file, says] of bad) {
    await test.step(what, async () => {
      await pick(other, file);
      await expect(other.getByRole('alert').filter({ hasText: says })).toBeVisible();
      await expect(other.getByRole('button', { name: /^Add/ })).toBeHidden();
      expect(await recordCount(other)).toBe(0);
    });
  }
});

test('where the browser lets the keeper choose a file, it is written into that', async ({
  page,
}) => {
  // The window that asks belongs to the system; the file it gives is a real one, in the site's own folder.
  await page.addInitScript(() => {
    const choose = async ({ suggestedName }: { suggestedName: string }) =>
      (await navigator.storage.getDirectory()).getFileHandle(suggestedName, { create: true });
    Object.assign(window, { showSaveFilePicker: choose });
  });
  await beginWithPicture(page);
  await press(page, 'Back up with pictures');
  await expect(written(page, 'Backed up, with 1 picture')).toBeVisible();
  const text = await page.evaluate(async () => {
    const folder = await navigator.storage.getDirectory();
    for await (const handle of folder.values()) {
      if (handle.kind !== 'file') continue;
      const file = await handle.getFile();
      const bytes = new Uint8Array(await file.arrayBuffer());
      return Array.from(bytes, (byte) => String.fromCharCode(byte)).join('');
    }
    return '';
  });
  await pick(page, Buffer.from(text, 'latin1'));
  await expect(page.getByText(/^0 pictures new, 1 you have already\.$/)).toBeVisible();
});

test('what was made for saving is taken away once it lies elsewhere, or an hour later', async ({
  page,
}) => {
  const made = () =>
    page.evaluate(async () => {
      const site = await navigator.storage.getDirectory();
      const folder = await site.getDirectoryHandle('made-files', { create: true });
      const names: string[] = [];
      for await (const name of folder.keys()) names.push(name);
      return names;
    });
  await withoutPicker(page);
  await beginWithPicture(page);
  await download(page);
  await expect(written(page, 'Backed up, with 1 picture')).toBeVisible();
  const [name = '', ...more] = await made();
  expect(more).toEqual([]);
  expect(Number(name)).toBeGreaterThan(Date.now() - 600_000);
  await page.evaluate(async (now) => {
    const site = await navigator.storage.getDirectory();
    const folder = await site.getDirectoryHandle('made-files');
    await folder.getFileHandle(String(now - 3_700_000), { create: true });
  }, Date.now());
  await walkTo(page, '/tonight');
  await walkTo(page, '/safe');
  await expect.poll(made).toEqual([name]);
});
