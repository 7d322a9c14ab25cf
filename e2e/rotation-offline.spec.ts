import { expect, test } from '@playwright/test';
import { controlled } from './keeper.ts';
import { clockFrom } from './clock-from.ts';
import { to } from './screen-stop.ts';
import { serve } from './serve.ts';

// The solver is fetched at install with everything else: a first plan needs no network.

const now = '2026-11-24T22:00:00+01:00';

test.use({ timezoneId: 'Europe/Berlin' });

test('the first plan is made and proven with no network', async ({ page }) => {
  const served = await serve({ beforeDesk: () => clockFrom(now) });
  await page.addInitScript({ content: clockFrom(now) });
  await page.goto(served.url);
  await page.getByRole('button', { name: /Look round the demo/ }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Tonight' })).toBeVisible();
  await controlled(page);
  await served.stop();
  await to('/rotation/plan')(page);
  await expect(page.getByText(/^Proven:/)).toBeVisible({ timeout: 30_000 });
  await expect(page.getByRole('list', { name: 'Visits' })).toContainText('In on Tue 24 Nov');
});
