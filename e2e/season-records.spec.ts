import { expect, test, type Page } from '@playwright/test';
import { countTaps, press, records, scan, taps, typeNumber } from './at-tub.ts';
import { clockFrom } from './clock-from.ts';
import { backUp, beginWithThree, walkTo, walkToSnake, written } from './keeper.ts';
import { serve, type Served } from './serve.ts';

// Looks, ovulation, sheds and eggs. Taps are counted from the tub's own screen.

/** An earlier night in the picker of the tub's screen. */
const toNight = (page: Page, nightsAgo: number) =>
  page.getByLabel('Write it to').selectOption({ index: nightsAgo });

test.describe('at one tub', () => {
  let tub: string;
  test.beforeEach(async ({ page, baseURL }) => {
    await countTaps(page);
    await beginWithThree(page, baseURL ?? '');
    tub = await walkToSnake(page, 'Marrow');
  });

  test('near ovulation a look and a refusal are one tap each, and “seen late” knows since when', async ({
    page,
  }) => {
    await scan(page, '38', '37');
    await expect(page.getByText('Look: has she ovulated?')).toBeVisible();
    const count = await taps(page, async () => {
      await press(page, /^Refused/);
      await expect(written(page, 'refused')).toBeVisible();
      await press(page, /^Not yet/);
      await expect(written(page, 'no ovulation yet')).toBeVisible();
    });
    expect(count).toBe(2);
    // Looked at tonight: the next thing that is due has the place.
    await expect(page.getByRole('button', { name: /^Male in/ })).toBeVisible();
    await press(page, 'More');
    await press(page, 'Ovulation');
    await expect(page.getByLabel(/the last look without it/)).toContainText('on record');
    await press(page, /^Seen late/);
    await expect(page.getByText('Ovulated, tonight')).toBeVisible();
    const { records: all } = await backUp(page);
    const looked = all.find(({ type }) => type === 'nothing-yet');
    expect(all.find(({ type }) => type === 'ovulated')).toMatchObject({
      sure: 'seen late',
      precision: 'between',
      notBefore: looked?.at,
    });
  });

  test('an ovulation is written down a week late', async ({ page }) => {
    await toNight(page, 7);
    await press(page, 'More');
    await press(page, 'Ovulation');
    await press(page, /^Seen at its peak/);
    await expect(page.getByText('Ovulated, 7 days ago')).toBeVisible();
    await page.getByText('Ovulated, 7 days ago').click();
    await expect(page.getByText(/^Ovulation seen at its peak, 7 days ago/)).toBeVisible();
    expect(await records(page, 'ovulated')).toMatchObject([{ precision: 'day' }]);
  });

  test('the pre-lay shed is asked about, answered beforehand, and can be taken back', async ({
    page,
  }) => {
    await toNight(page, 14);
    await press(page, 'More');
    await press(page, 'Ovulation');
    await press(page, /^Seen at its peak/);
    await expect(page.getByText('Ovulated, 14 days ago')).toBeVisible();
    await toNight(page, 0);
    const count = await taps(page, async () => {
      await press(page, 'Shed');
      await expect(page.getByText('Ovulation was 14 days before.')).toBeVisible();
      await press(page, /^Whole/);
      await expect(written(page, 'shed whole, pre-lay')).toBeVisible();
    });
    expect(count).toBe(2);
    await expect(page.getByRole('button', { name: /^Nest box in/ })).toBeVisible();
    await press(page, 'It was not the pre-lay shed');
    await expect(page.getByText('Ovulated, 14 days ago')).toBeVisible();
    await page.getByRole('heading', { level: 1 }).getByRole('link').click();
    await expect(page.getByText('struck: It was not the pre-lay shed')).toBeVisible();
    const [said, corrected] = await records(page, 'shed');
    expect(corrected).toMatchObject({
      at: said?.at,
      precision: said?.['precision'],
      preLay: false,
      replaces: { id: said?.id },
    });
    // The other way round, from her page.
    await walkTo(page, tub);
    await page.getByRole('heading', { level: 1 }).getByRole('link').click();
    await press(page, 'It was the pre-lay shed');
    await expect(page.getByText(/shed whole, pre-lay/).last()).toBeVisible();
  });

  test('a shed that cannot have been the pre-lay shed is asked about', async ({ page }) => {
    await press(page, 'Shed');
    await press(page, 'It is the pre-lay shed');
    await press(page, /^Whole/);
    await expect(page.getByText(/No ovulation on record.*Pre-lay all the same\?/)).toBeVisible();
    await press(page, 'Go back');
    expect(await records(page, 'shed')).toEqual([]);
  });

  test('signs, the nest box and the end of a season are two taps behind “More”', async ({
    page,
  }) => {
    await press(page, 'More');
    await press(page, 'Sign');
    await press(page, 'sign: glow');
    await expect(written(page, 'sign: glow')).toBeVisible();
    await press(page, 'More');
    await press(page, 'Nest box in');
    await expect(written(page, 'nest box in')).toBeVisible();
    await press(page, 'More');
    await press(page, 'Nest box out');
    await expect(written(page, 'nest box out')).toBeVisible();
    await press(page, 'More');
    await press(page, 'End her season');
    await press(page, 'season over: year off');
    await expect(written(page, 'season over: year off')).toBeVisible();
  });
});

