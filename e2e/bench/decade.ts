import { fileURLToPath } from 'node:url';
import type { Page } from '@playwright/test';
import { simulateDecade } from '../../demo-data/large.ts';
import { DAY_MS } from '../../src/domain/core/calendar.ts';
import type { RackEvent } from '../../src/domain/events/event.ts';
import type { RealBrowser } from '../real-browser.ts';
import { atMost, median, print, rounded, type Tell } from './figure.ts';
import { ANIMALS, closeInGoodOrder, furnishLargeRoom, type LargeRoom } from './large-room.ts';
import { fillShelf, PHOTO_BYTES, photoRecords, PHOTOS } from './many-photos.ts';
import { peakAboveRest } from './memory.ts';

// Ten years of 300 snakes, about half a million records and 3,000 pictures, in a real browser.

const YEARS = 10;
/** With the eggs and the pictures about 500,000. */
const RECORDS = 495_500;
const AGAIN = 5;
const PATIENCE_MS = 300_000;

/** About five minutes. */
export async function decadeFigures(tell: Tell): Promise<void> {
  let records: readonly RackEvent[] = [];
  const room = await furnishLargeRoom((lastNight, offsetMin) => {
    const scenario = { seed: 7, lastNight, offsetMin, animals: ANIMALS, years: YEARS };
    const snakes = simulateDecade(RECORDS, scenario);
    const animals = snakes.flatMap((event) => (event.type === 'arrived' ? [event.animal] : []));
    const toMs = Date.parse(lastNight);
    const years = { fromMs: toMs - YEARS * 365 * DAY_MS, toMs, offsetMin };
    records = [...snakes, ...photoRecords(animals, years)];
    return records;
  });
  try {
    tell({ name: 'decade: records', value: records.length, unit: 'records' });
    const ms = (name: string, value: number, budget?: number): void =>
      tell({
        name: `decade: ${name}`,
        value,
        unit: 'ms',
        ...(budget === undefined ? {} : atMost(budget, value)),
      });
    ms('restore, until the preview', rounded(room.restoreMs.look));
    ms('restore, until all is on disk', rounded(room.restoreMs.take));

    const settled = await withApp(room, async ({ page }) => {
      await fillShelf(
        page,
        records.flatMap((event) => (event.type === 'photo-kept' ? [event.photo] : [])),
      );
      // Long enough for the old records to be read and the picture to be saved behind the screen.
      await page.waitForTimeout(30_000);
      return reviewTimes(page);
    });
    const [first = NaN, ...again] = settled;
    ms('season review, from the tap to its figures, the first time', rounded(first), 2_000);
    ms('season review, the same again, median', rounded(median(again)), 2_000);
    const [atOnce = NaN] = await withApp(room, ({ page }) => reviewTimes(page, 0));
    ms('season review, tapped as soon as the app has started', rounded(atOnce));

    ms('backup of the log, until it is handed over', rounded(await withApp(room, logBackup)));
    for (const [how, prepare] of ways) {
      const made = await withApp(room, (browser) => photoBackup(browser, prepare));
      const name = `backup with ${PHOTOS} pictures, ${how}`;
      ms(name, rounded(made.ms));
      tell({ name: `decade: ${name}, size`, value: rounded(made.bytes / 1e6, 1), unit: 'MB' });
      const all = rounded(made.above.allMb);
      tell({
        name: `decade: ${name}, most memory above rest, all processes of the browser (PSS)`,
        value: all,
        unit: 'MB',
        ...atMost(300, all),
      });
      tell({
        name: `decade: ${name}, most memory above rest, renderers (PSS)`,
        value: rounded(made.above.renderersMb),
        unit: 'MB',
      });
      tell({
        name: `decade: ${name}, at rest, all processes of the browser (PSS)`,
        value: rounded(made.rest.allMb),
        unit: 'MB',
      });
    }
  } finally {
    await room.close();
  }
}

