import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test, type Page } from '@playwright/test';
import { NOTING, startAgreed, type Shown, type Sleep } from './asleep.ts';
import { clockFromEvening } from './clock-from.ts';
import { beginWithThree, walkTo, walkToSnake, written } from './keeper.ts';
import type { RealBrowser } from './real-browser.ts';
import { builtApp, serve, type Served } from './serve.ts';

// A browser of its own on a slow machine takes its time.
test.setTimeout(180_000);

let served: Served;
let folder: string;
let running: RealBrowser | undefined;

test.beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'nightdrop-reminders-'));
  const app = join(folder, 'app');
  await cp(builtApp, app, { recursive: true });
  const script = join(app, 'sw.js');
  await writeFile(script, NOTING + (await readFile(script, 'utf8')));
  served = await serve({ folder: app, beforeDesk: clockFromEvening });
});
test.afterEach(async () => {
  await running?.kill();
  running = undefined;
  await served.stop();
  await rm(folder, { recursive: true, force: true });
});

async function start(): Promise<{ readonly browser: RealBrowser; readonly sleep: Sleep }> {
  const started = await startAgreed(join(folder, 'profile'), served);
  running = started.browser;
  await running.context.addInitScript({ content: clockFromEvening() });
  return started;
}

async function turnOn(page: Page): Promise<void> {
  await walkTo(page, '/shelf');
  await page.getByRole('link', { name: /^Reminders/ }).click();
  await expect(page.getByText(/a help, not a guard/)).toBeVisible();
  await page.evaluate(() => navigator.serviceWorker.ready);
  await page.getByRole('button', { name: 'Turn reminders on' }).click();
  await expect(page.getByRole('status').filter({ hasText: /^On\./ })).toBeVisible();
}

async function refuse(page: Page, name: string): Promise<void> {
  await walkToSnake(page, name);
  await page.getByRole('button', { name: /^Refused/ }).click();
  await written(page, `${name} refused`).waitFor();
}

/** What the screen itself counts for tonight: the oracle of what is said elsewhere. */
async function countedOnScreen(
  page: Page,
): Promise<{ readonly sum: number; readonly body: string }> {
  await walkTo(page, '/tonight');
  await expect(page.getByRole('heading', { level: 1, name: 'Tonight' })).toBeVisible();
  await expect(page.locator('.summary li').first()).toBeVisible();
  const lines = await page.locator('.summary li').allInnerTexts();
  const counts = lines.map((line) => line.trim().replaceAll(/\s+/g, ' '));
  return {
    sum: counts.reduce((sum, line) => sum + Number.parseInt(line, 10), 0),
    body: counts.toSorted().join(', '),
  };
}

/** The same of what is shown on the locked screen. */
const counted = ({ title, body }: Shown) => ({
  sum: Number(/^Tonight: (\d+) to do$/.exec(title)?.[1]),
  body: body.split(', ').toSorted().join(', '),
});

test('with no page open, the evening is worked out and said once', async () => {
  const { browser, sleep } = await start();
  const { context, page } = browser;
  await beginWithThree(page, served.url);
  const atFirst = await countedOnScreen(page);
  expect(atFirst.body).toContain('3 to feed');
  await turnOn(page);
  expect(await sleep.notifications()).toEqual([]);

  await page.close();
  expect(await sleep.openWindows()).toBe(0);
  await sleep.wake('some other tag');
  await sleep.wake();
  await expect.poll(async () => (await sleep.notifications()).map(counted)).toEqual([atFirst]);
  const first = `Tonight: ${atFirst.sum} to do`;
  expect(await sleep.asked()).toEqual({ icon: [atFirst.sum], said: [first] });

  // Nothing has changed: the number is put on again, and nothing is said.
  await sleep.wake();
  await expect.poll(async () => (await sleep.asked()).icon).toEqual([atFirst.sum, atFirst.sum]);
  expect((await sleep.asked()).said).toEqual([first]);

  // One meal later. The keeper is at it, and needs no telling.
  const again = await context.newPage();
  await again.goto(served.url);
  await refuse(again, 'Marrow');
  const lessToDo = atFirst.sum - 1;
  await expect.poll(async () => (await countedOnScreen(again)).sum).toBe(lessToDo);
  await sleep.wake();
  await expect.poll(async () => (await sleep.asked()).icon.at(-1)).toBe(lessToDo);
  expect((await sleep.notifications()).map(counted)).toEqual([atFirst]);

  // A page that is closed as soon as the record is confirmed: the saved picture knows nothing of it.
  await refuse(again, 'Sorrel');
  await again.close();
  await sleep.wake();
  const later = `Tonight: ${lessToDo - 1} to do`;
  await expect
    .poll(async () => (await sleep.notifications()).map(({ title }) => title))
    .toEqual([later]);
  expect((await sleep.asked()).said).toEqual([first, `${later}, quietly`]);

  // Turned off, what was said is taken back, and the platform wakes nobody.
  const last = await context.newPage();
  await last.goto(`${served.url}#/reminders`);
  await last.getByRole('button', { name: 'Turn reminders off' }).click();
  await expect(last.getByRole('status').filter({ hasText: /^Off\./ })).toBeVisible();
  await expect.poll(() => sleep.notifications()).toEqual([]);
  const tags = await last.evaluate(async () => {
    const registration = (await navigator.serviceWorker.ready) as ServiceWorkerRegistration & {
      periodicSync: { getTags(): Promise<string[]> };
    };
    return registration.periodicSync.getTags();
  });
  expect(tags).toEqual([]);
});

