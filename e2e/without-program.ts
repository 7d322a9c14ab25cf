import { expect, type BrowserContext } from '@playwright/test';

/**
 * Opens the page at tonight and keeps its program on the way until it is let come. Service workers
 * must be blocked, or they bring it from their cache.
 */
export async function openWithoutProgram(context: BrowserContext, url: string) {
  const page = await context.newPage();
  let letCome = (): void => undefined;
  const held = new Promise<void>((resolve) => {
    letCome = resolve;
  });
  let hasAsked = false;
  await page.route(/assets\/index-[^/]+\.js$/, async (route) => {
    hasAsked = true;
    await held;
    await route.continue();
  });
  await page.goto(`${url}#/tonight`, { waitUntil: 'commit' });
  await expect.poll(() => hasAsked).toBe(true);
  return { page, letCome };
}
