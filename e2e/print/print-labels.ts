import type { Page } from '@playwright/test';
import type { LabelFormat } from '../../src/domain/labels/format.ts';

const PAPER_NAMES = { a4: 'A4', letter: 'US Letter', roll: 'Roll' } as const;

/** Picks a paper and a label size on the labels screen. */
export async function chooseFormat(page: Page, format: LabelFormat): Promise<void> {
  await page.getByRole('radio', { name: PAPER_NAMES[format.paper], exact: true }).check();
  await page.getByLabel(/^Label size/).selectOption(format.id);
}

/**
 * Presses a print button on the labels screen, and takes the PDF that the printer would get.
 *
 * The browser's own print window is a matter of the system, so it is kept shut.
 */
export async function printToPdf(page: Page, button: string | RegExp): Promise<Uint8Array> {
  await page.evaluate(() => {
    window.print = () => undefined;
  });
  await page.getByRole('button', { name: button }).click();
  await page.locator('.print-pages').waitFor({ state: 'attached' });
  return page.pdf({ preferCSSPageSize: true, printBackground: true });
}
