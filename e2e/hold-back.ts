import type { Page } from '@playwright/test';

/**
 * Keeps a file of the app on the way until it is let come. Service workers must be blocked, or they
 * bring it from their cache.
 */
export async function holdBack(page: Page, file: RegExp) {
  let letCome = (): void => undefined;
  const held = new Promise<void>((resolve) => {
    letCome = resolve;
  });
  let wasAsked = false;
  await page.route(file, async (route) => {
    wasAsked = true;
    await held;
    await route.continue();
  });
  return { letCome, wasAsked: () => wasAsked };
}
