import { expect, test, type Page } from '@playwright/test';
import {
  addSnakes,
  backUp,
  begin,
  beginWithThree,
  makeRack,
  namesIn,
  recordCount,
  walkTo,
  walkToSnake,
  written,
  type Backup,
} from './keeper.ts';
import { serve, type Served } from './serve.ts';
import { tapAtOnce, type Offer } from './tap-at-once.ts';

const EACH = 40;

let served: Served;
test.beforeAll(async () => {
  served = await serve();
});
test.afterAll(() => served.stop());

/** Offers one snake a meal again and again; refused and eaten in turn, so that each word is new. */
async function offerMany(page: Page, name: string, first: Offer): Promise<void> {
  const route = await walkToSnake(page, name);
  const second = first === 'ate' ? 'refused' : 'ate';
  for (let i = 0; i < EACH; i += 1) {
    await tapAtOnce(page, route, { name, offer: i % 2 === 0 ? first : second });
  }
}

const offersOf = (backup: Backup, name: string) => {
  const names = namesIn(backup);
  return backup.records.filter(
    ({ type, animal = '' }) => type === 'meal-offered' && names.get(animal) === name,
  );
};

const lastRecords = (page: Page) => page.getByRole('list', { name: 'Last records' });

test('two tabs write at once, and nothing is lost, doubled or hidden', async ({
  page: one,
  context,
}) => {
  await beginWithThree(one, served.url);
  const two = await context.newPage();
  await two.goto(served.url);
  const before = await recordCount(two);

  // On different snakes.
  await Promise.all([offerMany(one, 'Marrow', 'refused'), offerMany(two, 'Sorrel', 'refused')]);
  // On the same one.
  await Promise.all([offerMany(one, 'Flint', 'refused'), offerMany(two, 'Flint', 'ate')]);

  const [seenByOne, seenByTwo] = [await backUp(one), await backUp(two)];
  expect(offersOf(seenByOne, 'Marrow')).toHaveLength(EACH);
  expect(offersOf(seenByOne, 'Sorrel')).toHaveLength(EACH);
  const flint = offersOf(seenByOne, 'Flint');
  expect(flint).toHaveLength(2 * EACH);
  expect(flint.filter(({ outcome }) => outcome === 'ate')).toHaveLength(EACH);
  // Each tab signed its own: neither wrote for the other.
  const writers = [...new Set(flint.map(({ device }) => device))];
  expect(writers).toHaveLength(2);
  for (const writer of writers) {
    expect(flint.filter(({ device }) => device === writer)).toHaveLength(EACH);
  }
  expect(new Set(seenByOne.records.map(({ id }) => id)).size).toBe(before + 4 * EACH);
  expect(seenByOne.records).toHaveLength(before + 4 * EACH);
  expect(seenByTwo.records).toEqual(seenByOne.records);
});

test('each tab shows what the other writes, without a reload, within a second', async ({
  page: one,
  context,
}) => {
  await beginWithThree(one, served.url);
  const two = await context.newPage();
  await two.goto(served.url);
  const route = await walkToSnake(two, 'Marrow');
  await walkTo(one, route);

  for (const [here, there] of [
    [one, two],
    [two, one],
  ] as const) {
    const lines = lastRecords(there).getByText(/refused 1 small rat/);
    const seen = await lines.count();
    await here.getByRole('button', { name: /^Refused/ }).click();
    await written(here, 'Marrow refused 1 small rat').waitFor();
    await expect.poll(() => lines.count(), { timeout: 1_000, intervals: [20] }).toBe(seen + 1);
  }

  // Another screen of the other tab follows too.
  await walkTo(two, '/find');
  await two.getByLabel('Name, position, gene or label code').fill('Umber');
  await expect(two.getByText('Nothing by that name')).toBeVisible();
  await addSnakes(one, ['Umber, f, B2-2, 1450 g']);
  await expect(two.getByRole('link', { name: /^Umber/ })).toBeVisible({ timeout: 1_000 });
});

test('two tabs that begin together keep one collection', async ({ page: one, context }) => {
  const two = await context.newPage();
  await begin(one, served.url);
  await two.goto(`${served.url}#/add`);
  await expect(two.getByRole('heading', { name: 'Add snakes' })).toBeVisible();
  // The first record of each tab: both could think that it begins the collection.
  await makeRack(one, 'B');
  await addSnakes(two, ['Marrow, f, B1-1, 1500 g']);
  const [ofOne, ofTwo] = [await backUp(one), await backUp(two)];
  expect(ofTwo.header.collection).toBe(ofOne.header.collection);
  expect(ofTwo.records).toEqual(ofOne.records);
  await one.reload();
  expect((await backUp(one)).header.collection).toBe(ofOne.header.collection);
});
