import { expect, type BrowserContext } from '@playwright/test';
import { holdBack } from './hold-back.ts';

/** Opens the page at tonight and keeps its program on the way until it is let come. */
export async function openWithoutProgram(context: BrowserContext, url: string) {
  const page = await context.newPage();
  const { letCome, wasAsked } = await holdBack(page, /assets\/index-[^/]+\.js$/);
  await page.goto(`${url}#/tonight`, { waitUntil: 'commit' });
  await expect.poll(wasAsked).toBe(true);
  return { page, letCome };
}
