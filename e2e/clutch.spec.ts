import { expect, test, type Page } from '@playwright/test';
import { countTaps, press, taps, typeNumber } from './at-tub.ts';
import {
  THREE,
  addSnakes,
  backUp,
  begin,
  goOffline,
  makeRack,
  walkTo,
  walkToSnake,
  written,
} from './keeper.ts';
import { movingClock, setClock } from './moving-clock.ts';
import { serve, type Served } from './serve.ts';

// A clutch through the real screens, without a network: a power cut, a slug, a late pip and a young one
// that does not eat on the way.

const BEGUN = '2027-04-09T18:00:00+02:00';

let served: Served;
test.beforeEach(async () => {
  served = await serve({ beforeDesk: () => movingClock(BEGUN) });
});
test.afterEach(() => served.stop());

const openClutch = async (page: Page): Promise<void> => {
  await walkTo(page, '/hatchery');
  await page.getByRole('link', { name: /^Marrow/ }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Eggs of Marrow' })).toBeVisible();
};

const openIncubator = async (page: Page): Promise<void> => {
  await walkTo(page, '/hatchery');
  await page.getByRole('link', { name: /^Left/ }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Left' })).toBeVisible();
};

const more = async (page: Page, counted: string, times: number): Promise<void> => {
  for (let n = 0; n < times; n += 1) await press(page, `${counted}: one more`);
};

/** The first that may go; the one that does not eat may not. */
async function sellOne(page: Page): Promise<void> {
  await walkTo(page, '/sales');
  const ready = page.getByRole('region', { name: 'Could go, not offered' });
  await expect(ready.getByRole('link')).toHaveCount(3);
  await expect(page.getByText('0 of 3 unaided meals in a row')).toHaveCount(1);
  await ready.getByRole('link').first().click();
  await press(page, 'Sold');
  const price = page.getByRole('group', { name: 'Price' });
  await price.getByLabel('Amount').fill('120');
  await price.getByLabel('Currency').fill('eur');
  await press(page, /^Write: sold/);
  await expect(page.locator('.sale-state')).toHaveText(/, not handed over, 120\.00\sEUR$/);
  await press(page, 'State the source');
  await press(page, /^C bred in captivity/);
  await press(page, 'Hand over');
  await press(page, 'Collected here');
  await expect(page.locator('.sale-state')).toHaveText(/^handed over on /);
}

/** One hatchling, from its form to the next one's. Answers the taps it took. */
const hatchling = (page: Page, name: string, sex: string, massG: string): Promise<number> =>
  taps(page, async () => {
    await expect(page.getByRole('dialog', { name: `Hatchling ${name}` })).toBeVisible();
    await press(page, new RegExp(`^${sex}`));
    await typeNumber(page, massG);
    await press(page, new RegExp(`^Write ${name}`));
    await expect(written(page, name)).toBeVisible();
  });

test('from the eggs to three young that stand by themselves', async ({ page }) => {
  test.setTimeout(240_000);
  await countTaps(page);
  await page.addInitScript({ content: movingClock(BEGUN) });
  await begin(page, served.url);
  await makeRack(page, 'B', 3, 3);
  await addSnakes(page, THREE);
  await goOffline(page);

  // An incubator with a label.
  await walkTo(page, '/hatchery');
  await press(page, 'Add an incubator');
  await page.getByLabel('Name').fill('Left');
  await press(page, /^Write$/);
  await page.getByRole('link', { name: /^Left/ }).click();
  await press(page, /^Give it a label/);
  const print = page.getByRole('link', { name: /^Print its label/ });
  const code = (await print.locator('small').innerText()).trim();

  // Found with four good eggs and a slug.
  await setClock(page, '2027-04-10T21:00:00+02:00', 'Sat 10 Apr');
  await walkToSnake(page, 'Marrow');
  await press(page, 'More');
  await press(page, 'Eggs');
  await more(page, 'Good', 4);
  await more(page, 'Slugs', 1);
  await press(page, /^Clutch/);
  await typeNumber(page, '410');
  await press(page, 'Back to the eggs');
  await press(page, /^Her, after/);
  await typeNumber(page, '1050');
  await press(page, 'Back to the eggs');
  await page.getByLabel('Last look without eggs').selectOption('Fri 9 Apr');
  await press(page, /^Write/);
  // No season came before it in this collection.
  await press(page, 'Yes, write it');
  await expect(written(page, 'laid: 4 good, 1 slugs')).toBeVisible();

  await openClutch(page);
  // 410 of 1,500 g and of 1,050 g.
  await expect(page.getByText('27.3 % of her weight before laying')).toBeVisible();
  await expect(page.getByText('39.0 % of her weight after laying')).toBeVisible();
  await press(page, /^Put into/);
  await press(page, /^Left/);
  await press(page, 'Eggs left in her?');
  await press(page, 'None, she is empty');
  await press(page, /^Fathers/);
  await press(page, 'A male that is not on record');
  await press(page, /^Write$/);
  await expect(page.getByText('an unknown male (together)', { exact: true })).toBeVisible();
  await press(page, /^Give it a label/);
  await expect(page.getByRole('link', { name: /^Print its labels/ })).toBeVisible();

  // Its label opens the form; what it is set to is one tap, and writing it another.
  await walkTo(page, `/${code}`);
  await expect(page.getByRole('dialog', { name: 'Read Left' })).toBeVisible();
  const reading = await taps(page, async () => {
    await press(page, /^31.5 °C/);
    await press(page, /^Write 31.5 °C/);
    await expect(written(page, 'Left: 31.5 °C')).toBeVisible();
  });
  expect(reading).toBe(2);

  // The power fails one afternoon, and is back in the evening.
  await setClock(page, '2027-05-04T16:00:00+02:00', 'Tue 4 May');
  await openIncubator(page);
  await press(page, /^No heat/);
  await press(page, 'Left alone');
  await expect(page.locator('strong', { hasText: 'Left: no heat' })).toBeVisible();
  await setClock(page, '2027-05-04T21:00:00+02:00', 'Tue 4 May');
  await expect(page.locator('strong', { hasText: 'Left: no heat' })).toBeVisible();
  await openIncubator(page);
  await press(page, /^Heat is back/);
  await typeNumber(page, '25.5');
  await press(page, /^Write, 25.5 °C/);
  await expect(page.locator('strong', { hasText: 'Left: no heat' })).toBeHidden();
  await openClutch(page);
  await expect(page.getByText(/^No heat from 4 May 2027, 16:00 to .*25.5 °C/)).toBeVisible();

  // From day 52 on she is looked for.
  await setClock(page, '2027-06-01T21:00:00+02:00', 'Tue 1 Jun');
  await expect(page.getByText('Eggs of Marrow: Look for pips')).toBeVisible();
  await openClutch(page);
  await press(page, /^Pips/);
  await press(page, 'Nothing new');
  await expect(written(page, 'No pip yet')).toBeVisible();

  // Three pip together, and come out two days later.
  await setClock(page, '2027-06-06T21:00:00+02:00', 'Sun 6 Jun');
  await openClutch(page);
  await press(page, /^Pips/);
  await more(page, 'How many new', 2);
  await press(page, /^Pipped/);
  await expect(written(page, 'Pipped: 3')).toBeVisible();
  await setClock(page, '2027-06-08T21:00:00+02:00', 'Tue 8 Jun');
  await openClutch(page);
  await press(page, /^Hatchling/);
  for (const [name, sex, massG] of [
    ['27-001A', 'Female', '62'],
    ['27-001B', 'Male', '58.5'],
    ['27-001C', 'Female', '60'],
  ] as const) {
    expect(await hatchling(page, name, sex, massG)).toBeLessThanOrEqual(12);
  }
  await press(page, /^Close$/);

  // One is left behind, and pips late.
  await setClock(page, '2027-06-10T21:00:00+02:00', 'Thu 10 Jun');
  await expect(page.getByText('Eggs of Marrow: 1 still in the shell')).toBeVisible();
  await openClutch(page);
  await press(page, /^Pips/);
  await press(page, /^Pipped/);
  await setClock(page, '2027-06-12T21:00:00+02:00', 'Sat 12 Jun');
  await openClutch(page);
  await press(page, /^Hatchling/);
  await hatchling(page, '27-001D', 'Male', '54');
  await press(page, /^Close$/);
  await press(page, 'Close the clutch');
  await press(page, 'All that will are out');
  await expect(page.getByText(/^4 of 4, 100 % \(51 % to 100 % likely\)/)).toBeVisible();

  // Three eat three times; the fourth does not.
  for (const [iso, night] of [
    ['2027-06-28T22:00:00+02:00', 'Mon 28 Jun'],
    ['2027-07-05T22:00:00+02:00', 'Mon 5 Jul'],
    ['2027-07-12T22:00:00+02:00', 'Mon 12 Jul'],
  ] as const) {
    await setClock(page, iso, night);
    for (const letter of ['A', 'B', 'C', 'D']) {
      await openClutch(page);
      await page.getByRole('link', { name: new RegExp(`^27-001${letter}`) }).click();
      await expect(page.getByRole('heading', { level: 1, name: `27-001${letter}` })).toBeVisible();
      await press(page, letter === 'D' ? /^Refused/ : /^Ate/);
      await expect(written(page, letter === 'D' ? 'refused' : 'ate')).toBeVisible();
    }
  }
  await openClutch(page);
  await expect(page.getByText('established: 3 unaided meals in a row')).toHaveCount(3);
  await expect(page.getByText('0 of 3 unaided meals in a row')).toHaveCount(1);
  await sellOne(page);

  const { records } = await backUp(page);
  const kinds = new Map<string, number>();
  for (const { type } of records) kinds.set(type, (kinds.get(type) ?? 0) + 1);
  expect(Object.fromEntries(kinds)).toMatchObject({
    laid: 1,
    'eggs-set': 1,
    'heat-failed': 1,
    'heat-back': 1,
    hatched: 4,
    'parents-stated': 4,
    'clutch-closed': 1,
    sold: 1,
    'handed-over': 1,
  });
});
