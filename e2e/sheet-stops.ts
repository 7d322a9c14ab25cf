import { Buffer } from 'node:buffer';
import { expect, type Page } from '@playwright/test';
import { heading, to, type ScreenStop } from './screen-stop.ts';

/** A file with something of everything the screen has to say. */
const MESSY = [
  'Snake,Sex,Tub,Hatched,Genes,Date,Weight,Fed,Hot spot,Notes',
  'Quill,hembra,B9-9,14/07/2021,Pastel,13/01/2025,1640,1 small rat,88 °F,calm',
  'Quill,,,,,20/01/2025,164,refused,30 °C (90 °F),<b>bold</b>',
  'Quill,,,,,20/01/2025,164,refused,,',
  'Rivet,m,,31/02/2022,Clown,13/01/2025,heavy,2 pups,,=1+1',
  'Rivvet,,,,,20/01/2025,58 oz,ate,,',
  ',,,,,20/01/2025,900,ate,,',
].join('\n');

const openMessy = async (page: Page) => {
  await to('/shelf')(page);
  await to('/spreadsheet')(page);
  await heading(page, 'Bring a spreadsheet');
  await page
    .locator('input[type=file]')
    .setInputFiles({ name: 'snakes.csv', mimeType: 'text/csv', buffer: Buffer.from(MESSY) });
  await expect(page.getByRole('heading', { name: 'Columns' })).toBeVisible();
};

const at = (name: string) => async (page: Page) => {
  await openMessy(page);
  await page.getByRole('heading', { name }).evaluate((found) => found.scrollIntoView());
};

/** The screen that brings a spreadsheet, from top to bottom. */
export const sheetStops: readonly ScreenStop[] = [
  { name: 'sheet-columns', visit: openMessy },
  { name: 'sheet-words', visit: at('Words not known here') },
  { name: 'sheet-questions', visit: at('3 questions') },
  {
    name: 'sheet-left-out',
    visit: async (page) => {
      await at('Left out')(page);
      await page.getByText(/and why$/).click();
      await expect(page.getByText(/is no weight/)).toBeVisible();
    },
  },
  {
    name: 'sheet-column',
    visit: async (page) => {
      await openMessy(page);
      await page.getByRole('button', { name: /Date/ }).click();
      await expect(page.getByRole('dialog', { name: 'Column F: Date' })).toBeVisible();
    },
  },
];