test('a tap on it leads to tonight, in the window that is open', async () => {
  const { browser, sleep } = await start();
  const { context, page } = browser;
  await beginWithThree(page, served.url);
  await turnOn(page);
  await page.close();
  await sleep.wake();
  await expect.poll(async () => (await sleep.notifications()).length).toBe(1);

  const open = await context.newPage();
  await open.goto(`${served.url}#/shelf`);
  await expect(open.getByRole('heading', { level: 1, name: 'Shelf' })).toBeVisible();
  // Only a finger may bring a window to the front; the rest of a tap can be had without one.
  await (
    await sleep.worker()
  ).evaluate(async () => {
    const scope = globalThis as unknown as ServiceWorkerRegistrationHolder & EventTarget;
    const [notification] = await scope.registration.getNotifications();
    const tap = new Event('notificationclick');
    Object.assign(tap, { notification, waitUntil: (work: Promise<void>) => work.catch(() => {}) });
    scope.dispatchEvent(tap);
    interface ServiceWorkerRegistrationHolder {
      readonly registration: ServiceWorkerRegistration;
    }
  });
  await expect(open.getByRole('heading', { level: 1, name: 'Tonight' })).toBeVisible();
  expect(await sleep.notifications()).toEqual([]);
});

test('the demo reminds nobody', async () => {
  const { browser, sleep } = await start();
  const { page } = browser;
  await page.goto(served.url);
  await page.getByRole('button', { name: /Look round the demo/ }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Tonight' })).toBeVisible();
  await walkTo(page, '/reminders');
  await expect(page.getByText(/The demo is invented: it reminds nobody/)).toBeVisible();
  await expect(page.getByRole('button', { name: /^(Turn|Save)/ })).toHaveCount(0);
  await page.evaluate(() => navigator.serviceWorker.ready);
  await page.close();
  await sleep.wake();
  await expect.poll(async () => (await sleep.asked()).icon).toEqual([0]);
  expect((await sleep.asked()).said).toEqual([]);
  expect(await sleep.notifications()).toEqual([]);
});

test('where the browser cannot wake the app, the screen says so and has the file', async ({
  page,
}) => {
  await page.addInitScript(() => {
    Reflect.deleteProperty(window, 'PeriodicSyncManager');
  });
  await beginWithThree(page, served.url);
  await walkTo(page, '/reminders');
  await expect(page.getByText(/This browser cannot wake the app while it is closed/)).toBeVisible();
  await expect(page.getByRole('button', { name: /^Turn reminders/ })).toHaveCount(0);
  await expect(page.getByRole('heading', { name: 'In your calendar' })).toBeVisible();
});

test('an evening that is broken keeps nothing from being served', async ({ page, context }) => {
  const script = join(folder, 'app', 'evening.js');
  const whole = await readFile(script, 'utf8');
  // Thrown where the engine is evaluated.
  const broken = whole.replaceAll(/(["'`])nightdrop-picture\1/g, 'nothing.of.the.kind');
  expect(broken).not.toBe(whole);
  await writeFile(script, broken);
  await page.goto(served.url);
  await page.evaluate(() => navigator.serviceWorker.ready);
  await expect
    .poll(() => page.evaluate(() => navigator.serviceWorker.controller?.state))
    .toBe('activated');
  await context.setOffline(true);
  await served.stop();
  await page.reload();
  await expect(page.getByRole('button', { name: 'Begin my collection' })).toBeVisible();
});
