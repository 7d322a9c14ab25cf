import { expect, test, type Page } from '@playwright/test';
import { fitsWidth, passesAxe } from './access-check.ts';
import { familyBackup } from './family-backup.ts';
import { pickBackup, walkTo, written } from './keeper.ts';
import { inEveryLight } from './room-light.ts';
import { serve, type Served } from './serve.ts';

let served: Served;
test.beforeAll(async () => {
  served = await serve();
});
test.afterAll(() => served.stop());

test.use({ contextOptions: { reducedMotion: 'reduce' } });

test.beforeEach(async ({ page }) => {
  await page.goto(served.url);
  await page.getByRole('button', { name: 'Take in a backup' }).click();
  await pickBackup(page, await familyBackup());
  await page.getByRole('button', { name: /^Add \d+ records$/ }).click();
  await written(page, /^\d+ records taken in$/).waitFor();
});

async function openLineage(page: Page, name: string): Promise<void> {
  await walkTo(page, '/find');
  await page.getByLabel('Name, position, gene or label code').fill(name);
  await page.getByRole('link', { name: new RegExp(`^${name}`) }).click();
  await page.getByRole('link', { name: 'Lineage: parents, siblings, young' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Lineage' })).toBeVisible();
  await expect(ancestors(page)).toBeVisible();
}
const ancestors = (page: Page) => page.getByRole('list', { name: /^Ancestors of/ });

async function rank(page: Page, goal: string): Promise<void> {
  await walkTo(page, '/choose');
  await page.getByLabel('What do you want?').fill(goal);
  await page.getByRole('button', { name: 'Rank the pairs' }).click();
}

// By hand: half siblings by Great Alder have young of F 1/8.
test('a snake shows its ancestors, who is on both sides, and its inbreeding with the depth', async ({
  page,
}) => {
  await openLineage(page, 'Rowan');
  await expect(page.getByText('F 1/8 (12.5 %)')).toBeVisible();
  await expect(page.getByText('Parents known for 2 generations.')).toBeVisible();
  await expect(page.getByText('On both sides: Great Alder.')).toBeVisible();
  await expect(ancestors(page).getByText('again, see above')).toHaveCount(1);
});

test('by keyboard alone, from a snake to its dam’s lineage and back', async ({ page }) => {
  await openLineage(page, 'Rowan');
  const dam = ancestors(page).getByRole('link', { name: /Juniper/ });
  await dam.focus();
  await page.keyboard.press('Shift+Tab');
  await page.keyboard.press('Tab');
  await expect(dam).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('list', { name: /^Ancestors of Juniper/ })).toBeVisible();
  await page.getByText('1 with Hazel').click();
  await expect(page.getByRole('link', { name: /^Rowan/ })).toBeVisible();
  await page.getByRole('button', { name: 'Back' }).click();
  await expect(page.getByRole('list', { name: /^Ancestors of Rowan/ })).toBeVisible();
});

test('who sees no cords reads the same in a table, with how sure each ancestor is', async ({
  page,
}) => {
  await openLineage(page, 'Willow');
  await page.getByText('The same as a table').click();
  const rows = page.getByRole('row');
  await expect(rows.filter({ hasText: 'Larch' })).toContainText('50 %, 1 of 2 possible fathers');
  await expect(rows.filter({ hasText: 'Maple' })).toContainText('as stated');
  await expect(
    page.getByText('The father of Spindle of the high shelf is Hazel or Larch.'),
  ).toBeVisible();
});

test('parents that go round in a ring are named, with a way to the record', async ({ page }) => {
  await openLineage(page, 'Yew');
  const note = page.getByText(/would be its own ancestor: .*Yew is from Great Elder/);
  await note.getByRole('link', { name: 'Great Elder' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Great Elder' })).toBeVisible();
  await expect(page.getByRole('heading', { name: 'History' })).toBeVisible();
});

test('pairs are ranked for a goal as written, with kin, and a caution asks for a reason it keeps', async ({
  page,
}) => {
  await rank(page, 'visual clown pied');
  await expect(page.getByText(/^\d+ females? and \d+ males? looked at/)).toBeVisible();
  await rank(page, 'spider champagne');
  const card = page.getByRole('listitem').filter({ hasText: 'Great Elder' }).first();
  await expect(card.getByText(/^grave:/)).toBeVisible();
  await card.getByText('Pair them for a reason').click();
  await page.getByLabel('Why these two, in spite of it?').fill('to see that it is kept');
  await page.getByRole('button', { name: 'Keep this reason' }).click();
  await written(page, /^Reason kept for/).waitFor();
  await expect(page.getByText('Your reason: to see that it is kept')).toBeVisible();
  await page.reload();
  await expect(page.getByText('Your reason: to see that it is kept')).toBeVisible();
});

test('a het to be proven, and what is not understood', async ({ page }) => {
  await rank(page, 'prove the 66 % het of Maple');
  await expect(
    page.getByRole('heading', { name: /^Prove that Maple carries Clown/ }),
  ).toBeVisible();
  await expect(page.getByText(/if Maple carries it: 1 clutch/).first()).toBeVisible();
  await rank(page, 'visual clownn');
  await expect(page.getByText(/“clownn” is not known/)).toBeVisible();
});

test('lineage and choice pass axe in every light and fit a narrow phone', async ({
  page,
}, info) => {
  await page.setViewportSize({ width: 360, height: 640 });
  const look = async (name: string) => {
    await fitsWidth(page);
    await inEveryLight(page, async (light) => {
      await page.screenshot({ path: info.outputPath(`${light}-${name}.png`), fullPage: true });
      await passesAxe(page);
    });
  };
  await openLineage(page, 'Willow');
  await page.getByText('The same as a table').click();
  await look('lineage');
  await rank(page, 'clown');
  await expect(page.getByText('looked at')).toBeVisible();
  await page.getByText('The odds').first().click();
  await look('choose');
});

// Source: WCAG 2.2, success criterion 1.4.4 (resize text).
test('at twice the text size four generations and the pairs still fit a narrow phone', async ({
  page,
}) => {
  await page.setViewportSize({ width: 360, height: 640 });
  await page.evaluate(() => {
    document.documentElement.style.fontSize = '200%';
  });
  const overflow = () =>
    page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
  await openLineage(page, 'Willow');
  expect(await overflow()).toBeLessThanOrEqual(0);
  await rank(page, 'clown');
  await expect(page.getByText('looked at')).toBeVisible();
  expect(await overflow()).toBeLessThanOrEqual(0);
});
