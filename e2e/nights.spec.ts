import { expect, test, type Page } from '@playwright/test';
import { clockFrom } from './clock-from.ts';
import { backUp, beginWithThree, walkTo, walkToSnake, written } from './keeper.ts';
import { serve, type Served } from './serve.ts';

// The clocks of Berlin go from 02:00 to 03:00 on 29 March 2026, and from 03:00 back to 02:00 on
// 25 October 2026. Source: Directive 2000/84/EC, last Sunday of March and October, 01:00 UTC.

test.use({ timezoneId: 'Europe/Berlin', serviceWorkers: 'block' });

let now: string;
let served: Served;
test.beforeAll(async () => {
  served = await serve({ beforeDesk: () => clockFrom(now) });
});
test.afterAll(() => served.stop());

/** Opens the app again at another moment. */
async function comeBack(page: Page, moment: string): Promise<void> {
  now = moment;
  await page.addInitScript({ content: clockFrom(moment) });
  await page.reload();
}

async function refuse(page: Page): Promise<void> {
  await page.getByRole('button', { name: /^Refused/ }).click();
  await written(page, 'Marrow refused').waitFor();
}

/** The nights of all refusals in the history of the snake in view, newest first. */
async function nightsOfRefusals(page: Page, howMany: number): Promise<readonly string[]> {
  await page.getByRole('heading', { level: 1 }).getByRole('link').click();
  const lines = page.getByRole('listitem').filter({ hasText: 'refused 1 small rat' });
  await expect(lines).toHaveCount(howMany);
  return (await lines.allInnerTexts()).map((line) => line.split('\n')[0] ?? '');
}

for (const { change, evening, day, moments } of [
  {
    change: 'the clocks go forward',
    evening: 'Sat 28 Mar',
    day: '28 Mar 2026',
    moments: [
      ['2026-03-28T23:40:00+01:00', '2026-03-28T23:40'],
      ['2026-03-29T00:20:00+01:00', '2026-03-29T00:20'],
      // Twenty minutes later than 01:50.
      ['2026-03-29T01:50:00+01:00', '2026-03-29T01:50'],
      ['2026-03-29T03:10:00+02:00', '2026-03-29T03:10'],
    ],
  },
  {
    change: 'the clocks go back',
    evening: 'Sat 24 Oct',
    day: '24 Oct 2026',
    moments: [
      ['2026-10-24T23:40:00+02:00', '2026-10-24T23:40'],
      ['2026-10-25T00:20:00+02:00', '2026-10-25T00:20'],
      // Half past two comes twice.
      ['2026-10-25T02:30:00+02:00', '2026-10-25T02:30'],
      ['2026-10-25T02:10:00+01:00', '2026-10-25T02:10'],
    ],
  },
] as const) {
  test(`all of a night when ${change} belongs to its evening`, async ({ page }) => {
    now = moments[0][0];
    await page.addInitScript({ content: clockFrom(now) });
    await beginWithThree(page, served.url);
    await walkToSnake(page, 'Marrow');
    for (const [moment] of moments) {
      await comeBack(page, moment);
      await expect(page.getByLabel('Write it to')).toContainText(`${evening}, now`);
      await refuse(page);
    }
    expect(await nightsOfRefusals(page, 4)).toEqual(moments.map(() => day));
    const { records } = await backUp(page);
    const offers = records.filter(({ type }) => type === 'meal-offered');
    // In the order in which they were made, each with the offset of its own moment.
    expect(offers.map(({ at }) => [at.slice(0, 16), at.slice(-6)])).toEqual(
      moments.map(([moment, local]) => [local, moment.slice(-6)]),
    );
    await walkTo(page, '/tonight');
    await expect(page.getByText(`Night of ${evening}`)).toBeVisible();
  });
}

test('a record written to an earlier night across the change keeps that night', async ({
  page,
}) => {
  now = '2026-03-30T21:30:00+02:00';
  await page.addInitScript({ content: clockFrom(now) });
  await beginWithThree(page, served.url);
  await walkToSnake(page, 'Marrow');
  for (const night of ['Sat 28 Mar', 'Sun 29 Mar']) {
    await page.getByLabel('Write it to').selectOption({ label: night });
    await refuse(page);
  }
  expect(await nightsOfRefusals(page, 2)).toEqual(['29 Mar 2026', '28 Mar 2026']);
  const { records } = await backUp(page);
  const offers = records.filter(({ type }) => type === 'meal-offered');
  expect(offers.map(({ at }) => at)).toEqual([
    '2026-03-28T21:00:00+01:00',
    '2026-03-29T21:00:00+02:00',
  ]);
});
