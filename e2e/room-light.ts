import { expect, type Page } from '@playwright/test';

const LIGHTS = ['dark', 'light', 'red'] as const;
type Light = (typeof LIGHTS)[number];

/** One more page of the browser, the same each time; the first stays in front. */
async function otherTab(page: Page): Promise<Page> {
  const open = page
    .context()
    .pages()
    .find((each) => each.url().endsWith('.png'));
  if (open) return open;
  const other = await page.context().newPage();
  await other.goto(new URL('icon-192.png', page.url()).href);
  // A page behind another is drawn once a second.
  await page.bringToFront();
  return other;
}

/**
 * Looks at a page in one light after the other, as another tab of the same browser sets it: the
 * screen that is shown stays, and its curves are drawn anew.
 */
export async function inEveryLight(
  page: Page,
  look: (light: Light) => Promise<void>,
): Promise<void> {
  const other = await otherTab(page);
  for (const light of LIGHTS) {
    await other.evaluate((chosen) => localStorage.setItem('nightdrop.light', chosen), light);
    await expect(page.locator('html')).toHaveAttribute('data-light', light);
    await page.evaluate(() =>
      Promise.all(document.getAnimations().map(({ finished }) => finished)),
    );
    await look(light);
  }
}
