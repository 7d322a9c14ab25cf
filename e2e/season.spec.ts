import { expect, test, type Page } from '@playwright/test';
import { clockFrom } from './clock-from.ts';
import { backUp, beginWithThree, walkTo, walkToSnake, written } from './keeper.ts';
import { serve, type Served } from './serve.ts';

// One female from her first scan to her eggs, written down evening by evening at her tub, with the
// slips a keeper makes. The days between are the usual ones of common practice, no source: a shed 19
// days after ovulation, eggs 30 days after the shed.

test.use({ timezoneId: 'Europe/Berlin', serviceWorkers: 'block' });

let now: string;
let served: Served;
test.beforeAll(async () => {
  served = await serve({ beforeDesk: () => clockFrom(now) });
});
test.afterAll(() => served.stop());

/** At her tub, at ten in the evening of a day. */
async function evening(page: Page, day: string): Promise<void> {
  now = `${day}T22:00:00+01:00`;
  await page.addInitScript({ content: clockFrom(now) });
  await page.reload();
  await walkToSnake(page, 'Sorrel');
}

const press = (page: Page, name: string | RegExp) =>
  page.getByRole('button', { name }).first().click();

async function scan(page: Page, first: string, second: string): Promise<void> {
  await press(page, /^(Follicles|Scan)/);
  const sheet = page.getByRole('dialog', { name: /^Follicles of/ });
  for (const digit of first) await sheet.getByRole('button', { name: digit, exact: true }).click();
  await sheet.getByRole('button', { name: 'Next: second axis' }).click();
  for (const digit of second) await sheet.getByRole('button', { name: digit, exact: true }).click();
  await sheet.getByRole('button', { name: `Write ${first} × ${second} mm` }).click();
  await written(page, `largest follicle ${first} × ${second} mm`).waitFor();
}

const stands = (page: Page, words: string | RegExp) =>
  expect(page.locator('summary').filter({ hasText: words }).first()).toBeVisible();

/** What tonight's list asks of her. */
async function asked(page: Page, words: string | RegExp): Promise<void> {
  await walkTo(page, '/tonight');
  await expect(page.getByRole('link', { name: /Sorrel/ }).filter({ hasText: words })).toBeVisible();
}

/** What her page says is coming. */
async function coming(page: Page, ...windows: readonly RegExp[]): Promise<void> {
  await walkTo(page, '/find');
  await page.getByLabel('Name, position, gene or label code').fill('Sorrel');
  await page.getByRole('link', { name: /^Sorrel/ }).click();
  const list = page.getByRole('list', { name: 'Coming' });
  for (const words of windows) await expect(list).toContainText(words);
}

test('from the first scan to the eggs, with two late corrections', async ({ page }) => {
  test.setTimeout(240_000);
  now = '2026-10-20T22:00:00+02:00';
  await page.addInitScript({ content: clockFrom(now) });
  await beginWithThree(page, served.url);

  await evening(page, '2026-10-26');
  await asked(page, 'First scan of the season');
  await walkToSnake(page, 'Sorrel');
  await scan(page, '9', '10');
  await stands(page, 'Resting, 9.5 mm, tonight');

  await evening(page, '2026-11-25');
  await asked(page, 'Scan again');
  await walkToSnake(page, 'Sorrel');
  await scan(page, '14', '15');
  await stands(page, 'Building, 14.5 mm, tonight');
  await asked(page, 'Put the first male in');

  await evening(page, '2026-11-26');
  await press(page, /^(Male in|Pair)/);
  await page.getByRole('dialog').getByRole('button', { name: /Flint/ }).click();
  await written(page, /Flint/).waitFor();
  await press(page, /^Lock/);
  await written(page, 'Lock seen').waitFor();
  await evening(page, '2026-11-28');
  await press(page, /^Take out/);
  await written(page, 'Flint taken out').waitFor();

  await evening(page, '2026-12-07');
  await asked(page, 'Put a male in again');
  await evening(page, '2026-12-20');
  await scan(page, '24', '25');
  await coming(page, /Ovulation .* most likely/, /Eggs .* most likely/);
  await expect(page.getByText(/mm a week/)).toBeVisible();

  await evening(page, '2027-01-24');
  await scan(page, '37', '38');
  await asked(page, 'Look: has she ovulated?');
  await walkToSnake(page, 'Sorrel');
  await press(page, /^Not yet/);
  await written(page, 'no ovulation yet').waitFor();
  await walkTo(page, '/tonight');
  await expect(page.getByText('Look: has she ovulated?')).toHaveCount(0);

  // Seen on the fifth of February, and written down a week late.
  await evening(page, '2027-02-12');
  await stands(page, 'Building, 37.5 mm, 19 days ago');
  await page.getByLabel('Write it to').selectOption({ label: 'Fri 5 Feb' });
  await press(page, /^Ovulated/);
  await press(page, /^Seen at its peak/);
  await written(page, 'ovulation, seen at its peak').waitFor();
  await stands(page, 'Ovulated, 7 days ago');
  await coming(page, /Pre-lay shed 2\d Feb – \d Mar/, /Eggs \d+ Mar/);

  // A shed written down at the wrong tub, and taken for the pre-lay shed.
  await evening(page, '2027-02-17');
  await press(page, /^Shed/);
  await expect(page.getByText('Ovulation was 12 days before.')).toBeVisible();
  await press(page, /^Whole/);
  await written(page, 'shed whole, pre-lay').waitFor();
  await stands(page, 'Pre-lay shed, tonight');
  await asked(page, 'Put the nest box in');
  await coming(page, /Eggs 1\d–2\d Mar/);
  // It was another snake's, and is struck out.
  await press(page, /^Strike shed whole/);
  await page.getByLabel('Why', { exact: true }).fill('another tub');
  await press(page, 'Strike it out');
  await written(page, 'Struck out').waitFor();
  await walkToSnake(page, 'Sorrel');
  await stands(page, 'Ovulated, 12 days ago');

  await evening(page, '2027-02-24');
  await press(page, /^Shed/);
  await press(page, /^Whole/);
  await written(page, 'shed whole, pre-lay').waitFor();
  await stands(page, 'Pre-lay shed, tonight');
  await press(page, /^Nest box in/);
  await written(page, 'nest box in').waitFor();
  // 26, 30 and 36 days after the shed, for a keeper without cycles of his own.
  await coming(page, /Eggs 2\d Mar – \d Apr, most likely 2\d Mar/);

  await evening(page, '2027-03-16');
  await asked(page, 'Look for eggs');
  await walkToSnake(page, 'Sorrel');
  await press(page, /^No eggs yet/);
  await written(page, 'no eggs yet').waitFor();

  await evening(page, '2027-03-26');
  await press(page, /^Eggs/);
  const sheet = page.getByRole('dialog', { name: 'Eggs of Sorrel' });
  for (let egg = 0; egg < 6; egg += 1) {
    await sheet.getByRole('button', { name: 'Good: one more' }).click();
  }
  await sheet.getByRole('button', { name: /^Write/ }).click();
  await written(page, 'laid: 6 good').waitFor();
  await stands(page, 'Laid, tonight');
  await coming(page, /First pip 1\d–2\d May/);

  const { records } = await backUp(page);
  const types = records.map(({ type }) => type);
  expect(types).toContain('laid');
  const ovulation = records.find(({ type }) => type === 'ovulated');
  expect(ovulation?.at.slice(0, 10)).toBe('2027-02-05');
});
