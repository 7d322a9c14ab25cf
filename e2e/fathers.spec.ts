import { expect, test, type Page } from '@playwright/test';
import { clockFrom } from './clock-from.ts';
import { walkToSnake } from './keeper.ts';
import { heading, to } from './screen-stop.ts';
import { serve, type Served } from './serve.ts';

// Eggs on the demo: whom the records point at as fathers is offered with them, and on a clutch of which
// nobody said it.

test.use({ timezoneId: 'Europe/Berlin', serviceWorkers: 'block' });

const now = '2026-11-24T22:00:00+01:00';
let served: Served;
test.beforeAll(async () => {
  served = await serve({ beforeDesk: () => clockFrom(now) });
});
test.afterAll(() => served.stop());

test.beforeEach(async ({ page }) => {
  await page.addInitScript({ content: clockFrom(now) });
  await page.goto(served.url);
  await page.getByRole('button', { name: /Look round the demo/ }).click();
  await heading(page, 'Tonight');
});

const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).click();
const byRecords = (page: Page) => page.getByRole('region', { name: 'Fathers by the records' });

test('a tap beside the eggs writes down the father that the records point at, and why', async ({
  page,
}) => {
  await walkToSnake(page, 'Mallet');
  await press(page, 'More');
  await press(page, 'Eggs');
  const sheet = page.getByRole('dialog', { name: 'Eggs of Mallet' });
  await sheet.getByText('Why', { exact: true }).click();
  await expect(sheet.getByText(/^Yarrow: \d visits?, .*last /)).toBeVisible();
  const father = sheet.getByRole('button', { name: /^Fathers?: .*Yarrow/ });
  await father.click();
  await expect(father).toHaveAttribute('aria-pressed', 'true');
  await sheet.getByRole('button', { name: /^Write/ }).click();
  await press(page, 'Yes, write it');
  await to('/hatchery')(page);
  await page
    .getByRole('link', { name: /^Mallet/ })
    .first()
    .click();
  await expect(page.getByText(/Yarrow \((locked|together)\)/).first()).toBeVisible();
  await expect(byRecords(page)).toHaveCount(0);
});

test('a clutch of which nobody said it shows what the records say; one tap states it, one undoes it', async ({
  page,
}) => {
  await to('/hatchery')(page);
  await page
    .getByRole('link', { name: /^Mallet/ })
    .first()
    .click();
  await heading(page, 'Eggs of Mallet');
  await expect(page.getByText(/by the records, not stated/)).toBeVisible();
  await byRecords(page)
    .getByRole('button', { name: /^State it so/ })
    .click();
  await expect(byRecords(page)).toHaveCount(0);
  await expect(page.getByText(/by the records, not stated/)).toHaveCount(0);
  await press(page, 'Undo');
  await expect(byRecords(page)).toBeVisible();
});
