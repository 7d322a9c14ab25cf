import { expect, type Page } from '@playwright/test';
import axe from 'axe-core';

/** What axe finds on the page as it is now, a line each; by some of its rules, or by all. */
export async function axeFindings(page: Page, rules?: readonly string[]): Promise<string[]> {
  // Put in once for all screens of a page: its source is half a megabyte.
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axe.source);
  return page.evaluate(async (only) => {
    const { violations } = await axe.run(document, {
      resultTypes: ['violations'],
      ...(only ? { runOnly: [...only] } : {}),
    });
    return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`);
  }, rules);
}

/** Nothing on the page as it is now for axe to find. */
export async function passesAxe(page: Page): Promise<void> {
  expect(await axeFindings(page)).toEqual([]);
}

export const tooWidePx = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - innerWidth);

/** Nothing on it is wider than the phone. */
export async function fitsWidth(page: Page): Promise<void> {
  expect(await tooWidePx(page)).toBeLessThanOrEqual(0);
}
