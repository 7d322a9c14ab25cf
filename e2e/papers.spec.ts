import { readFile } from 'node:fs/promises';
import { PDFiumLibrary } from '@hyzyla/pdfium';
import { expect, test, type Page } from '@playwright/test';
import Papa from 'papaparse';
import { backUp, begin, goOffline, pickBackup, walkTo, written } from './keeper.ts';
import { printToPdf } from './print/print-labels.ts';
import { serve, type Served } from './serve.ts';
import { saleBackup, YOUNG } from './sale-backup.ts';

// An established young one from being put up for sale to its papers, the buyer from being written down
// to being erased, and the register, with no network from the first visit on.

let served: Served;
test.beforeAll(async () => {
  served = await serve();
});
test.afterAll(() => served.stop());

const BUYER = { name: 'Ada Rook', contact: '01632 960221' };

/** The text of each page, as a reader of PDF finds it. */
async function textOf(pdf: Uint8Array): Promise<readonly string[]> {
  const library = await PDFiumLibrary.init();
  const document = await library.loadDocument(pdf);
  try {
    // Words are set one by one; how far apart is not asked here.
    return [...document.pages()].map((page) => page.getText().replace(/\s+/g, ' '));
  } finally {
    document.destroy();
    library.destroy();
  }
}

async function takeIn(page: Page): Promise<void> {
  await pickBackup(page, await saleBackup());
  await page.getByRole('button', { name: /^Add \d+ records$/ }).click();
  await written(page, 'records taken in').waitFor();
}

const press = (page: Page, name: string | RegExp) =>
  page.getByRole('button', { name, exact: true }).click();
const state = (page: Page) => page.locator('.sale-state');

async function fillPrice(page: Page, legend: string, amount: string): Promise<void> {
  const price = page.getByRole('group', { name: legend });
  await price.getByLabel('Amount').fill(amount);
  await price.getByLabel('Currency').fill('eur');
}

async function download(page: Page, button: RegExp): Promise<string> {
  const [file] = await Promise.all([page.waitForEvent('download'), press(page, button)]);
  return readFile(await file.path(), 'utf8');
}

