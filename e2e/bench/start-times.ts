import type { Page } from '@playwright/test';
import { median, rounded } from './figure.ts';
import { closeInGoodOrder, type LargeRoom } from './large-room.ts';
import { slowDown, type Slowed } from './slow-down.ts';

/** What is done to a browser before the app is opened in it. */
export interface Start {
  /**
   * What is lost before: the list last worked out, as after an update of the app, or also the saved
   * picture, without which the whole log is read first.
   */
  readonly forget?: 'last seen' | 'last seen and picture';
  /** What shall run how many times slower. */
  readonly slower?: { readonly whom: Slowed; readonly times: number };
  readonly runs: number;
}

/** What a start showed and when, in milliseconds since its navigation began. */
export interface StartTimes {
  /** Until the first lines of tonight's list are painted, whether last worked out or the desk's own. */
  readonly readable: number;
  /** Until the desk's own list is painted. */
  readonly fresh: number;
  /**
   * Until the browser has put its first content on the glass, which includes what the page's own
   * thread does not do. Source: W3C Paint Timing, `first-contentful-paint`.
   */
  readonly pixels: number;
}

/** As the page tells it: with the lines that stood there, to be held against each other. */
interface Told {
  readonly readableMs: number;
  readonly freshMs: number;
  readonly pixelsMs: number;
  readonly readableLines: readonly string[];
  readonly freshLines: readonly string[];
}

declare global {
  interface Window {
    /** Called once, when both lists have been painted. Put in by the driver. */
    tellStart?: (told: string) => void;
  }
}

/**
 * The page watches itself and speaks when all is over: whatever a driver runs in a page meanwhile
 * would be measured too, and four times slower.
 */
const watchForList = (page: Page): Promise<unknown> =>
  page.addInitScript(() => {
    const lines = () =>
      [...document.querySelectorAll('.stop-link')].map((each) => each.textContent ?? '');
    /** A message sent from within a frame is heard once that frame has been laid out and painted. */
    const painted = (then: () => void) =>
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel();
        port1.addEventListener('message', then);
        port1.start();
        port2.postMessage(null);
      });
    let readable: { ms: number; lines: string[] } | undefined;
    let isReading = false;
    const look = () => {
      if (!document.querySelector('.stop')) return;
      const isLastSeen = document
        .querySelector('.page-head')
        ?.textContent?.includes('last worked out');
      if (!isReading) {
        isReading = true;
        const shown = lines();
        painted(() => {
          readable = { ms: performance.now(), lines: shown };
          look();
        });
      }
      if (isLastSeen === true || !readable) return;
      watching.disconnect();
      const { ms, lines: readableLines } = readable;
      painted(() => {
        const freshMs = performance.now();
        const [first] = performance.getEntriesByName('first-contentful-paint');
        const pixelsMs = first?.startTime ?? freshMs;
        const told = { readableMs: ms, freshMs, pixelsMs, readableLines, freshLines: lines() };
        window.tellStart?.(JSON.stringify(told));
      });
    };
    const watching = new MutationObserver(look);
    watching.observe(document, { childList: true, subtree: true, characterData: true });
  });

/** Errors: throws when what was readable first was not the beginning of the desk's own list. */
function asTimes(told: Told): StartTimes {
  const { readableMs, freshMs, pixelsMs, readableLines, freshLines } = told;
  const isTonights = readableLines.every((line, i) => line === freshLines[i]);
  if (!isTonights || readableLines.length === 0) {
    throw new Error(`Not tonight's list: ${readableLines.join(' | ')}`);
  }
  // Where the desk was as quick as what was last seen, there was one list.
  return { readable: readableMs, fresh: Math.max(readableMs, freshMs), pixels: pixelsMs };
}

/** Milliseconds from opening the app to its lists, each in a browser process of its own. */
export async function timeStarts(room: LargeRoom, start: Start): Promise<readonly StartTimes[]> {
  const times: StartTimes[] = [];
  for (let run = 0; run < start.runs; run += 1) {
    const browser = await room.start();
    const { page } = browser;
    try {
      if (start.forget) await forget(page, room, start.forget);
      const told = await hearStart(page);
      await watchForList(page);
      const { whom = 'page', times: factor = 1 } = start.slower ?? {};
      const release = await slowDown(page, room.profile, whom, factor);
      // A phone's browser has settled long before a thumb opens the app.
      await page.waitForTimeout(1_500);
      await page.goto(`${room.url}#/tonight`, { waitUntil: 'commit' });
      times.push(asTimes(await told()));
      await release();
    } finally {
      await browser.kill();
    }
  }
  return times;
}

/** What the page will tell, through a channel that runs nothing in it. */
async function hearStart(page: Page): Promise<() => Promise<Told>> {
  const session = await page.context().newCDPSession(page);
  await session.send('Runtime.enable');
  await session.send('Runtime.addBinding', { name: 'tellStart' });
  const heard = new Promise<Told>((resolve, reject) => {
    const patience = setTimeout(() => reject(new Error('No list after a minute.')), 60_000);
    session.on('Runtime.bindingCalled', ({ name, payload }) => {
      if (name !== 'tellStart') return;
      clearTimeout(patience);
      resolve(JSON.parse(payload) as Told);
    });
  });
  return () => heard;
}

export const medianMs = (times: readonly StartTimes[], what: keyof StartTimes): number =>
  rounded(median(times.map((each) => each[what])));

/** A page of the same origin that runs nothing of the app. */
const quietPage = (room: LargeRoom): string => `${room.url}icon.svg`;

async function forget(
  page: Page,
  room: LargeRoom,
  what: NonNullable<Start['forget']>,
): Promise<void> {
  await page.goto(quietPage(room));
  await page.evaluate(() => localStorage.removeItem('nightdrop.last-seen'));
  if (what === 'last seen and picture') await page.evaluate(deletePicture);
  await page.goto('about:blank');
}

const deletePicture = (): Promise<void> =>
  new Promise((resolve, reject) => {
    const request = indexedDB.deleteDatabase('nightdrop-picture');
    request.addEventListener('success', () => resolve());
    request.addEventListener('error', () => reject(new Error('The picture was not deleted.')));
  });

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
