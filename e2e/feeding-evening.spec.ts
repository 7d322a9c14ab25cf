import { expect, test, type Page } from '@playwright/test';
import { clockFrom } from './clock-from.ts';
import { addSnakes, backUp, begin, makeRack, walkTo, walkToSnake, written } from './keeper.ts';
import { serve, type Served } from './serve.ts';

// An evening of feeding sixty tubs: the thaw list, the meals row by row with three refusals and two left
// overnight, one that brought up its last meal, one in blue; and the next morning. Every piece of prey is
// counted by hand beside the screens.

test.use({ timezoneId: 'Europe/Berlin', serviceWorkers: 'block', actionTimeout: 10_000 });

let now = '2026-11-24T21:00:00+01:00';
let served: Served;
test.beforeAll(async () => {
  served = await serve({ beforeDesk: () => clockFrom(now) });
});
test.afterAll(() => served.stop());

const ROWS = 15;
const COLUMNS = 4;

/** By row: five rows each that take small, weaned and medium rats. */
const massOf = (row: number): number => (row <= 5 ? 1_500 : row <= 10 ? 300 : 2_500);

const nameOf = (row: number, column: number): string => `S${row}x${column}`;

const snakes = Array.from({ length: ROWS * COLUMNS }, (_, i) => {
  const [row, column] = [Math.floor(i / COLUMNS) + 1, (i % COLUMNS) + 1];
  return `${nameOf(row, column)}, f, F${row}-${column}, ${massOf(row)} g`;
});

async function cameIn(page: Page, size: string, pieces: number): Promise<void> {
  await page.getByRole('button', { name: 'Prey came in' }).click();
  const sheet = page.getByRole('dialog', { name: 'Prey came in' });
  await sheet.getByLabel('Size').selectOption(size);
  await sheet.getByLabel('Pieces').fill(String(pieces));
  await sheet.getByRole('button', { name: /^Write / }).click();
  await written(page, `${pieces} ${size}s into the freezer`).waitFor();
}

const thawOf = (page: Page, size: string) => page.locator('.thaw').filter({ hasText: size });

async function takeOut(page: Page, size: string, pieces: number): Promise<void> {
  await page.getByRole('button', { name: `${pieces} ${size}s out`, exact: true }).click();
  await written(page, `${pieces} ${size}s taken out`).waitFor();
}

/** A row of the rack: all ate but those named, each with how it was. */
async function feedRow(
  page: Page,
  row: number,
  meals: number,
  said: Readonly<Record<string, 'refused' | 'left overnight'>> = {},
): Promise<void> {
  await expect(page.getByRole('button', { name: new RegExp(`${nameOf(row, 2)} `) })).toBeVisible();
  const chips = page.getByRole('group', { name: 'Which row' });
  if ((await chips.count()) > 0) {
    await chips.getByRole('button', { name: `Row ${row}`, exact: true }).click();
  }
  for (const [name, how] of Object.entries(said)) {
    const line = page.getByRole('button', { name: new RegExp(`${name} `) });
    await line.click();
    if (how === 'left overnight') await line.click();
    await expect(line).toContainText(how);
  }
  await page.getByRole('button', { name: `Write ${meals} meals`, exact: true }).click();
  await written(page, `${meals} meals written`).first().waitFor();
  await expect(page.getByRole('button', { name: new RegExp(`${nameOf(row, 2)} `) })).toHaveCount(0);
}

async function inFreezer(page: Page, size: string, pieces: number): Promise<void> {
  await expect(
    page.locator('.drawer').filter({ hasText: size }).locator('.number').first(),
  ).toHaveText(String(pieces));
}

