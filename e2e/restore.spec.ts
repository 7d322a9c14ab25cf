import { createHash } from 'node:crypto';
import { mkdtemp, open, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test, type Browser, type Page } from '@playwright/test';
import {
  backUp,
  begin,
  beginWithThree,
  makeRack,
  pickBackup,
  recordCount,
  walkTo,
  walkToSnake,
  written,
  type Backup,
  type BackupRecord,
} from './keeper.ts';
import { serve, type Served } from './serve.ts';

let served: Served;
test.beforeAll(async () => {
  served = await serve();
});
test.afterAll(() => served.stop());

const refusal = (page: Page) => page.getByRole('alert');
const addButton = (page: Page) => page.getByRole('button', { name: /^Add \d+ records$/ });

/** A browser that has never seen the app, at the screen where a backup is taken in. */
async function emptyBrowser(browser: Browser): Promise<Page> {
  const page = await (await browser.newContext()).newPage();
  await page.goto(served.url);
  await page.getByRole('button', { name: 'Take in a backup' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Backup and restore' })).toBeVisible();
  return page;
}

async function takeIn(page: Page, text: string): Promise<void> {
  await pickBackup(page, text);
  await addButton(page).click();
  await written(page, /^\d+ records taken in$/).waitFor();
}

/** A backup with other records in it, and a header that fits them. */
function backupOf(backup: Backup, records: readonly unknown[]): string {
  const body = records.map((record) => `${JSON.stringify(record)}\n`).join('');
  const check = `sha-256:${createHash('sha256').update(body).digest('hex')}`;
  return `${JSON.stringify({ ...backup.header, records: records.length, check })}\n${body}`;
}

/** Changes fields of the first line and leaves the rest as it is. */
const withHeader = ({ text, header }: Backup, fields: object): string =>
  `${JSON.stringify({ ...header, ...fields })}\n${text.slice(text.indexOf('\n') + 1)}`;

/** All that a screen says, once it shows what it is about. */
async function screenText(page: Page, path: string, about: string): Promise<string> {
  await walkTo(page, path);
  await expect(page.getByRole('main')).toContainText(about);
  return page.getByRole('main').innerText();
}

test('a backup brings the same snakes, tubs and evening to an empty browser, once', async ({
  page,
  browser,
}) => {
  await beginWithThree(page, served.url);
  await walkToSnake(page, 'Marrow');
  await page.getByRole('button', { name: /^Refused/ }).click();
  await written(page, 'Marrow refused').waitFor();
  const backup = await backUp(page);
  expect(backup.fileName).toMatch(/^\d{4}-\d\d-\d\d\.nightdrop\.jsonl$/);
  expect(backup.header.records).toBe(backup.records.length);
  await expect(page.getByText('Last backup: today.')).toBeVisible();

  const other = await emptyBrowser(browser);
  await takeIn(other, backup.text);
  await expect(other.getByText('This window keeps nothing')).toBeHidden();
  // Without what each has just written at its foot.
  await Promise.all([page.reload(), other.reload()]);
  const rack = `/rack/${String(backup.records.find(({ type }) => type === 'rack-made')?.['rack'])}`;
  for (const [path, about] of [
    ['/tonight', 'Sorrel'],
    ['/racks', 'Snake room'],
    [rack, 'Sorrel'],
  ] as const) {
    expect(await screenText(other, path, about)).toBe(await screenText(page, path, about));
  }
  const again = await backUp(other);
  expect(again.records).toEqual(backup.records);
  expect(again.header.collection).toBe(backup.header.collection);

  // Twice is once.
  await pickBackup(other, backup.text);
  await expect(other.getByText(/0 new, \d+ you have already/)).toBeVisible();
  await expect(addButton(other)).toBeDisabled();

  // What was written there since comes back here, and nothing else.
  await walkToSnake(other, 'Sorrel');
  await other.getByRole('button', { name: /^Refused/ }).click();
  await written(other, 'Sorrel refused').waitFor();
  const later = await backUp(other);
  await pickBackup(page, later.text);
  await expect(page.getByText(/1 new, \d+ you have already/)).toBeVisible();
  await addButton(page).click();
  await written(page, '1 records taken in').waitFor();
  expect((await backUp(page)).records).toEqual(later.records);
});

test('files that are no good say why, and change nothing', async ({ page, browser }) => {
  await beginWithThree(page, served.url);
  const backup = await backUp(page);
  const before = await recordCount(page);
  const stranger = await (await browser.newContext()).newPage();
  await begin(stranger, served.url);
  await makeRack(stranger, 'C');
  const foreign = await backUp(stranger);

  const lines = backup.text.split('\n');
  const cutAt = backup.text.length - Math.floor((lines.at(-2) ?? '').length / 2);
  const png = Buffer.from('89504e470d0a1a0a0000000d49484452000001f4000001f40806000000', 'hex');
  const bad: readonly (readonly [string, string | Buffer, RegExp])[] = [
    ['empty', '', /This file is empty/],
    ['cut off in a line', backup.text.slice(0, cutAt), /ends early, at line \d+ of \d+/],
    ['cut off in the header', (lines[0] ?? '').slice(0, 40), /not a Nightdrop backup/],
    ['one letter changed', backup.text.replace('Marrow', 'Morrow'), /check value does not fit/],
    ['a newer format', withHeader(backup, { version: 99 }), /version 99; this app reads up to 1/],
    ['no count', withHeader(backup, { records: 'many' }), /Line 1 is damaged \(records\)/],
    ['a picture', Buffer.concat([png, Buffer.alloc(60_000, 7)]), /not a Nightdrop backup/],
    ['another collection', foreign.text, /backup is of another collection/],
  ];
  for (const [what, file, says] of bad) {
    await test.step(what, async () => {
      await pickBackup(page, file);
      await expect(refusal(page).filter({ hasText: says })).toBeVisible();
      await expect(addButton(page)).toBeHidden();
      expect(await recordCount(page)).toBe(before);
    });
  }
  expect((await backUp(page)).records).toEqual(backup.records);
});

test('a file of 100 MB that is no backup is turned away within two seconds', async ({ page }) => {
  await beginWithThree(page, served.url);
  const before = await recordCount(page);
  const folder = await mkdtemp(join(tmpdir(), 'nightdrop-huge-'));
  const path = join(folder, 'huge.nightdrop.jsonl');
  const file = await open(path, 'w');
  const part = Buffer.alloc(1_000_000, 'x');
  for (let i = 0; i < 100; i += 1) await file.write(part);
  await file.close();

  await walkTo(page, '/safe');
  await page.getByLabel('Backup file').setInputFiles(path);
  await expect(refusal(page).filter({ hasText: 'not a Nightdrop backup' })).toBeVisible({
    timeout: 2_000,
  });
  expect(await recordCount(page)).toBe(before);
  await rm(folder, { recursive: true });
});

const HOSTILE = '<img src=x onerror=evil()>';

/** Every text that a keeper may have typed, replaced; what the app itself chose stays. */
const poisoned = (record: BackupRecord): BackupRecord => ({
  ...record,
  ...Object.fromEntries(
    ['name', 'traits']
      .filter((field) => field in record && record.type !== 'rack-made')
      .map((field) => [field, HOSTILE]),
  ),
  ...(record.type === 'meal-offered' ? { remark: HOSTILE } : {}),
  by: '<b>x</b>',
  place: HOSTILE,
});

test('a backup full of markup is shown word for word, and nothing in it runs', async ({
  page,
  browser,
}) => {
  await beginWithThree(page, served.url);
  await walkToSnake(page, 'Marrow');
  await page.getByRole('button', { name: /^Refused/ }).click();
  await written(page, 'Marrow refused').waitFor();
  const backup = await backUp(page);
  const { animal = '' } = backup.records.find(({ type }) => type === 'meal-offered') ?? {};
  const records = backup.records.map(poisoned);

  const other = await emptyBrowser(browser);
  const alarms: string[] = [];
  await other.context().exposeFunction('evil', () => alarms.push('evil'));
  other.on('dialog', (dialog) => alarms.push(dialog.message()));
  other.on('request', (request) => {
    if (request.url().endsWith('/x')) alarms.push(request.url());
  });
  await takeIn(other, backupOf(backup, records));
  expect((await backUp(other)).records).toEqual(records);
  for (const path of [
    '/tonight',
    '/racks',
    '/labels',
    '/safe',
    '/shelf',
    `/animal/${animal}`,
    `/snake/${animal}`,
  ]) {
    await walkTo(other, path);
    await expect(other.getByRole('heading', { level: 1 }).first()).toBeVisible();
    await expect(other.locator('img[src=x], [onerror]')).toHaveCount(0);
  }
  await walkTo(other, '/find');
  await other.getByLabel('Name, position, gene or label code').fill('<img');
  await other.getByRole('link', { name: HOSTILE }).first().click();
  await expect(other.getByRole('heading', { level: 1, name: HOSTILE })).toBeVisible();
  await expect(other.getByText('(<b>x</b>)').first()).toBeVisible();
  await expect(other.locator('img[src=x], [onerror]')).toHaveCount(0);
  expect(alarms).toEqual([]);
});
