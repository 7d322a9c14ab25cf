import { Buffer } from 'node:buffer';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test, type Page } from '@playwright/test';
import { backUp, begin, makeRack, walkTo } from './keeper.ts';
import { messyCsv, messyRows, messyXlsx } from './messy-sheet.ts';
import { startRealBrowser, type RealBrowser } from './real-browser.ts';
import { serve, type Served } from './serve.ts';

// Years of rows come in through the real screens: looked at, asked about, taken in, undone.

const XLSX = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';

async function openSheet(page: Page): Promise<void> {
  await walkTo(page, '/spreadsheet');
  await expect(page.getByRole('heading', { level: 1, name: 'Bring a spreadsheet' })).toBeVisible();
}

async function pick(page: Page, name: string, buffer: Buffer): Promise<void> {
  const mimeType = name.endsWith('.xlsx') ? XLSX : 'text/csv';
  await page.locator('input[type=file]').setInputFiles({ name, mimeType, buffer });
  await expect(page.getByRole('heading', { name: 'Columns' })).toBeVisible({ timeout: 30_000 });
}

const takeIn = (page: Page) => page.getByRole('button', { name: /^Take in / });
const said = (page: Page, words: RegExp) =>
  expect(page.getByRole('status').filter({ hasText: words }).first()).toBeVisible({
    timeout: 60_000,
  });
const numbers = (page: Page) => page.getByRole('list', { name: 'What would be added' });

/** Notes how long the page could not answer a finger at the longest. */
const watchBlocks = (page: Page) =>
  page.addInitScript(() => {
    const seen = { longestMs: 0 };
    Object.assign(globalThis, { blocks: seen });
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) {
        seen.longestMs = Math.max(seen.longestMs, duration);
      }
    }).observe({ type: 'longtask' });
  });

/** From here on; a block made on purpose shows first that one would be seen. */
async function startBlocks(page: Page): Promise<void> {
  await page.evaluate(() => {
    setTimeout(() => {
      const until = performance.now() + 100;
      while (performance.now() < until);
    });
  });
  await expect.poll(() => longestBlock(page)).toBeGreaterThanOrEqual(100);
  await page.evaluate(() => {
    (globalThis as unknown as { blocks: { longestMs: number } }).blocks.longestMs = 0;
  });
}

const longestBlock = (page: Page): Promise<number> =>
  page.evaluate(
    () => (globalThis as unknown as { blocks: { longestMs: number } }).blocks.longestMs,
  );

test('3,000 messy rows of a workbook come in offline, once, and go again in one tap', async ({
  page,
  context,
  baseURL,
}) => {
  test.setTimeout(180_000);
  await watchBlocks(page);
  await begin(page, baseURL ?? './');
  await makeRack(page, 'B');
  await page.evaluate(() => navigator.serviceWorker.ready);
  await context.setOffline(true);
  const before = await backUp(page);
  const made = messyRows();
  const file = await messyXlsx(made);
  await openSheet(page);
  await startBlocks(page);
  await pick(page, 'snakes.xlsx', file);

  const facts = page.getByRole('region', { name: 'The file' });
  await expect(facts).toContainText('3,004 rows, headings on line 2');
  await expect(facts).toContainText('2 blocks of cells are merged');
  await expect(facts).toContainText('1 have none saved and are left empty');
  await expect(facts.getByRole('button', { name: /^Prices/ })).toBeVisible();
  await expect(page.getByRole('button', { name: /Hot spot/ })).toContainText(
    '30 °C is 86 °F, not 90',
  );
  await expect(page.getByRole('button', { name: /Date/ })).toContainText('can only be day first');
  await expect(numbers(page)).toContainText('60 new snakes');

  const questions = page.getByRole('heading', { name: /questions$/ });
  await expect(questions).toHaveText(`${made.slips + made.twice} questions`);
  await page
    .getByRole('group', { name: 'All: weights off by a factor' })
    .getByRole('button', { name: 'Take all as likely meant' })
    .click();
  const total = made.plain + made.slips;
  await expect(takeIn(page)).toContainText(`Take in ${total.toLocaleString('en')} records`);
  await page.getByText(/and why$/).click();
  await expect(
    page.getByText(/“B9-9” is no tub of yours: Elm 1 stands in no tub yet/),
  ).toBeVisible();
  await takeIn(page).click();
  await said(page, new RegExp(`${total.toLocaleString('en')} records of snakes.xlsx taken in`));
  const longestMs = await longestBlock(page);

  const after = await backUp(page);
  expect(after.records.length - before.records.length).toBe(total);
  // No weight came in ten times too large, and 58 oz are not 58 g.
  const masses = after.records.flatMap(({ massG }) => massG ?? []);
  expect(Math.min(...masses)).toBeGreaterThanOrEqual(899.9);
  expect(Math.max(...masses)).toBeLessThan(1_700);

  await openSheet(page);
  await pick(page, 'snakes.xlsx', file);
  await expect(page.getByRole('button', { name: 'Nothing new in it' })).toBeDisabled();
  expect((await backUp(page)).records).toHaveLength(after.records.length);

  await openSheet(page);
  await page.getByRole('button', { name: 'Undo snakes.xlsx' }).click();
  await said(page, /snakes.xlsx undone/);
  await expect(page.getByRole('button', { name: 'Undo snakes.xlsx' })).toHaveCount(0);
  await walkTo(page, '/find');
  await page.getByRole('searchbox').fill('Ash');
  await expect(page.getByRole('link', { name: /^Ash/ })).toHaveCount(0);
  await walkTo(page, '/shelf');
  await expect(page.getByText(/0 snakes, 4 tubs/)).toBeVisible();
  // A page that takes longer than this to answer a finger feels frozen. From memory.
  expect(longestMs).toBeLessThan(200);
});

