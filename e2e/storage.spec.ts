import { expect, test } from '@playwright/test';
import {
  backUp,
  beginWithThree,
  recordCount,
  typeWeight,
  walkTo,
  walkToSnake,
  written,
} from './keeper.ts';
import { serve, type Served } from './serve.ts';

let served: Served;
test.beforeAll(async () => {
  served = await serve();
});
test.afterAll(() => served.stop());

test('a window that refuses storage still works, and says that it keeps nothing', async ({
  browser,
}) => {
  for (const refusing of [
    // As some private windows do: at the first touch, or only when it is opened.
    `Object.defineProperty(self, 'indexedDB', { get() { throw new DOMException('Refused.', 'SecurityError'); } });`,
    `IDBFactory.prototype.open = () => { throw new DOMException('Refused.', 'InvalidStateError'); };`,
  ]) {
    const elsewhere = await serve({ beforeDesk: () => refusing });
    const context = await browser.newContext();
    const page = await context.newPage();
    await beginWithThree(page, elsewhere.url);
    await walkToSnake(page, 'Marrow');
    await page.getByRole('button', { name: /^Refused/ }).click();
    await written(page, 'Marrow refused').waitFor();
    // What it holds can still be carried out of the window.
    const backup = await backUp(page);
    await expect(page.getByRole('link', { name: /This window keeps nothing/ })).toBeVisible();
    await expect(page.getByText('This window keeps nothing:')).toBeVisible();
    expect(backup.records.filter(({ type }) => type === 'meal-offered')).toHaveLength(1);
    await context.close();
    await elsewhere.stop();
  }
});

/** Room for a rack, three snakes and some dozen records. */
const SMALL_DISK_BYTES = 24_000;

test('on a full device nothing is called written, and with space again it goes on', async ({
  browser,
}) => {
  // Without the service worker, whose copy of the app would need the room.
  const context = await browser.newContext({ serviceWorkers: 'block' });
  const page = await context.newPage();
  const devTools = await context.newCDPSession(page);
  const { origin } = served;
  // An empty database has a size too, and the browser asks for the quota before the first write.
  await page.goto(served.url);
  await expect(page.getByRole('button', { name: 'Begin my collection' })).toBeVisible();
  const { usage } = await devTools.send('Storage.getUsageAndQuota', { origin });
  const quotaSize = usage + SMALL_DISK_BYTES;
  await devTools.send('Storage.overrideQuotaForOrigin', { origin, quotaSize });

  await beginWithThree(page, served.url);
  const before = await recordCount(page);
  const routes = [await walkToSnake(page, 'Marrow'), await walkToSnake(page, 'Flint')];
  const names = ['Marrow', 'Flint'];
  const full = page.getByRole('alert').filter({ hasText: 'This device is full: this record' });
  const refused = page.getByRole('button', { name: /^Refused/ });
  let confirmed = 0;
  let name = '';
  // Twice: where the browser finds room again in between, one more is written, and said so.
  for (let timesFull = 0; timesFull < 2;) {
    name = names[confirmed % 2] ?? '';
    await walkTo(page, routes[confirmed % 2] ?? '');
    await expect(page.getByRole('heading', { level: 1, name })).toBeVisible();
    if (await full.isVisible()) await full.getByRole('button', { name: 'OK' }).click();
    await expect(full).toBeHidden();
    await refused.click();
    const done = written(page, `${name} refused`);
    await done.or(full).waitFor();
    if (await done.isVisible()) {
      confirmed += 1;
    } else {
      timesFull += 1;
      // What is not on disk is not called written, nor shown as if it were.
      await expect(full).toBeVisible();
      await expect(done).toBeHidden();
      expect(await recordCount(page)).toBe(before + confirmed);
    }
  }
  expect(confirmed).toBeGreaterThan(0);
  await walkTo(page, routes[confirmed % 2] ?? '');

  await devTools.send('Storage.overrideQuotaForOrigin', { origin });
  await refused.click();
  await written(page, `${name} refused`).waitFor();
  await expect(full).toBeHidden();
  await typeWeight(page, name === 'Marrow' ? '1520' : '910');
  await page.getByRole('button', { name: /^Write \d+ g$/ }).click();
  await written(page, `${name}: weighed`).waitFor();
  await page.reload();
  const { records } = await backUp(page);
  expect(records).toHaveLength(before + confirmed + 2);
});
