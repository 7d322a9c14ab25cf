import type { Page } from '@playwright/test';
import { openTonight, type LargeRoom } from './large-room.ts';

// Measured inside the page, so that the driver's own messages cost nothing.

const TAPS = 100;
const OPENINGS = 20;

async function withOpenList<Answer>(
  room: LargeRoom,
  work: (page: Page) => Promise<Answer>,
): Promise<Answer> {
  const browser = await room.start();
  try {
    const { page } = browser;
    await openTonight(page, room);
    return await work(page);
  } finally {
    await browser.kill();
  }
}

/** Milliseconds from leaving the racks to tonight's list being in the page. */
export const tonightTimes = (room: LargeRoom): Promise<readonly number[]> =>
  withOpenList(room, (page) =>
    page.evaluate(async (openings) => {
      const shown = (selector: string) =>
        new Promise<void>((resolve) => {
          const look = () => {
            if (!document.querySelector(selector)) return;
            watching.disconnect();
            resolve();
          };
          const watching = new MutationObserver(look);
          watching.observe(document, { childList: true, subtree: true });
          look();
        });
      const times: number[] = [];
      for (let n = 0; n < openings; n += 1) {
        location.hash = '/racks';
        await shown('main:not(:has(.stop)) a[href^="#/rack/"]');
        const from = performance.now();
        location.hash = '/tonight';
        await shown('.stop');
        times.push(performance.now() - from);
      }
      return times;
    }, OPENINGS),
  );

/**
 * Milliseconds from the press on "Refused" to the words that it is written, on one snake after the
 * other. What is measured holds the message to the desk, the checks, the disk and the picture.
 */
export const tapTimes = (room: LargeRoom): Promise<readonly number[]> =>
  withOpenList(room, (page) =>
    page.evaluate(async (taps) => {
      /** Looks after each change of the page; gives up after two seconds. */
      const changed = <Found>(find: () => Found | undefined) =>
        new Promise<Found | undefined>((resolve) => {
          const look = () => {
            const found = find();
            if (found !== undefined) end(found);
          };
          const end = (found: Found | undefined) => {
            watching.disconnect();
            clearTimeout(patience);
            resolve(found);
          };
          const watching = new MutationObserver(look);
          const patience = setTimeout(() => end(undefined), 2_000);
          watching.observe(document, { childList: true, subtree: true, characterData: true });
          look();
        });
      const refusedButton = (name: string) => () =>
        document.querySelector('h1')?.textContent?.includes(name) === true
          ? [...document.querySelectorAll('button')].find((each) =>
              each.textContent.startsWith('Refused'),
            )
          : undefined;
      const said = (name: string) => () =>
        [...document.querySelectorAll('[role=status]')].find((each) =>
          each.textContent.includes(`${name} refused`),
        );
      const targets = [...document.querySelectorAll<HTMLAnchorElement>('.stop-link')].map(
        (link) => ({ hash: link.hash, name: link.querySelector('strong')?.textContent ?? '' }),
      );
      const times: number[] = [];
      for (const { hash, name } of targets) {
        if (times.length === taps) break;
        location.hash = hash.slice(1);
        // A pair that is together, or a meal left overnight, has other buttons there.
        const button = await changed(refusedButton(name));
        if (!button) continue;
        const from = performance.now();
        button.dispatchEvent(new PointerEvent('pointerdown', { bubbles: true }));
        button.click();
        // Where the app asks whether it is sure, nothing is said, and nothing measured.
        if (await changed(said(name))) times.push(performance.now() - from);
      }
      return times;
    }, TAPS),
  );