test('a text file is asked about where it can be read in two ways, and read as told', async ({
  page,
  baseURL,
}) => {
  await begin(page, baseURL ?? './');
  await makeRack(page, 'B');
  await openSheet(page);
  // 0x8E is “Ž” in Windows-1252. Source: WHATWG Encoding Standard, index windows-1252.
  const rows =
    'Snake;Date;Weight;Sex\n\x8Eofka;1/2/2025;58;hembra\n\x8Eofka;3/4/2025;62,5;\n<b>Rue</b>;5/6/2025;x;f';
  await pick(page, 'old.csv', Buffer.from(rows, 'latin1'));
  await expect(page.getByText(/semicolons, Windows-1252/)).toBeVisible();
  await expect(
    page.getByText(/First say the order of dates in Date, and the unit of Weight/),
  ).toBeVisible();
  await expect(takeIn(page)).toBeDisabled();

  await page.getByRole('button', { name: /B Date/ }).click();
  await page.getByRole('button', { name: /^Month first/ }).click();
  await page.getByRole('button', { name: 'Done' }).click();
  await page.getByRole('button', { name: /C Weight/ }).click();
  await page.getByRole('button', { name: 'g', exact: true }).click();
  await page.getByRole('button', { name: 'Done' }).click();
  await page.getByLabel(/^hembra/).selectOption('female');

  const saved = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save what is left out as CSV' }).click();
  const path = await (await saved).path();
  expect(await readFile(path, 'utf8')).toContain(
    '4,Weight: “x” is no weight,<b>Rue</b>,5/6/2025,x,f',
  );

  await takeIn(page).click();
  await said(page, /records of old.csv taken in/);
  const { records } = await backUp(page);
  const weighed = records.filter(({ type }) => type === 'weighed');
  expect(weighed.map(({ at, massG }) => [at.slice(0, 10), massG])).toEqual([
    ['2025-01-02', 58],
    ['2025-03-04', 62.5],
  ]);
  expect(records.find(({ type }) => type === 'arrived')).toMatchObject({
    name: 'Žofka',
    sex: 'female',
  });
});

test('a file of 100 MB and a damaged one get their message, and nothing changes', async ({
  page,
  baseURL,
}) => {
  await begin(page, baseURL ?? './');
  await openSheet(page);
  // Made in the page: it is too large to be handed to the browser by its driver.
  await page.locator('input[type=file]').evaluate((input: HTMLInputElement) => {
    const files = new DataTransfer();
    files.items.add(new File([new Uint8Array(100_000_000)], 'huge.csv'));
    input.files = files.files;
    input.dispatchEvent(new Event('change', { bubbles: true }));
  });
  const alert = page.getByRole('alert').filter({ hasText: /./ });
  await expect(alert).toContainText('over 16 MB');
  await page.locator('input[type=file]').setInputFiles({
    name: 'x.xlsx',
    mimeType: XLSX,
    buffer: Buffer.from('PK\x03\x04 is no workbook'),
  });
  await expect(alert).toContainText('damaged');
  await expect(alert).toContainText('Nothing was changed');
});

test.describe('a browser that is killed midway', () => {
  let served: Served;
  let profile: string;
  let running: RealBrowser | undefined;
  test.beforeAll(async () => {
    served = await serve();
    profile = await mkdtemp(join(tmpdir(), 'nightdrop-sheet-'));
  });
  test.afterAll(async () => {
    await running?.kill();
    await served.stop();
    await rm(profile, { recursive: true, force: true });
  });

  test('has kept a part, and the same file completes it', async () => {
    test.setTimeout(180_000);
    const made = messyRows();
    const file = messyCsv(made);
    running = await startRealBrowser(profile);
    await begin(running.page, served.url);
    await makeRack(running.page, 'B');
    await openSheet(running.page);
    await pick(running.page, 'snakes.csv', file);
    await takeIn(running.page).click();
    await expect(running.page.getByText(/records are safe/)).toBeVisible({ timeout: 30_000 });
    await running.kill();

    running = await startRealBrowser(profile);
    const { page } = running;
    await page.goto(served.url);
    await openSheet(page);
    await expect(page.getByText(/It was broken off/)).toBeVisible();
    await pick(page, 'snakes.csv', file);
    await takeIn(page).click();
    await said(page, /records of snakes.csv taken in/);
    const { records } = await backUp(page);
    const types = records.filter(({ type }) =>
      ['arrived', 'weighed', 'meal-offered', 'moved'].includes(type),
    );
    expect(types).toHaveLength(made.plain);
    await openSheet(page);
    await page.getByRole('button', { name: 'Undo snakes.csv' }).click();
    await said(page, /snakes.csv undone/);
    await walkTo(page, '/shelf');
    await expect(page.getByText(/0 snakes, 4 tubs/)).toBeVisible();
    await running.kill();
    running = undefined;
  });
});
