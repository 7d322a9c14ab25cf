import { expect, test, type Page } from '@playwright/test';
import { imaginePair } from './gene-stops.ts';
import { addSnakes, begin, makeRack, walkTo, walkToSnake, written } from './keeper.ts';
import { serve, type Served } from './serve.ts';

let served: Served;
test.beforeAll(async () => {
  served = await serve();
});
test.afterAll(() => served.stop());

test.use({ contextOptions: { reducedMotion: 'reduce' } });

async function openAnimal(page: Page, name: string): Promise<void> {
  await walkTo(page, '/find');
  await page.getByLabel('Name, position, gene or label code').fill(name);
  await page.getByRole('link', { name: new RegExp(`^${name}`) }).click();
  await expect(page.getByRole('heading', { name: 'Genes', exact: true })).toBeVisible();
}

/** One gene's line on a snake's page. */
const gene = (page: Page, name: string) =>
  page
    .getByRole('list', { name: 'What it carries' })
    .getByRole('listitem')
    .filter({ has: page.getByText(name, { exact: true }) });

async function stateParents(page: Page, young: string, dam: string, sire: string): Promise<void> {
  await openAnimal(page, young);
  await page.getByRole('button', { name: 'State its parents' }).click();
  const sheet = page.getByRole('dialog', { name: `Parents of ${young}` });
  await sheet.getByRole('button', { name: new RegExp(`^${dam}`) }).click();
  await sheet.getByRole('button', { name: new RegExp(`^${sire}`) }).click();
  await expect(sheet.getByText(`Dam: ${dam}. Sire: ${sire}.`)).toBeVisible();
  await sheet.getByRole('button', { name: /^Write/ }).click();
  await written(page, 'parents stated').waitFor();
}

const step = (page: Page, look: string) =>
  page.getByRole('button', { name: `${look}: one more`, exact: true });

/** No ovulation is on record: the app asks once whether it can be so. */
async function writeEggs(page: Page): Promise<void> {
  await page.getByRole('button', { name: /^Write/ }).click();
  await page.getByRole('button', { name: /^Yes, write it/ }).click();
  await written(page, /laid/).waitFor();
}

/*
 * A 66 % het by a visual gives visuals with chance 2/3 × 1/2. Without evidence a visual's young that
 * does not show it is het for sure, so the sibling's figure is moved through a second, open gene:
 * the dam "66 % het Pied" by a "50 % het Pied". By hand, with D and S for "dam, sire carries":
 * no visual among n young has likelihood (3/4)^n where both carry, else 1. Prior of both: 2/3 × 1/2.
 */
const bothCarry = (young: number): number => {
  const likely = 0.75 ** young / 3;
  return likely / (likely + 2 / 3);
};
const rounded = (chance: number): string => `${Math.round(chance * 100)} %`;

