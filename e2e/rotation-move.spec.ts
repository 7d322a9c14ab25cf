import { expect, test, type Locator, type Page } from '@playwright/test';
import { passesAxe } from './access-check.ts';
import { showToCamera, useCanvasCamera } from './camera/canvas-camera.ts';
import { cameraFrame } from './camera/frames.ts';
import { qrPrint } from './camera/print.ts';
import { clockFrom } from './clock-from.ts';
import { heading, to } from './screen-stop.ts';
import { serve, type Served } from './serve.ts';

// A visit of the plan is dragged by a finger, and a male is moved by the labels of two tubs.

test.use({
  timezoneId: 'Europe/Berlin',
  serviceWorkers: 'block',
  hasTouch: true,
  viewport: { width: 390, height: 844 },
});

const now = '2026-11-24T22:00:00+01:00';
let served: Served;
test.beforeAll(async () => {
  served = await serve({ beforeDesk: () => clockFrom(now) });
});
test.afterAll(() => served.stop());

test.beforeEach(async ({ page }) => {
  await page.addInitScript({ content: clockFrom(now) });
  await useCanvasCamera(page);
  await page.goto(served.url);
  await page.getByRole('button', { name: /Look round the demo/ }).click();
  await heading(page, 'Tonight');
  await openPlan(page);
});

const openPlan = async (page: Page): Promise<void> => {
  await to('/rotation/plan')(page);
  await expect(page.getByText(/^Proven:/)).toBeVisible({ timeout: 30_000 });
};

const coming = (page: Page): Locator =>
  page
    .getByRole('list', { name: 'Visits' })
    .getByRole('listitem')
    .filter({ has: page.getByRole('button', { name: /^Move / }) });

/** The middle of a thing on the screen. */
async function middle(of: Locator): Promise<readonly [x: number, y: number]> {
  const box = await of.boundingBox();
  if (!box) throw new Error('It is not on the screen.');
  return [box.x + box.width / 2, box.y + box.height / 2];
}

/** Takes a visit by its handle; the tiles are there from then on, until `page.mouse.up()`. */
async function take(page: Page, handle: Locator): Promise<void> {
  await handle.scrollIntoViewIfNeeded();
  const [x, y] = await middle(handle);
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 12, y, { steps: 3 });
  await expect(page.getByRole('group', { name: 'Another evening' })).toBeVisible();
}

test('a visit dragged to another evening is pinned there, and undone', async ({ page }) => {
  const visit = coming(page).first();
  const [, before = ''] = /In on (.*?), out on/.exec((await visit.textContent()) ?? '') ?? [];
  await take(page, visit.getByRole('button', { name: /^Move / }));
  const free = page.locator('[data-drop]').and(page.getByLabel(/nothing stands against it/));
  const other = free.filter({ hasNotText: before }).first();
  const evening = (await other.textContent()) ?? '';
  await page.mouse.move(...(await middle(other)), { steps: 4 });
  await expect(page.locator('.drop-tray').getByRole('status')).toContainText(
    /nothing stands against it/,
  );
  await page.mouse.up();
  const pinned = page.getByRole('listitem').filter({ hasText: 'pinned' });
  await expect(pinned.first()).toContainText(`In on ${evening}`, { timeout: 30_000 });
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(pinned).toHaveCount(0, { timeout: 30_000 });
});

test('over an evening that a limit forbids the limit is read at once, and nothing is written', async ({
  page,
}) => {
  await take(
    page,
    coming(page)
      .first()
      .getByRole('button', { name: /^Move / }),
  );
  const stopped = page.locator('.drop-stopped').first();
  await page.mouse.move(...(await middle(stopped)), { steps: 4 });
  const tray = page.locator('.drop-tray').getByRole('status');
  await expect(tray).toContainText(
    /Free from|Nobody is there|is pinned|rests|breaks a limit|pause/,
  );
  await page.mouse.up();
  await expect(page.getByText(/^Not moved\./)).toBeVisible();
  await expect(page.getByRole('listitem').filter({ hasText: 'pinned' })).toHaveCount(0);
});

test('let go beside the tiles, or tapped, it moves nobody; the tap opens the same tiles', async ({
  page,
}) => {
  const handle = coming(page)
    .first()
    .getByRole('button', { name: /^Move / });
  await take(page, handle);
  await page.mouse.up();
  await expect(page.locator('.drop-tray')).toHaveCount(0);
  await handle.tap();
  const sheet = page.getByRole('dialog', { name: /^Move / });
  await passesAxe(page);
  const overflow = await page.evaluate(() => {
    document.documentElement.style.fontSize = '200%';
    return document.documentElement.scrollWidth - innerWidth;
  });
  expect(overflow).toBeLessThanOrEqual(0);
  await sheet
    .getByRole('button', { name: /nothing stands against it/ })
    .last()
    .tap();
  await expect(sheet).toBeHidden();
  await expect(page.getByRole('listitem').filter({ hasText: 'pinned' }).first()).toBeVisible({
    timeout: 30_000,
  });
});

test('the camera sees his tub’s label and then hers, and the visit is written down', async ({
  page,
}) => {
  await page.getByRole('button', { name: /Keep this plan/ }).click();
  await to('/labels')(page);
  await expect(page.locator('.labels-code').nth(2)).toBeAttached();
  const codes = new Map(
    await page.locator('li:has(.labels-code)').evaluateAll((items) =>
      items.map((item): [string, string] => {
        const text = (of: string) => item.querySelector(of)?.textContent?.replaceAll(' ', '') ?? '';
        return [text('strong'), text('.labels-code')];
      }),
    ),
  );
  await to('/tonight')(page);
  await page.getByRole('link', { name: /moves? tonight/ }).click();
  const line = page
    .getByRole('list', { name: 'Moves' })
    .getByRole('listitem')
    .filter({ hasText: ' in with ', hasNotText: 'Not tonight' })
    .first();
  const words = (await line.locator('p').nth(1).textContent()) ?? '';
  const [from = '', into = ''] = await line.locator('.plate').allTextContents();
  await page.getByRole('button', { name: 'Scan' }).click();
  const show = (position: string) =>
    showToCamera(page, cameraFrame(qrPrint(codes.get(position) ?? ''), { scale: 6, tilt: 8 }));
  await show(from);
  await expect(page.getByText(/is in hand\. Now the tub/)).toBeVisible();
  await show(into);
  await expect(page.getByText(/is in hand\. Now the tub/)).toBeHidden();
  await expect(page.getByRole('list', { name: 'Together now' })).toContainText(
    words.replace(' in with ', ' with '),
  );
});
