import { expect, type Page } from '@playwright/test';

/** A screen of the app, how to get to it in the demo, and what shows that it is there. */
export interface ScreenStop {
  readonly name: string;
  readonly visit: (page: Page) => Promise<void>;
}

export const to = (hash: string) => (page: Page) =>
  page.evaluate((next) => {
    location.hash = next;
  }, hash);

export const heading = (page: Page, name: string | RegExp) =>
  expect(page.getByRole('heading', { level: 1, name })).toBeVisible();
