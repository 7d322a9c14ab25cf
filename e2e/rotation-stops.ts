import { expect } from '@playwright/test';
import { heading, to, type ScreenStop } from './screen-stop.ts';

/** The screens on which males are shared. */
export const rotationStops: readonly ScreenStop[] = [
  {
    name: 'rotation-board',
    visit: async (page) => {
      await to('/rotation')(page);
      await heading(page, 'Males');
      await expect(page.getByRole('list', { name: 'Females' }).first()).toBeVisible();
    },
  },
  {
    name: 'rotation-mates',
    visit: async (page) => {
      await to('/rotation')(page);
      await page
        .getByRole('button', { name: /^Males for / })
        .first()
        .click();
      await expect(page.getByRole('group', { name: /^Choice of / }).first()).toBeVisible();
    },
  },
  {
    name: 'rotation-plan',
    visit: async (page) => {
      await to('/shelf')(page);
      await to('/rotation/plan')(page);
      await expect(page.getByText(/^Proven:/)).toBeVisible({ timeout: 30_000 });
    },
  },
  {
    name: 'rotation-males',
    visit: async (page) => {
      await to('/rotation/males')(page);
      await expect(page.getByRole('list', { name: 'Males' })).toBeVisible();
    },
  },
  {
    name: 'moves',
    visit: async (page) => {
      await to('/moves')(page);
      await heading(page, 'Tonight’s moves');
      await expect(page.getByRole('link', { name: 'The plan' })).toBeVisible();
    },
  },
];
