import { expect, type Page } from '@playwright/test';
import { heading, to, type ScreenStop } from './screen-stop.ts';

const openSales = async (page: Page) => {
  await to('/sales')(page);
  await heading(page, 'Sales');
  await expect(page.getByRole('region', { name: 'For sale', exact: true })).toBeVisible();
};

const openPapers = async (page: Page) => {
  await openSales(page);
  const forSale = page.getByRole('region', { name: 'For sale', exact: true });
  await forSale.getByRole('link').first().click();
  await expect(page.getByRole('heading', { name: 'On paper' })).toBeVisible();
};

const openForm = (button: string, title: RegExp) => async (page: Page) => {
  await openPapers(page);
  await page.getByRole('button', { name: button }).click();
  await expect(page.getByRole('dialog', { name: title })).toBeVisible();
};

const openBuyers = async (page: Page) => {
  await to('/buyers')(page);
  await heading(page, 'Buyers');
  await expect(page.getByRole('button', { name: 'Erase Ada Rook' })).toBeVisible();
};

/** What is for sale, its papers, and who bought. */
export const saleStops: readonly ScreenStop[] = [
  { name: 'sales', visit: openSales },
  { name: 'papers', visit: openPapers },
  { name: 'papers-reserve', visit: openForm('Reserve', /^Reserve: /) },
  { name: 'papers-source', visit: openForm('State the source', /^Where /) },
  {
    name: 'papers-hand-over',
    visit: async (page) => {
      await openSales(page);
      const reserved = page.getByRole('region', { name: 'Reserved or sold, still here' });
      await reserved.getByRole('link', { name: /sold on/ }).click();
      await page.getByRole('button', { name: 'Hand over' }).click();
      await expect(page.getByRole('dialog', { name: /^Hand over / })).toBeVisible();
    },
  },
  {
    name: 'register',
    visit: async (page) => {
      await to('/register')(page);
      await heading(page, 'Register');
      await expect(page.getByRole('heading', { name: 'Sales' })).toBeVisible();
    },
  },
  { name: 'buyers', visit: openBuyers },
  {
    name: 'buyers-erase',
    visit: async (page) => {
      await openBuyers(page);
      await page.getByRole('button', { name: 'Erase Ada Rook' }).click();
      await expect(page.getByRole('dialog', { name: 'Erase Ada Rook?' })).toBeVisible();
    },
  },
];
