import { expect, type Page } from '@playwright/test';
import { heading, to, type ScreenStop } from './screen-stop.ts';

/** The page of a snake of the demo, scrolled to its genes. */
const openGenes = (name: string) => async (page: Page) => {
  await to('/find')(page);
  await page.getByRole('searchbox').fill(name);
  await page
    .getByRole('link', { name: new RegExp(`^${name}`) })
    .first()
    .click();
  const genes = page.getByRole('heading', { name: 'Genes', exact: true });
  await expect(genes).toBeVisible();
  await genes.scrollIntoViewIfNeeded();
};

const openForm = (name: string, button: string, title: RegExp) => async (page: Page) => {
  await openGenes(name)(page);
  await page.getByRole('button', { name: button, exact: true }).click();
  await expect(page.getByRole('dialog', { name: title })).toBeVisible();
};

/** A pair that is only imagined, in a keeper's words. */
export async function imaginePair(page: Page, female: string, male: string): Promise<void> {
  await to('/pair')(page);
  await heading(page, 'A pair’s young');
  await page.getByLabel('Genes of the female').fill(female);
  await page.getByLabel('Genes of the male').fill(male);
}

/** Genes: on a snake's page, of a pair, and the forms. Names are those of the demo. */
export const geneStops: readonly ScreenStop[] = [
  {
    name: 'genes',
    visit: async (page) => {
      await openGenes('Drizzle')(page);
      await page.getByRole('list', { name: 'What it carries' }).getByText(/^Why/).last().click();
      await expect(page.getByText(/^Reckoned exactly/)).toBeVisible();
    },
  },
  { name: 'genes-traits', visit: openForm('Drizzle', 'State its genes', /^Genes of/) },
  { name: 'genes-parents', visit: openForm('Drizzle', 'State its parents', /^Parents of/) },
  { name: 'genes-test', visit: openForm('Drizzle', 'DNA result', /^DNA result of/) },
  { name: 'genes-young', visit: openForm('Drizzle', 'Count her young', /^Young of/) },
  { name: 'genes-own', visit: openForm('Drizzle', 'A gene of your own', /^A gene of your own/) },
  {
    name: 'pair',
    visit: async (page) => {
      await imaginePair(page, 'Spider, 66% het Clown', 'Spider Pastel het Clown');
      await expect(page.getByRole('heading', { name: 'What to know first' })).toBeVisible();
    },
  },
  {
    name: 'pair-looks',
    visit: async (page) => {
      await imaginePair(page, 'Pastel 66% het Clown', 'Pastel het Clown');
      // The looks of these two, and no longer those of the pair before.
      await expect(page.getByText('Super Pastel', { exact: true })).toBeVisible();
      await page
        .getByText(/on average$/)
        .first()
        .click();
      await page.getByText('The same as a table').click();
      await page.getByRole('heading', { name: 'Looks of the young' }).scrollIntoViewIfNeeded();
      await expect(page.getByRole('table')).toBeVisible();
    },
  },
];
