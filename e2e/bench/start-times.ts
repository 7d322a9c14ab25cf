import type { Page } from '@playwright/test';
import { median, rounded } from './figure.ts';
import { closeInGoodOrder, type LargeRoom } from './large-room.ts';
import { slowDown, type Slowed } from './slow-down.ts';

/** What is done to a browser before the app is opened in it. */
interface Start {
  /** Without the saved picture the whole log is read first. */
  readonly withoutPicture?: boolean;
  /** What shall run how many times slower. */
  readonly slower?: { readonly whom: Slowed; readonly times: number };
  readonly runs: number;
}

/** Told by the page itself, in milliseconds since its navigation began. */
declare global {
  interface Window {
    listReadable?: number;
  }
}

/** Notes when the first line of tonight's list stands in the page and has been painted. */
const watchForList = (page: Page): Promise<unknown> =>
  page.addInitScript(() => {
    const look = () => {
      if (window.listReadable !== undefined || !document.querySelector('.stop')) return;
      requestAnimationFrame(() => {
        window.listReadable ??= performance.now();
      });
    };
    new MutationObserver(look).observe(document, { childList: true, subtree: true });
  });

/** Milliseconds from opening the app to a readable list, each in a browser process of its own. */
export async function timeStarts(room: LargeRoom, start: Start): Promise<readonly number[]> {
  const times: number[] = [];
  for (let run = 0; run < start.runs; run += 1) {
    const browser = await room.start();
    const { page } = browser;
    try {
      if (start.withoutPicture) await forgetPicture(page, room);
      await watchForList(page);
      const { whom = 'page', times: factor = 1 } = start.slower ?? {};
      const release = await slowDown(page, room.profile, whom, factor);
      // A phone's browser has settled long before a thumb opens the app.
      await page.waitForTimeout(1_500);
      await page.goto(`${room.url}#/tonight`, { waitUntil: 'commit' });
      const ready = await page.waitForFunction(() => window.listReadable, null, {
        timeout: 60_000,
      });
      times.push(Number(await ready.jsonValue()));
      await release();
    } finally {
      await browser.kill();
    }
  }
  return times;
}

export const medianMs = (times: readonly number[]): number => rounded(median(times));

/** A page of the same origin that runs nothing of the app. */
const quietPage = (room: LargeRoom): string => `${room.url}icon.svg`;

async function forgetPicture(page: Page, room: LargeRoom): Promise<void> {
  await page.goto(quietPage(room));
  await page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const request = indexedDB.deleteDatabase('nightdrop-picture');
        request.addEventListener('success', () => resolve());
        request.addEventListener('error', () => reject(new Error('The picture was not deleted.')));
      }),
  );
  await page.goto('about:blank');
}

/** How many records are in the saved picture; 0 where there is none. */
const positionOfPicture = (page: Page): Promise<number> =>
  page.evaluate(
    () =>
      new Promise<number>((resolve, reject) => {
        const opening = indexedDB.open('nightdrop-picture');
        opening.addEventListener('error', () => reject(new Error('The picture did not open.')));
        opening.addEventListener('success', () => {
          const database = opening.result;
          if (!database.objectStoreNames.contains('picture')) {
            database.close();
            resolve(0);
            return;
          }
          const saved = database.transaction('picture').objectStore('picture').get('saved');
          saved.addEventListener('success', () => {
            database.close();
            resolve((saved.result as { position?: number } | undefined)?.position ?? 0);
          });
        });
      }),
  );

/**
 * Opens the app and leaves it open, until another browser finds a picture of the whole log: a browser
 * keeps what was written the fast way in memory for a while.
 */
export async function savePicture(room: LargeRoom, events: number): Promise<void> {
  for (let tries = 0; tries < 4; tries += 1) {
    const app = await room.start();
    await app.page.goto(room.url);
    await app.page.locator('.stop').first().waitFor({ timeout: 60_000 });
    await app.page.waitForTimeout(12_000);
    await closeInGoodOrder(app);
    const other = await room.start();
    await other.page.goto(quietPage(room));
    const position = await positionOfPicture(other.page);
    await other.kill();
    if (position === events) return;
  }
  throw new Error('No picture of the whole log was saved.');
}
