import { expect, test, type Page } from '@playwright/test';
import { clockFrom } from './clock-from.ts';
import { serve, type Served } from './serve.ts';
import { to } from './screen-stop.ts';

// An evening and the next ones of a keeper with a day job, on the demo: the board, the plan, the
// moves, two locks, an evening that is missed, and the plan that makes up for it.

test.use({ timezoneId: 'Europe/Berlin', serviceWorkers: 'block' });

let now = '2026-11-24T22:00:00+01:00';
let served: Served;
test.beforeAll(async () => {
  served = await serve({ beforeDesk: () => clockFrom(now) });
});
test.afterAll(() => served.stop());

const evening = async (page: Page, day: string): Promise<void> => {
  now = `${day}T22:00:00+01:00`;
  await page.addInitScript({ content: clockFrom(now) });
  await page.reload();
};

/** The position on a plate, as it is typed. */
async function type(page: Page, position: string): Promise<void> {
  await page.getByRole('button', { name: 'Type' }).click();
  const sheet = page.getByRole('dialog', { name: 'Position or code' });
  for (const key of position.replace('-', '')) {
    await sheet.getByRole('button', { name: key, exact: true }).click();
  }
  await sheet.getByRole('button', { name: `Open ${position}` }).click();
}

/** Moves one male by his tub and hers, as the line says. */
async function moveFirst(page: Page): Promise<string> {
  const line = page.getByRole('list', { name: 'Moves' }).getByRole('listitem').first();
  const words = (await line.locator('p').nth(1).textContent()) ?? '';
  const [from = '', into = ''] = await line.locator('.plate').allTextContents();
  await type(page, from);
  await expect(page.getByText(/is in hand\. Now the tub/)).toBeVisible();
  await type(page, into);
  await expect(page.getByText(/is in hand\. Now the tub/)).toBeHidden();
  return words;
}

/** A first choice and a reserve for a female, out of those that need no reason. */
async function choose(page: Page, female: string): Promise<void> {
  await page.getByRole('button', { name: `Males for ${female}`, exact: true }).click();
  const sheet = page.getByRole('dialog', { name: `Males for ${female}` });
  const free = sheet
    .getByRole('listitem')
    .filter({ hasNotText: 'Not planned without your reason' });
  // The odds are reckoned first.
  const choices = sheet.getByRole('group', { name: /^Choice of / });
  await expect(choices.first()).toBeVisible({ timeout: 30_000 });
  const names = await free.evaluateAll((items) =>
    items.map((item) => item.getAttribute('aria-label') ?? '').filter((name) => name !== ''),
  );
  const press = async (name: string | undefined, choice: string) => {
    if (name === undefined) return;
    const button = sheet
      .getByRole('group', { name: `Choice of ${name}` })
      .getByRole('button', { name: choice });
    await button.click();
    await expect(button).toHaveAttribute('aria-pressed', 'true');
  };
  await press(names[0], 'First');
  await press(names[1], 'Reserve');
  await sheet.getByRole('button', { name: 'Close' }).click();
}

test('the males are shared: board, plan, an evening of moves, a missed one and the new plan', async ({
  page,
}) => {
  test.setTimeout(240_000);
  await page.addInitScript({ content: clockFrom(now) });
  await page.goto(served.url);
  await openDemoAt(page);

  await test.step('the board', async () => {
    await to('/rotation')(page);
    const females = page.getByRole('list', { name: 'Females' }).first();
    await expect(females.getByText(/In her window/).first()).toBeVisible();
    for (const female of ['Bobbin', 'Chisel', 'Marl']) await choose(page, female);
  });

  await test.step('the plan, proven, and kept', async () => {
    await page.getByRole('link', { name: /Make the plan/ }).click();
    await expect(page.getByText('Proven: no plan within your limits is better.')).toBeVisible({
      timeout: 30_000,
    });
    await page.getByRole('button', { name: /Keep this plan/ }).click();
    await expect(page.getByRole('link', { name: /Tonight’s moves you go by/ })).toBeVisible();
  });

  await test.step('an evening of moves, by his tub and hers', async () => {
    await to('/moves')(page);
    const moves = page.getByRole('list', { name: 'Moves' }).getByRole('listitem');
    await expect(moves.first()).toBeVisible();
    const open = moves.filter({ hasNotText: 'Not tonight' });
    const count = await open.count();
    expect(count).toBeGreaterThan(1);
    for (let left = count; left > 0; left -= 1) {
      await moveFirst(page);
      await expect(open).toHaveCount(left - 1);
    }
  });

  await test.step('two locks, one tap each', async () => {
    const together = page.getByRole('list', { name: 'Together now' }).getByRole('listitem');
    for (const at of [0, 1]) {
      await together.nth(at).getByRole('button', { name: 'Locked' }).click();
      await expect(together.nth(at)).toContainText('Seen tonight: locked');
    }
  });

  await test.step('the next evenings are missed, and the plan makes up for it', async () => {
    await to('/rotation/plan')(page);
    const visits = page.getByRole('list', { name: 'Visits' }).getByRole('listitem');
    await expect(visits.first()).toBeVisible({ timeout: 30_000 });
    const coming = await visits
      .filter({ hasText: /^(?!.*there now)/ })
      .first()
      .textContent();
    expect(coming).toBeTruthy();
    await evening(page, '2026-12-07');
    await to('/moves')(page);
    await expect(page.getByRole('region', { name: 'Missed' })).toContainText('did not');
    await page.getByRole('link', { name: 'See the new plan' }).click();
    const changed = page.getByRole('region', { name: 'What has changed' });
    await expect(changed).toContainText('Missed:', { timeout: 30_000 });
    await page.getByRole('button', { name: /Keep this plan/ }).click();
    await expect(changed).toBeHidden();
  });
});

async function openDemoAt(page: Page): Promise<void> {
  await page.getByRole('button', { name: /Look round the demo/ }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Tonight' })).toBeVisible();
}
