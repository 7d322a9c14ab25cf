import { expect, test, type Locator, type Page } from '@playwright/test';
import { clockFrom } from './clock-from.ts';
import { beginWithThree, walkTo, walkToSnake, written } from './keeper.ts';
import { serve, type Served } from './serve.ts';

// Set in November, when an adult female is fed every 8 days.

test.use({ timezoneId: 'Europe/Berlin', serviceWorkers: 'block' });

let now: string;
let served: Served;
test.beforeAll(async () => {
  served = await serve({ beforeDesk: () => clockFrom(now) });
});
test.afterAll(() => served.stop());

async function comeBack(page: Page, moment: string): Promise<void> {
  now = moment;
  await page.addInitScript({ content: clockFrom(moment) });
  await page.reload();
}

/** Three snakes on 17 November, of which Marrow ate that evening; then it is a week later. */
async function aWeekLater(page: Page): Promise<void> {
  now = '2026-11-17T21:00:00+01:00';
  await page.addInitScript({ content: clockFrom(now) });
  await beginWithThree(page, served.url);
  await walkToSnake(page, 'Marrow');
  await page.getByRole('button', { name: /^Ate/ }).click();
  await written(page, 'Marrow ate').waitFor();
  await comeBack(page, '2026-11-24T21:00:00+01:00');
}

const toFeed = (page: Page, name: string): Locator =>
  page.getByRole('listitem').filter({ hasText: name }).filter({ hasText: 'Feed 1' });

