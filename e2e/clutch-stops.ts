import { expect, type Page } from '@playwright/test';
import { heading, to, type ScreenStop } from './screen-stop.ts';

const openEggs = async (page: Page) => {
  await to('/hatchery')(page);
  await heading(page, 'Eggs');
  await expect(page.getByRole('link', { name: /^Left/ })).toBeVisible();
};

const openIncubator = async (page: Page) => {
  await openEggs(page);
  await page.getByRole('link', { name: /^Left/ }).click();
  await heading(page, 'Left');
};

const openClutch = async (page: Page) => {
  await openEggs(page);
  await page
    .getByRole('link', { name: / laid / })
    .first()
    .click();
  await heading(page, /^Eggs of /);
};

/** Eggs, what warms them, and what comes out. */
export const clutchStops: readonly ScreenStop[] = [
  { name: 'eggs', visit: openEggs },
  { name: 'incubator', visit: openIncubator },
  {
    name: 'incubator-read',
    visit: async (page) => {
      await openIncubator(page);
      await page.getByRole('button', { name: /^Write down a reading/ }).click();
      await expect(page.getByRole('dialog', { name: 'Read Left' })).toBeVisible();
    },
  },
  { name: 'clutch', visit: openClutch },
  {
    name: 'clutch-fathers',
    visit: async (page) => {
      await openClutch(page);
      await page.getByRole('button', { name: /^Fathers/ }).click();
      await expect(page.getByRole('dialog', { name: 'Possible fathers' })).toBeVisible();
    },
  },
];
