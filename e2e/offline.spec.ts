import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test, type BrowserContext, type Page } from '@playwright/test';
import { build } from 'vite';
import { showToCamera, useCanvasCamera } from './camera/canvas-camera.ts';
import { cameraFrame } from './camera/frames.ts';
import { qrPrint } from './camera/print.ts';
import {
  backUp,
  beginWithThree,
  controlled,
  pickBackup,
  typeWeight,
  walkTo,
  walkToSnake,
  written,
} from './keeper.ts';
import { serve, type Served } from './serve.ts';

let served: Served | undefined;
test.afterEach(() => served?.stop());

/** Everything the pages of a session asked for, and all they did against their own policy. */
interface Watched {
  readonly requests: string[];
  readonly complaints: string[];
}

async function watch(context: BrowserContext): Promise<Watched> {
  const watched: Watched = { requests: [], complaints: [] };
  context.on('request', (request) => watched.requests.push(request.url()));
  context.on('console', (message) => {
    if (/Content.Security.Policy|Refused to/i.test(message.text())) {
      watched.complaints.push(message.text());
    }
  });
  await context.exposeFunction('complain', (words: string) => watched.complaints.push(words));
  await context.addInitScript(() => {
    addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI }) => {
      void (globalThis as unknown as { complain(words: string): Promise<void> }).complain(
        `${violatedDirective}: ${blockedURI}`,
      );
    });
  });
  return watched;
}

/** What left the origin. A blob or data address never leaves the page. */
const strangers = ({ requests }: Watched, { origin }: Served) =>
  requests.filter((url) => !url.startsWith(`${origin}/`) && !/^(blob|data):/.test(url));

/** Which build a page runs: the name of its script holds a hash of all it needs. */
const running = (page: Page) =>
  page.evaluate(() => document.querySelector<HTMLScriptElement>('script[type=module]')?.src);

const heading = (page: Page, name: string | RegExp) =>
  expect(page.getByRole('heading', { level: 1, name })).toBeVisible();

for (const under of ['/', '/some/folder/']) {
  test(`served at ${under}, all of it works without a network from the first visit`, async ({
    page,
    context,
  }) => {
    served = await serve({ under });
    const watched = await watch(context);
    await useCanvasCamera(page);
    await beginWithThree(page, served.url);
    await controlled(page);
    const { records } = await backUp(page);
    const code = String(records.find(({ type }) => type === 'tub-made')?.['code']);

    await context.setOffline(true);
    await served.stop();
    await page.reload();
    await heading(page, 'Backup and restore');

    // A label's link, as the phone's own camera opens it.
    const tab = await context.newPage();
    await tab.goto(`${served.url}#/${code}`);
    await heading(tab, 'Marrow');
    await tab.getByRole('button', { name: /^Refused/ }).click();
    await written(tab, 'Marrow refused').waitFor();
    await tab.close();

    // Never opened before, and loaded only now.
    await walkTo(page, '/round');
    await showToCamera(page, cameraFrame(qrPrint(`${served.url}#/${code}`), { scale: 4 }));
    await heading(page, 'Marrow');
    await expect(page.getByRole('list', { name: 'Last records' })).toContainText('refused');
    await typeWeight(page, '1520');
    await page.getByRole('button', { name: 'Write 1520 g' }).click();
    await written(page, 'Marrow: weighed 1,520 g').waitFor();
    await page.getByRole('link', { name: 'Marrow' }).click();
    await heading(page, 'Marrow');
    const curve = page.getByRole('img', { name: /1,500\sg on .+ to 1,520\sg on .+, 2 weights/ });
    await expect(curve.locator('canvas')).toBeVisible();
    await walkTo(page, '/labels');
    await heading(page, 'Print labels');
    await walkTo(page, '/add');
    await heading(page, 'Add snakes');
    await walkTo(page, '/new-rack');
    await heading(page, 'New rack');
    await walkTo(page, '/racks');
    await page.getByRole('link', { name: /B/ }).first().click();
    await heading(page, 'Rack B');
    await walkTo(page, '/shelf');
    await heading(page, 'Shelf');
    // The reader of backups comes with the first one that is looked into.
    const backup = await backUp(page);
    expect(backup.records).toHaveLength(records.length + 2);
    await pickBackup(page, backup.text);
    await expect(page.getByText('0 new')).toBeVisible();

    expect(strangers(watched, served)).toEqual([]);
    expect(watched.requests.length).toBeGreaterThan(20);
    expect(watched.complaints).toEqual([]);
  });
}

test.describe('a new version', () => {
  let second: string;
  test.beforeAll(async () => {
    second = await mkdtemp(join(tmpdir(), 'nightdrop-second-'));
    // The same sources under another name: enough for new files, and for a worker that differs.
    await build({
      configFile: 'vite.config.ts',
      logLevel: 'silent',
      define: { BUILD: JSON.stringify('second') },
      build: { outDir: second, emptyOutDir: true },
    });
  });
  test.afterAll(() => rm(second, { recursive: true, force: true }));

  test('waits for the keeper’s word, and a half-typed weight outlives the change', async ({
    page,
    context,
  }) => {
    served = await serve();
    const watched = await watch(context);
    await beginWithThree(page, served.url);
    await controlled(page);
    const before = await running(page);
    const route = await walkToSnake(page, 'Marrow');
    await typeWeight(page, '15');

    served.give(second);
    await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
    const banner = page.getByRole('status').filter({ hasText: 'A new version is here' });
    await expect(banner).toBeVisible();

    // Another visit, and still the old one: nothing changes under the keeper's hands.
    const tab = await context.newPage();
    await tab.goto(served.url);
    await heading(tab, 'Tonight');
    await page.reload();
    await expect(banner).toBeVisible();
    expect(await running(page)).toBe(before);

    await walkTo(page, '/tonight');
    await Promise.all([
      page.waitForEvent('load'),
      page.getByRole('button', { name: 'Change to it' }).click(),
    ]);
    await heading(page, 'Tonight');
    expect(await running(page)).not.toBe(before);
    // Every tab changes at once: two versions never write side by side.
    await expect.poll(() => running(tab)).not.toBe(before);
    await walkTo(page, route);
    await page.getByRole('button', { name: 'Weight' }).click();
    await expect(page.getByRole('button', { name: 'Write 15 g' })).toBeVisible();
    await expect(banner).toBeHidden();

    // The new one is now the one that needs no network.
    const after = await running(page);
    await context.setOffline(true);
    await served.stop();
    await page.reload();
    await heading(page, 'Marrow');
    expect(await running(page)).toBe(after);
    expect(strangers(watched, served)).toEqual([]);
    expect(watched.complaints).toEqual([]);
  });
});
