import { expect, type Page } from '@playwright/test';
import { to, type ScreenStop } from './screen-stop.ts';

/** The capture screen of the first snake whose meal comes before all else. */
export async function openCapture(page: Page): Promise<void> {
  await to('/tonight')(page);
  await page
    .getByRole('link', { name: /^(?!.*(Look|nest box|Put a|Scan)).*Feed 1/ })
    .first()
    .click();
  await expect(page.getByRole('button', { name: /^Ate/ })).toBeVisible();
}

const openForm = (button: string, title: RegExp) => async (page: Page) => {
  await openCapture(page);
  await page.getByRole('button', { name: new RegExp(`^${button}`) }).click();
  await expect(page.getByRole('dialog', { name: title })).toBeVisible();
};

/** The capture screen of the first female, and a record behind “More”. */
const openForFemale = (button: string, title: RegExp) => async (page: Page) => {
  await to('/tonight')(page);
  await page
    .getByRole('link', { name: /female/ })
    .first()
    .click();
  await page.getByRole('button', { name: 'More', exact: true }).click();
  await page.getByRole('button', { name: button, exact: true }).click();
  await expect(page.getByRole('dialog', { name: title })).toBeVisible();
};

/** The capture screen and its forms. */
export const captureStops: readonly ScreenStop[] = [
  { name: 'capture', visit: openCapture },
  { name: 'capture-weight', visit: openForm('Weight', /^Weight of/) },
  { name: 'capture-shed', visit: openForm('Shed', /shed$/) },
  { name: 'capture-follicles', visit: openForm('Follicles', /^Follicles of/) },
  {
    name: 'capture-felt',
    visit: async (page) => {
      await openForm('Follicles', /^Follicles of/)(page);
      await page.getByRole('button', { name: 'Felt', exact: true }).click();
      await expect(page.getByRole('button', { name: /^egg-like/ })).toBeVisible();
    },
  },
  { name: 'capture-ovulation', visit: openForFemale('Ovulation', /^Ovulation of/) },
  { name: 'capture-eggs', visit: openForFemale('Eggs', /^Eggs of/) },
  { name: 'capture-picture', visit: openForFemale('Picture', /^Picture of/) },
  { name: 'capture-meal', visit: openForm('Other meal', /^A meal for/) },
  { name: 'capture-pair', visit: openForm('Pair', /with…$/) },
  { name: 'capture-more', visit: openForm('More', /^More for/) },
  {
    name: 'capture-together',
    visit: async (page) => {
      await to('/tonight')(page);
      await page
        .getByRole('link', { name: /Take .* out/ })
        .first()
        .click();
      await expect(page.getByRole('button', { name: /^Take out/ })).toBeVisible();
    },
  },
  {
    name: 'capture-left-overnight',
    visit: async (page) => {
      await to('/tonight')(page);
      await page
        .getByRole('link', { name: /left: eaten/ })
        .first()
        .click();
      await expect(page.getByRole('button', { name: /^Eaten/ })).toBeVisible();
    },
  },
];
