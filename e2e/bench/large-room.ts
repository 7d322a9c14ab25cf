import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { simulateLarge } from '../../demo-data/large.ts';
import { momentOf, roomNight, type Day } from '../../src/domain/core/calendar.ts';
import type { RackEvent } from '../../src/domain/events/event.ts';
import { startRealBrowser, type RealBrowser } from '../real-browser.ts';
import { serve, type Served } from '../serve.ts';
import { backupText } from '../backup-text.ts';

export const EVENTS = 100_000;
export const ANIMALS = 300;

/** For the disk of a busy machine. */
const PATIENCE_MS = 300_000;

/** A browser profile in which the built app holds the records of 300 snakes. */
export interface LargeRoom {
  readonly url: string;
  readonly profile: string;
  readonly served: Served;
  /** Milliseconds from the file being picked to its preview, and from the word to all being on disk. */
  readonly restoreMs: { readonly look: number; readonly take: number };
  /** A browser process of its own on that profile. */
  start(): Promise<RealBrowser>;
  close(): Promise<void>;
}

/** Takes the records in through the app's own screen, as a keeper with a new phone does. */
export async function furnishLargeRoom(records = largeRecords): Promise<LargeRoom> {
  const folder = await mkdtemp(join(tmpdir(), 'nightdrop-bench-'));
  const served = await serve();
  const profile = join(folder, 'profile');
  const start = async () => {
    const browser = await startRealBrowser(profile);
    // What runs this file names functions through a helper that pages do not have.
    await browser.context.addInitScript('globalThis.__name = (named) => named;');
    return browser;
  };
  const file = join(folder, 'large.nightdrop.jsonl');
  await writeFile(file, await backupOf(records));
  const close = async () => {
    await served.stop();
    await rm(folder, { recursive: true, force: true });
  };
  const browser = await start();
  try {
    const restoreMs = await takeIn(browser.page, served.url, file);
    await closeInGoodOrder(browser);
    return { url: served.url, profile, served, restoreMs, start, close };
  } catch (error) {
    await browser.kill();
    await close();
    throw error;
  }
}

async function takeIn(page: Page, url: string, file: string): Promise<LargeRoom['restoreMs']> {
  await page.goto(url);
  await page.getByRole('button', { name: 'Take in a backup' }).click();
  await page.getByLabel('Backup file').waitFor();
  const from = performance.now();
  await pickFile(page, file);
  const add = page.getByRole('button', { name: /^Add [\d,]+ records$/ });
  await add.waitFor({ timeout: PATIENCE_MS });
  const looked = performance.now();
  await add.click();
  await page.getByText(/records taken in$/).waitFor({ timeout: PATIENCE_MS });
  const taken = performance.now();
  await page.evaluate(async () => void (await navigator.serviceWorker.ready));
  return { look: looked - from, take: taken - looked };
}

/** The driver would carry the file over in pieces, which takes longer than what is measured. */
async function pickFile(page: Page, file: string): Promise<void> {
  const session = await page.context().newCDPSession(page);
  const { root } = await session.send('DOM.getDocument');
  const input = { nodeId: root.nodeId, selector: 'input[type=file]' };
  const { nodeId } = await session.send('DOM.querySelector', input);
  await session.send('DOM.setFileInputFiles', { files: [file], nodeId });
  await session.detach();
}

/** Lets the browser write down what it keeps in memory for a while, as the saved picture. */
export async function closeInGoodOrder(browser: RealBrowser): Promise<void> {
  const session = await browser.context.browser()?.newBrowserCDPSession();
  const closed = new Promise((resolve) => browser.page.once('close', resolve));
  await session?.send('Browser.close');
  await closed;
  await browser.kill();
}

type Records = (lastNight: Day, offsetMin: number) => readonly RackEvent[];

const largeRecords: Records = (lastNight, offsetMin) =>
  simulateLarge(EVENTS, ANIMALS, 7, lastNight, offsetMin);

async function backupOf(records: Records): Promise<string> {
  const now = new Date();
  const clock = { ms: now.getTime(), offsetMin: -now.getTimezoneOffset() };
  const made = momentOf(clock);
  return backupText({
    collection: 'made-for-measuring',
    made,
    records: records(roomNight(made, 12), clock.offsetMin),
  });
}

/** Tonight's list stands, and the old records are read and the picture saved behind it. */
export async function openTonight(page: Page, { url }: LargeRoom): Promise<void> {
  await page.goto(`${url}#/tonight`);
  await page.locator('.stop').first().waitFor({ timeout: 60_000 });
  await page.waitForTimeout(8_000);
}