test('two parents as written, the odds, a hatch that is counted, and what it moves', async ({
  page,
}) => {
  await begin(page, served.url);
  await makeRack(page, 'B', 3, 2);
  await addSnakes(page, [
    'Marrow, f, B1-1, 1900 g, 2021-07-14, Pastel 66% het Clown',
    'Flint, m, B1-2, 900 g, 2022-07-30, Clown 50% het Pied',
    'Sorrel, f, B2-1, 300 g, 2025-08-02',
  ]);
  await stateParents(page, 'Sorrel', 'Marrow', 'Flint');
  await openAnimal(page, 'Marrow');
  await expect(gene(page, 'Clown')).toContainText('67 %');
  await expect(gene(page, 'Clown')).toContainText('66 % (2/3) as stated');

  // Odds: 2/3 × 1/2 show Clown; Pastel or not is a half each.
  await page.getByRole('link', { name: /What would the young be/ }).click();
  await page.getByRole('button', { name: 'Change the male' }).click();
  await page
    .getByRole('dialog', { name: 'Which male' })
    .getByRole('button', { name: /^Flint/ })
    .click();
  const looks = page.getByRole('list', { name: 'Looks, the likeliest first' });
  await expect(looks.getByRole('listitem')).toHaveCount(4);
  await expect(looks.getByRole('listitem').filter({ hasText: 'Pastel Clown' })).toContainText(
    '1/6 (17 %)',
  );
  await page.getByLabel('A trait or several').fill('clown');
  await expect(page.getByText('Each young: 1/3 (33 %).')).toBeVisible();
  // Not 1 − (2/3)^6 = 91 %: she carries it or not, for all of the clutch. 2/3 × (1 − 1/2^6) = 66 %.
  await expect(page.getByText('At least one in 6 hatched young: 66 %. None: 34 %.')).toBeVisible();
  await expect(page.getByText(/9 in 10 is not reachable.*2\/3/)).toBeVisible();

  // Her eggs, and what hatched of them.
  await walkToSnake(page, 'Marrow');
  await page.getByRole('button', { name: 'More', exact: true }).click();
  await page.getByRole('button', { name: 'Eggs', exact: true }).click();
  for (let n = 0; n < 6; n += 1) await step(page, 'Good').click();
  await writeEggs(page);
  await openAnimal(page, 'Marrow');
  await page.getByRole('button', { name: 'Count her young' }).click();
  const sheet = page.getByRole('dialog', { name: 'Young of Marrow' });
  await sheet.getByText('Another male').click();
  await sheet.getByRole('button', { name: /^Flint/ }).click();
  await sheet.getByRole('button', { name: 'A male not known' }).click();
  await step(page, 'Pastel').click();
  await step(page, 'Pastel').click();
  await step(page, 'Normal').click();
  await sheet.getByRole('button', { name: /^Write 3 young/ }).click();
  await written(page, /young counted/).waitFor();

  // By hand: three without it of a carrier, (1/2)^3, against 1: 2/3 × 1/8 to 1/3 is 1 in 5.
  await expect(gene(page, 'Clown')).toContainText('20 %');
  await expect(gene(page, 'Clown')).toContainText('66 % (2/3) as stated');
  await gene(page, 'Clown').getByText('Why, and what would prove it').click();
  await expect(page.getByText(/young counted: .*with Flint/)).toBeVisible();
  await expect(gene(page, 'Clown').getByText(/^Without it: 67 %/)).toBeVisible();
  // 1/4 × (1/2)^n against 1 is below 1/19 from n = 3 on: 1/32 to 1.
  await expect(
    page.getByText('3 more hatched young, none of them Clown, bring the chance under 5 %.').first(),
  ).toBeVisible();
  await expect(page.getByText('One young that shows Clown proves Marrow.').first()).toBeVisible();
});

test('siblings and the sire move with a count, by the same parents', async ({ page }) => {
  await begin(page, served.url);
  await makeRack(page, 'B', 3, 2);
  await addSnakes(page, [
    'Marrow, f, B1-1, 1900 g, 2021-07-14, 66% het Pied',
    'Flint, m, B1-2, 900 g, 2022-07-30, 50% het Pied',
    'Sorrel, f, B2-1, 300 g, 2025-08-02, Normal',
  ]);
  await stateParents(page, 'Sorrel', 'Marrow', 'Flint');
  await openAnimal(page, 'Flint');
  const before = await gene(page, 'Pied').locator('.gene-head').innerText();
  await openAnimal(page, 'Sorrel');
  const sibling = await gene(page, 'Pied').locator('.gene-head').innerText();

  await walkToSnake(page, 'Marrow');
  await page.getByRole('button', { name: 'More', exact: true }).click();
  await page.getByRole('button', { name: 'Eggs', exact: true }).click();
  await writeEggs(page);
  await page.getByRole('button', { name: 'More', exact: true }).click();
  await page.getByRole('button', { name: 'Young, counted', exact: true }).click();
  const sheet = page.getByRole('dialog', { name: 'Young of Marrow' });
  await sheet.getByText('Another male').click();
  await sheet.getByRole('button', { name: /^Flint/ }).click();
  await sheet.getByRole('button', { name: 'A male not known' }).click();
  for (let n = 0; n < 5; n += 1) await step(page, 'Normal').click();
  await sheet.getByRole('button', { name: /^Write 5 young/ }).click();
  await written(page, /young counted/).waitFor();

  // Six without a Pied, the named sibling among them.
  await openAnimal(page, 'Flint');
  const head = gene(page, 'Pied').locator('.gene-head');
  await expect(head).not.toHaveText(before);
  const both = bothCarry(6);
  // He alone carries it: half of what is left of the other ways, which are 1/3, 1/6 and 1/6 of 2/3.
  await expect(head).toContainText(rounded(both + (1 - both) / 4));
  await openAnimal(page, 'Sorrel');
  await expect(gene(page, 'Pied').locator('.gene-head')).not.toHaveText(sibling);
  await gene(page, 'Pied').getByText(/^Why/).click();
  await expect(page.getByText(/young counted: 5 Normal with Flint/)).toBeVisible();
});