async function withApp<Answer>(
  room: LargeRoom,
  work: (browser: RealBrowser) => Promise<Answer>,
): Promise<Answer> {
  const browser = await room.start();
  try {
    await browser.page.goto(`${room.url}#/shelf`);
    await browser.page.locator('a[href="#/review"]').waitFor({ timeout: PATIENCE_MS });
    const answer = await work(browser);
    await closeInGoodOrder(browser);
    return answer;
  } catch (error) {
    await browser.kill();
    throw error;
  }
}

/** Milliseconds from the tap on its link to the figures being painted, in the page's own time. */
const reviewTimes = (page: Page, again = AGAIN): Promise<readonly number[]> =>
  page.evaluate(async (more) => {
    const shown = <Found>(find: () => Found | null | undefined) =>
      new Promise<Found>((resolve) => {
        const look = () => {
          const found = find();
          if (!found) return;
          watching.disconnect();
          resolve(found);
        };
        const watching = new MutationObserver(look);
        watching.observe(document, { childList: true, subtree: true });
        look();
      });
    const painted = () =>
      new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve)));
    const times: number[] = [];
    for (let n = 0; n <= more; n += 1) {
      location.hash = '/shelf';
      const link = await shown(() => document.querySelector<HTMLElement>('a[href="#/review"]'));
      const from = performance.now();
      link.click();
      await shown(() => document.querySelector('.review-row'));
      await painted();
      times.push(performance.now() - from);
    }
    return times;
  }, again);

async function logBackup({ page }: RealBrowser): Promise<number> {
  await toBackup(page);
  const from = performance.now();
  await page.getByRole('button', { name: 'Back up now' }).click();
  await page.getByText('Last backup: today.').waitFor({ timeout: PATIENCE_MS });
  return performance.now() - from;
}

async function toBackup(page: Page): Promise<void> {
  await page.evaluate(() => {
    location.hash = '/safe';
  });
  await page.getByRole('button', { name: 'Back up with pictures' }).waitFor();
  // Until the start is over, and with it what memory it takes.
  await page.waitForTimeout(30_000);
}

type Prepare = (page: Page) => Promise<void>;

/** In the page: how large the file is that was made. */
type Sized = typeof globalThis & { madeBytes?: () => Promise<number> };

const ways: readonly (readonly [how: string, Prepare])[] = [
  [
    'as on a phone',
    (page) =>
      page.evaluate(() => {
        delete (window as { showSaveFilePicker?: unknown }).showSaveFilePicker;
        const hand = URL.createObjectURL.bind(URL);
        URL.createObjectURL = (file: Blob) => {
          (globalThis as Sized).madeBytes = () => Promise.resolve(file.size);
          return hand(file);
        };
      }),
  ],
  [
    'into a file of the keeper’s',
    (page) =>
      // The window that asks belongs to the system; this file is a real one, in the site's own folder.
      page.evaluate(() => {
        const choose = async ({ suggestedName }: { readonly suggestedName: string }) => {
          const folder = await navigator.storage.getDirectory();
          const file = await folder.getFileHandle(suggestedName, { create: true });
          (globalThis as Sized).madeBytes = async () => (await file.getFile()).size;
          return file;
        };
        Object.assign(window, { showSaveFilePicker: choose });
      }),
  ],
];

async function photoBackup(browser: RealBrowser, prepare: Prepare) {
  const { page } = browser;
  await toBackup(page);
  await prepare(page);
  let ms = 0;
  const memory = await peakAboveRest(
    () => browser.processes(),
    async () => {
      const from = performance.now();
      await page.getByRole('button', { name: 'Back up with pictures' }).click();
      const said = page
        .getByRole('status')
        .filter({ hasText: `with ${PHOTOS.toLocaleString('en')} pictures` });
      await said.waitFor({ timeout: PATIENCE_MS });
      ms = performance.now() - from;
      // Whatever is handed over is written down by the browser after that.
      await page.waitForTimeout(3_000);
    },
  );
  const bytes = await page.evaluate(() => (globalThis as Sized).madeBytes?.() ?? NaN);
  if (!(bytes > PHOTOS * PHOTO_BYTES)) throw new Error(`The backup has only ${bytes} bytes.`);
  return { ms, bytes, ...memory };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await decadeFigures(print);
