import { expect } from '@playwright/test';
import { heading, to, type ScreenStop } from './screen-stop.ts';

/** The season under way, and those that are over. */
export const seasonStops: readonly ScreenStop[] = [
  {
    name: 'season',
    visit: async (page) => {
      await to('/season')(page);
      await heading(page, 'Season');
      await expect(page.getByRole('heading', { name: 'Signs, in your records' })).toBeVisible();
    },
  },
  {
    name: 'review',
    visit: async (page) => {
      await to('/review')(page);
      await heading(page, 'Season review');
      await expect(page.getByRole('heading', { name: 'Outcomes and odds' })).toBeVisible();
    },
  },
];