// The four that the trade warns of, with the grade as the catalogue holds it.
const warned = [
  ['Spider', 'Spider', 'grave', /two copies of Spider/],
  ['Champagne', 'Spider', 'grave', /both Spider and Champagne/],
  ['Desert', 'Normal', 'grave', /Desert females do not breed/],
  ['Cinnamon', 'Cinnamon', 'serious', /Super Cinnamons/],
] as const;
for (const [female, male, weight, says] of warned) {
  test(`${female} × ${male}: the caution, its grade and its source stand before the odds`, async ({
    page,
  }) => {
    await begin(page, served.url);
    await imaginePair(page, female, male);
    const caution = page
      .getByRole('list', { name: 'Cautions' })
      .getByRole('listitem')
      .filter({ hasText: says });
    await expect(caution).toContainText(weight);
    await expect(caution).toContainText(/Known from: (published|trade consensus|disputed)\. \S+/);
    const looks = page.getByRole('heading', { name: 'Looks of the young' });
    await expect(looks).toBeVisible();
    const [above, below] = await Promise.all([caution.boundingBox(), looks.boundingBox()]);
    expect((above?.y ?? Infinity) + (above?.height ?? 0)).toBeLessThan(below?.y ?? 0);
  });
}

test('at the tub the graver caution of a pair asks for a reason, keeps it, and blocks nothing', async ({
  page,
}) => {
  await begin(page, served.url);
  await makeRack(page, 'B', 3, 2);
  await addSnakes(page, [
    'Marrow, f, B1-1, 1900 g, 2021-07-14, Spider',
    'Flint, m, B1-2, 900 g, 2022-07-30, Spider',
    'Rivet, m, B2-1, 900 g, 2022-07-30, Normal',
  ]);
  await walkToSnake(page, 'Marrow');
  await page.getByRole('button', { name: 'More', exact: true }).click();
  await page.getByRole('button', { name: 'Put together' }).click();
  await page.getByRole('button', { name: /^Flint.*grave caution/ }).click();
  const sheet = page.getByRole('dialog', { name: 'Marrow and Flint' });
  await expect(sheet.getByText(/two copies of Spider/)).toBeVisible();
  await expect(sheet.getByRole('button', { name: /^Put together/ })).toBeEnabled();
  await sheet.getByLabel('Why these two, in spite of it?').fill('only as a trial of this form');
  await sheet.getByRole('button', { name: /^Put together/ }).click();
  await written(page, /together with Flint/).waitFor();
  await openAnimal(page, 'Marrow');
  await expect(
    page.getByText('paired in spite of a caution: only as a trial of this form').first(),
  ).toBeVisible();
});

test('words not understood are named, a gene of one’s own is made of them, and a test counts', async ({
  page,
}) => {
  await begin(page, served.url);
  await makeRack(page, 'B', 2, 2);
  await addSnakes(page, ['Marrow, f, B1-1, 1900 g, 2021-07-14, 66% het Hoarfern']);
  await openAnimal(page, 'Marrow');
  await expect(page.getByText(/is kept as stated, but not reckoned with/)).toBeVisible();
  await page.getByRole('button', { name: /^Make it a gene/ }).click();
  const own = page.getByRole('dialog', { name: 'A gene of your own' });
  await expect(own.getByLabel('What it is called')).toHaveValue('Hoarfern');
  await own.getByRole('button', { name: /^Write/ }).click();
  await written(page, 'Gene Hoarfern kept').waitFor();
  await expect(gene(page, 'Hoarfern')).toContainText('67 %');
  await page.getByRole('button', { name: 'DNA result' }).click();
  await page.getByRole('button', { name: /^Found/ }).click();
  await written(page, /Hoarfern found/).waitFor();
  // 99 % each: odds 2 : 1 times 99 : 1.
  await expect(gene(page, 'Hoarfern')).toContainText('99 %');
});