test.describe('from ovulation to eggs', () => {
  test.use({ timezoneId: 'Europe/Berlin', serviceWorkers: 'block' });
  let now = '2026-03-02T22:00:00+01:00';
  let served: Served;
  test.beforeAll(async () => {
    served = await serve({ beforeDesk: () => clockFrom(now) });
  });
  test.afterAll(() => served.stop());

  async function comeBack(page: Page, moment: string): Promise<void> {
    now = moment;
    await page.addInitScript({ content: clockFrom(moment) });
    await page.reload();
  }

  test('the last empty look bounds when they were laid', async ({ page }) => {
    await page.addInitScript({ content: clockFrom(now) });
    await beginWithThree(page, served.url);
    await walkToSnake(page, 'Marrow');
    await press(page, 'More');
    await press(page, 'Ovulation');
    await press(page, /^Seen at its peak/);
    await expect(page.getByText('Ovulated, tonight')).toBeVisible();

    // Eggs come 40–60 days after ovulation: one looks from day 40. Common practice, no source.
    await comeBack(page, '2026-04-18T22:00:00+02:00');
    await expect(page.getByText('Look for eggs')).toBeVisible();
    await press(page, /^No eggs yet/);
    await expect(written(page, 'no eggs yet')).toBeVisible();

    await comeBack(page, '2026-04-19T21:30:00+02:00');
    await press(page, /^Eggs/);
    for (let good = 0; good < 6; good += 1) await press(page, 'Good: one more');
    await press(page, 'Slugs: one more');
    await press(page, /^Clutch/);
    await typeNumber(page, '640');
    await press(page, 'Back to the eggs');
    await press(page, 'Incubator');
    await page.reload();
    await press(page, /^Eggs/);
    await expect(page.getByText('Do not turn the eggs.')).toBeVisible();
    await press(page, /^Write/);
    await expect(written(page, 'laid: 6 good, 1 slugs')).toBeVisible();
    await expect(page.getByText('Laid, tonight')).toBeVisible();

    const { records: all } = await backUp(page);
    const laid = all.find(({ type }) => type === 'laid');
    expect(laid).toMatchObject({
      good: 6,
      slugs: 1,
      clutchMassG: 640,
      care: 'incubator',
      precision: 'between',
      notBefore: '2026-04-18T22:00:00+02:00',
    });
    expect(laid?.['unsure']).toBeUndefined();
    expect(laid?.['clutch']).toMatch(/^c-/);
  });
});
