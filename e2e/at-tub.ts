import { type Page } from '@playwright/test';
import { backUp, type BackupRecord } from './keeper.ts';

// What a thumb does at a tub, for tests that count its taps.

declare global {
  interface Window {
    taps: number;
  }
}

/** From the next page on, every tap is counted. */
export async function countTaps(page: Page): Promise<void> {
  await page.addInitScript(() => {
    window.taps = 0;
    addEventListener('click', () => (window.taps += 1), true);
  });
}

/** The taps that a piece of work takes. */
export async function taps(page: Page, work: () => Promise<void>): Promise<number> {
  const before = await page.evaluate(() => window.taps);
  await work();
  return (await page.evaluate(() => window.taps)) - before;
}

export const press = (page: Page, name: string | RegExp): Promise<void> =>
  page.getByRole('button', { name }).click();

/** Types a number on the app's own keys. */
export async function typeNumber(page: Page, number: string): Promise<void> {
  for (const key of number) {
    const name = key === '.' ? 'Point' : key;
    await page.getByRole('button', { name, exact: true }).click();
  }
}

/** Writes two axes of a follicle down, from the tub's own screen. */
export async function scan(page: Page, first: string, second: string): Promise<void> {
  await press(page, /^Follicles/);
  await typeNumber(page, first);
  await press(page, 'Next: second axis');
  await typeNumber(page, second);
  await press(page, `Write ${first} × ${second} mm`);
}

/** The records of a kind, oldest first. */
export async function records(page: Page, type: string): Promise<readonly BackupRecord[]> {
  const backup = await backUp(page);
  return backup.records.filter((record) => record.type === type);
}