test('a young one is reserved, sold and handed over with its papers, and the buyer erased', async ({
  page,
}) => {
  await begin(page, served.url);
  await takeIn(page);
  await goOffline(page);

  await walkTo(page, '/shelf');
  await page.getByRole('link', { name: /^Sales/ }).click();
  const ready = page.getByRole('region', { name: 'Could go, not offered' });
  const shy = page.getByRole('region', { name: 'Not yet, because' });
  await expect(shy).toContainText('1 of 3 unaided meals in a row');
  await shy.getByText('Why').click();
  await expect(shy).toContainText('established is 3');
  await ready.getByRole('link', { name: new RegExp(YOUNG) }).click();
  await expect(page.getByText('Nothing on record stands against a sale.')).toBeVisible();

  await press(page, 'Up for sale');
  await fillPrice(page, 'Price', '1,80');
  await press(page, /^Write: up for sale/);
  await written(page, `${YOUNG} up for sale, 1.80 EUR`).waitFor();
  await press(page, 'Other price');
  await fillPrice(page, 'Price', '180');
  await press(page, /^Write: up for sale/);
  await expect(state(page)).toHaveText(/^for sale since .*, 180\.00\sEUR$/);

  await press(page, 'Reserve');
  const sheet = page.getByRole('dialog');
  await sheet.getByLabel('Buyer').selectOption('new');
  await sheet.getByLabel('Name', { exact: true }).fill(BUYER.name);
  await sheet.getByLabel('Contact').fill(BUYER.contact);
  await fillPrice(page, 'Deposit', '50');
  await press(page, /^Write: reserve/);
  await expect(state(page)).toHaveText(/^reserved until .*, 180\.00\sEUR$/);
  await expect(page.getByText('Deposit: 50.00 EUR')).toBeVisible();

  await press(page, 'Sold');
  await expect(sheet.getByLabel('Buyer')).toContainText(BUYER.name);
  await press(page, /^Write: sold/);
  await written(page, `${YOUNG} sold, 180.00 EUR`).waitFor();
  await press(page, 'Undo');
  await expect(state(page)).toHaveText(/^reserved/);
  await press(page, 'Sold');
  await press(page, /^Write: sold/);
  await expect(state(page)).toHaveText(/^sold on .*, not handed over, 180\.00\sEUR$/);

  await press(page, 'State the source');
  await press(page, /^C bred in captivity/);
  await press(page, 'Hand over');
  await expect(page.getByText('Look up the weather at both ends')).toBeVisible();
  await press(page, 'Collected here');
  await expect(state(page)).toHaveText(/^handed over on /);

  await page.getByLabel(/^You, as seller/).fill('Invented Snakes\nAlder Lane 3');
  const sheets = await textOf(await printToPdf(page, 'Print on A4'));
  expect(sheets).toHaveLength(2);
  const [card = '', handOver = ''] = sheets.map((text) => text.replaceAll('\u00a0', ' '));
  for (const words of [
    'Animal card',
    YOUNG,
    'hatched here',
    'female, popped',
    'Marrow, Pastel; by records',
    'Flint, het Clown (seen locked)',
    'Appendix II. Source as the keeper states it: C',
    'ate 1 hopper mouse, 10 g',
    'whole',
  ]) {
    expect(card).toContain(words);
  }
  for (const words of [
    'Hand-over sheet',
    'Invented Snakes',
    '180.00 EUR',
    '50.00 EUR',
    'Salmonella',
  ]) {
    expect(handOver).toContain(words);
  }
  expect(sheets.join(' ')).not.toContain(BUYER.name);
  await page.getByLabel(/^Print the buyer’s name/).check();
  const named = await textOf(await printToPdf(page, 'Print on Letter'));
  expect(named.at(-1)).toContain(BUYER.name);
  expect(named[0]).not.toContain(BUYER.name);

  const backup = await backUp(page);
  expect(backup.text).not.toContain('Ada');
  expect(backup.records.filter(({ type }) => type === 'sold')).toHaveLength(2);

  await walkTo(page, '/buyers');
  await expect(page.getByRole('listitem').filter({ hasText: BUYER.name })).toContainText(
    BUYER.contact,
  );
  await press(page, /^Erase/);
  await expect(page.getByRole('dialog')).toContainText('every number stay');
  await press(page, 'Erase for good');
  await expect(page.getByText('None is kept.')).toBeVisible();
  await expect(page.getByText(BUYER.name)).toHaveCount(0);

  await walkTo(page, '/register');
  await expect(page.getByText('1 sold.')).toBeVisible();
  await expect(page.getByText('180.00 EUR in all, of 1 sale with a price.')).toBeVisible();
  await page.getByLabel(/^With buyers/).check();
  const read = (text: string) =>
    Papa.parse<Record<string, string>>(text, { header: true, skipEmptyLines: true }).data;
  const kept = read(await download(page, /^Save the register/));
  expect(kept.map(({ Name }) => Name)).toContain(YOUNG);
  expect(kept.find(({ Name }) => Name === YOUNG)).toMatchObject({
    Sex: 'female',
    Came: 'hatched here',
    'CITES source as stated': 'C',
    Left: 'sold',
    Buyer: '',
  });
  const sales = read(await download(page, /^Save the sales/));
  expect(sales).toEqual([
    expect.objectContaining({
      Name: YOUNG,
      Price: '180.00',
      Currency: 'EUR',
      'Handed over': 'collected',
    }),
  ]);
});

test('one in quarantine is asked about before it is promised, and not forbidden', async ({
  page,
}) => {
  await begin(page, served.url);
  await takeIn(page);
  await walkTo(page, '/sales');
  await page.getByRole('region', { name: 'Not yet, because' }).getByRole('link').first().click();
  await press(page, 'Sold');
  await press(page, /^Write: sold/);
  const sure = page.getByRole('dialog', { name: 'Sure?' });
  await expect(sure).toContainText('established is 3');
  await sure.getByRole('button', { name: 'Go back' }).click();
  await page.getByRole('button', { name: 'Close' }).click();
  await expect(state(page)).toHaveText('not offered');
});