test('sixty tubs, row by row, and the stock right to the piece next morning', async ({ page }) => {
  test.setTimeout(150_000);
  await page.addInitScript({ content: clockFrom(now) });
  await begin(page, served.url);
  await makeRack(page, 'F', ROWS, COLUMNS);
  await addSnakes(page, snakes);

  await walkTo(page, '/prey');
  await cameIn(page, 'small rat', 50);
  await cameIn(page, 'weaned rat', 40);
  await cameIn(page, 'medium rat', 30);

  await walkToSnake(page, nameOf(1, 1));
  await page.getByRole('button', { name: 'More', exact: true }).click();
  await page.getByRole('button', { name: /^Brought up a meal/ }).click();
  await page.getByRole('button', { name: /after 2 days/ }).click();
  await written(page, 'brought up its meal').waitFor();
  await walkToSnake(page, nameOf(11, 1));
  await page.getByRole('button', { name: 'More', exact: true }).click();
  await page.getByRole('button', { name: /^In blue/i }).click();
  await written(page, 'in blue').waitFor();

  // Of 19 that eat with chance 0.85, 18 are enough on nine nights of ten; of 20 with 0.9 it takes all 20: the
  // binomial of each by hand, P(19 of 19) = 0.046, P(18) = 0.153 and P(20 of 20) = 0.122.
  await walkTo(page, '/feeding');
  await expect(page.getByRole('heading', { name: 'Due 58' })).toBeVisible();
  await takeOut(page, 'medium rat', 18);
  await takeOut(page, 'small rat', 18);
  await takeOut(page, 'weaned rat', 20);
  await page.getByText('Not tonight: 2, with the reason').click();
  await expect(page.getByText(/brought up a meal, rest until 8 Dec/)).toBeVisible();
  await expect(page.getByText(/in blue, seen tonight/)).toBeVisible();

  await page.getByRole('link', { name: /Feed rack F/ }).click();
  await feedRow(page, 1, 3, { [nameOf(1, 3)]: 'refused' });
  await feedRow(page, 2, 4, { [nameOf(2, 1)]: 'refused', [nameOf(2, 2)]: 'left overnight' });
  for (const row of [3, 4, 5]) await feedRow(page, row, 4);
  await feedRow(page, 6, 4, { [nameOf(6, 4)]: 'left overnight' });
  for (const row of [7, 8, 9, 10]) await feedRow(page, row, 4);
  await feedRow(page, 11, 3, { [nameOf(11, 3)]: 'refused' });
  for (const row of [12, 13, 14, 15]) await feedRow(page, row, 4);
  await expect(page.getByText('No meal is due here tonight.')).toBeVisible();

  await walkTo(page, '/feeding');
  await expect(page.getByRole('heading', { name: 'Due 0' })).toBeVisible();
  // 19 small rats offered, 2 refused; 18 were thawed.
  await expect(thawOf(page, 'small rat')).toContainText(
    '17 eaten or in a tub, 0 thrown out, 1 in hand',
  );
  await expect(thawOf(page, 'medium rat')).toContainText(
    '18 eaten or in a tub, 0 thrown out, 0 in hand',
  );
  await expect(thawOf(page, 'weaned rat')).toContainText(
    '20 eaten or in a tub, 0 thrown out, 0 in hand',
  );

  // Next morning, before work.
  now = '2026-11-25T06:40:00+01:00';
  await page.addInitScript({ content: clockFrom(now) });
  await page.reload();
  await walkTo(page, '/feeding');
  const open = page.getByRole('list', { name: 'Still open' });
  await expect(open.getByRole('listitem')).toHaveCount(2);
  await open.getByRole('link', { name: new RegExp(nameOf(2, 2)) }).click();
  await page.getByRole('button', { name: /^Not eaten/ }).click();
  await written(page, 'meal left was not eaten').waitFor();
  await walkTo(page, '/feeding');
  await open.getByRole('link', { name: new RegExp(nameOf(6, 4)) }).click();
  await page.getByRole('button', { name: /^Eaten/ }).click();
  await written(page, 'meal left was eaten').waitFor();

  await walkTo(page, '/feeding');
  await expect(page.getByRole('heading', { name: 'Still open' })).toHaveCount(0);
  await page.getByRole('button', { name: 'Into the bin: 2 small rats' }).click();
  await written(page, '2 small rats thrown out').waitFor();
  await expect(thawOf(page, 'small rat')).toContainText(
    '16 eaten or in a tub, 2 thrown out, 0 in hand',
  );

  await walkTo(page, '/prey');
  await inFreezer(page, 'small rat', 50 - 18);
  await inFreezer(page, 'weaned rat', 40 - 20);
  await inFreezer(page, 'medium rat', 30 - 18);
  const wrong = page.getByText(/taken out than were there|fed and not taken out/);
  await expect(wrong).toHaveCount(0);

  const { records } = await backUp(page);
  const meals = records.filter(({ type }) => type === 'meal-offered');
  expect(meals).toHaveLength(58);
  expect(meals.filter(({ outcome }) => outcome === 'refused')).toHaveLength(3);
  expect(meals.filter(({ outcome }) => outcome === 'left')).toHaveLength(2);
  expect(records.filter(({ type }) => type === 'meal-settled')).toHaveLength(2);
});