async function toProtocol(page: Page, heading: string): Promise<void> {
  await walkTo(page, '/shelf');
  await page.getByRole('link', { name: /^Protocol/ }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Protocol' })).toBeVisible();
  await page.getByRole('heading', { level: 2, name: heading }).click();
}

const inSeason = (page: Page): Locator =>
  page.getByRole('button', { name: /^Feed females in the season every/ });

async function feedEverySeven(page: Page): Promise<void> {
  await inSeason(page).click();
  const sheet = page.getByRole('dialog', { name: 'Feed females in the season every' });
  await sheet.getByRole('button', { name: 'Less' }).click();
  const told = sheet.getByRole('region', { name: 'What it would change' });
  await expect(told).toContainText('Tonight: 1 more');
  await expect(told).toContainText('B1-1');
  await expect(told).toContainText(/Marrow Feed 1/);
  await sheet.getByRole('button', { name: 'Write 7 days' }).click();
  await written(page, 'Feed females in the season every 7 days').waitFor();
}

test('a number is tried out, written, undone, written again, kept and taken back', async ({
  page,
}) => {
  await aWeekLater(page);
  await walkTo(page, '/tonight');
  await expect(toFeed(page, 'Sorrel')).toBeVisible();
  await expect(toFeed(page, 'Marrow')).toHaveCount(0);

  await toProtocol(page, 'Feeding');
  await feedEverySeven(page);
  await expect(inSeason(page)).toContainText('7 days');
  await walkTo(page, '/tonight');
  await expect(toFeed(page, 'Marrow')).toBeVisible();
  await page.getByRole('button', { name: 'Undo' }).click();
  await written(page, 'Undone').waitFor();
  await expect(toFeed(page, 'Marrow')).toHaveCount(0);

  await toProtocol(page, 'Feeding');
  await expect(inSeason(page)).toContainText('8 days');
  await feedEverySeven(page);
  await comeBack(page, '2026-11-24T21:30:00+01:00');
  await expect(page.getByText('One is not the default')).toBeVisible();
  await walkTo(page, '/tonight');
  await expect(toFeed(page, 'Marrow')).toBeVisible();

  await toProtocol(page, 'Feeding');
  await expect(inSeason(page)).toContainText('default 8 days, your own');
  await page.getByRole('button', { name: /^Take back Feed females/ }).click();
  await expect(inSeason(page)).toContainText('8 days');
  await walkTo(page, '/tonight');
  await expect(toFeed(page, 'Sorrel')).toBeVisible();
  await expect(toFeed(page, 'Marrow')).toHaveCount(0);
});

test('a number that few keep is asked about, and one that cannot be is refused', async ({
  page,
}) => {
  await aWeekLater(page);
  await toProtocol(page, 'Visits');
  const stay = page.getByRole('button', { name: /^A male stays/ });
  const sheet = page.getByRole('dialog', { name: 'A male stays' });
  const type = async (digits: string) => {
    await sheet.getByRole('button', { name: /tap to type/ }).click();
    for (const digit of digits) {
      await sheet.getByRole('button', { name: digit, exact: true }).click();
    }
    await sheet.getByRole('button', { name: `Look at ${digits} days` }).click();
  };
  await stay.click();
  await type('90');
  await expect(sheet.getByRole('alert')).toContainText('90 days cannot be. 1–20 days');
  await type('4');
  await expect(sheet.getByRole('region', { name: 'What it would change' })).toContainText(
    'Tonight’s list stays as it is',
  );
  await sheet.getByRole('button', { name: 'Write 4 days' }).click();
  await written(page, 'A male stays 4 days').waitFor();

  await page.getByRole('button', { name: /^A male is overdue after/ }).click();
  const late = page.getByRole('dialog', { name: 'A male is overdue after' });
  for (let taps = 0; taps < 3; taps += 1) await late.getByRole('button', { name: 'More' }).click();
  await late.getByRole('button', { name: 'Write 8 days' }).click();
  const sure = page.getByRole('dialog', { name: 'Sure?' });
  await expect(sure).toContainText('most keep 3–7 days');
  await sure.getByRole('button', { name: 'Yes, write it' }).click();
  await written(page, 'A male is overdue after 8 days').waitFor();
});

test('a school shows each number before it is followed, and leaves the keeper’s own', async ({
  page,
}) => {
  await aWeekLater(page);
  await toProtocol(page, 'Visits');
  await page.getByRole('button', { name: /^A male stays/ }).click();
  await page.getByRole('button', { name: 'Less' }).click();
  await page.getByRole('button', { name: 'Write 2 days' }).click();
  await written(page, 'A male stays 2 days').waitFor();

  await page.getByRole('button', { name: /^Strict/ }).click();
  const sheet = page.getByRole('dialog', { name: 'School: Strict' });
  const told = sheet.getByRole('region', { name: 'What it would change' });
  await expect(told).toContainText('1,500 g → 1,800 g');
  await expect(told).not.toContainText('A male stays');
  const mine = sheet.getByRole('checkbox', { name: /^A male stays: yours 2 days, here 1 day/ });
  await mine.check();
  await expect(told).toContainText('2 days → 1 day');
  await mine.uncheck();
  await expect(told).not.toContainText('A male stays');
  await sheet.getByRole('button', { name: /^Follow Strict/ }).click();
  await written(page, 'School Strict').waitFor();
  await expect(page.getByRole('button', { name: /^A male stays/ })).toContainText(
    '2 daysmost keep 1–5 days, default 3 days, your own; Strict has 1 day',
  );
  await expect(page.getByRole('button', { name: /^A male rests/ })).toContainText(
    'default 4 days, Strict',
  );
  await expect(page.getByRole('button', { name: /^Strict/, pressed: true })).toBeVisible();
});

test('the keeper’s own vet stands wherever a caution leaves it to one', async ({ page }) => {
  await aWeekLater(page);
  const tub = await walkToSnake(page, 'Marrow');
  const toHealth = async () => {
    await walkTo(page, tub);
    await page.getByRole('button', { name: /^More/ }).click();
    await page.getByRole('button', { name: 'Health note' }).click();
  };
  await toHealth();
  await page.getByRole('link', { name: 'Add your vet’s number' }).click();
  await page.getByLabel('Name').fill('Dr Ahorn');
  await page.getByLabel('Telephone').fill('+44 (1632) 960-017');
  await page.getByRole('button', { name: 'Write', exact: true }).click();
  await written(page, 'Vet: Dr Ahorn').waitFor();
  await toHealth();
  const call = page.getByRole('link', { name: 'Call Dr Ahorn, +44 (1632) 960-017' });
  await expect(call).toHaveAttribute('href', 'tel:+441632960017');
  await page
    .getByRole('button', { name: /, grave$/ })
    .first()
    .click();
  await walkTo(page, '/tonight');
  await expect(call).toBeVisible();
});
