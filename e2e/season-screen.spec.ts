import { expect, test, type Page } from '@playwright/test';
import { fitsWidth, passesAxe } from './access-check.ts';
import { clockFrom } from './clock-from.ts';
import { darkBox } from './print/measure.ts';
import { printToPdf } from './print/print-labels.ts';
import { rasterPdf } from './print/raster.ts';
import { inEveryLight } from './room-light.ts';
import { serve, type Served } from './serve.ts';

// In March every kind of mark and window is on the strip.
const march = clockFrom('2027-03-10T20:00:00Z');

let served: Served;
test.beforeAll(async () => {
  served = await serve({ beforeDesk: () => march });
});
test.afterAll(() => served.stop());

// The desk's script must come from the server, which sets its clock, and not from a cache.
test.use({ serviceWorkers: 'block', contextOptions: { reducedMotion: 'reduce' } });

test.beforeEach(async ({ page }) => {
  await page.addInitScript({ content: march });
  await page.goto(served.url);
  await page.getByRole('button', { name: /Look round the demo/ }).click();
  await page.getByRole('link', { name: 'The season at a glance' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Season' })).toBeVisible();
  await expect(page.locator('a.lane').first()).toBeVisible();
});

const namesOn = (page: Page) => page.locator('a.lane strong').allInnerTexts();
const placesOn = (page: Page) => page.locator('a.lane .lane-place').allInnerTexts();

test('the strip is in the order that was chosen last, also after a reload', async ({ page }) => {
  const nearest = await namesOn(page);
  await page.getByRole('button', { name: 'Rack order' }).click();
  const places = await placesOn(page);
  expect(places).toEqual(places.toSorted((a, b) => a.localeCompare(b, 'en', { numeric: true })));
  expect((await namesOn(page)).toSorted()).toEqual(nearest.toSorted());
  await page.reload();
  await expect(page.getByRole('button', { name: 'Rack order' })).toHaveAttribute(
    'aria-pressed',
    'true',
  );
  await expect.poll(() => placesOn(page)).toEqual(places);
});

test('months and cords scroll together, and the names stay where they are', async ({ page }) => {
  const label = page.locator('a.lane strong').first();
  const before = await label.boundingBox();
  await page.locator('.strip-scroll').evaluate((box) => {
    box.scrollLeft = 40;
  });
  await expect.poll(() => page.locator('.strip-head').evaluate((box) => box.scrollLeft)).toBe(40);
  expect((await label.boundingBox())?.x).toBeCloseTo(before?.x ?? NaN, 0);
});

test('a tap leads to her page, where the same windows stand in words with their reasons', async ({
  page,
}) => {
  const lane = page.locator('a.lane', { hasText: 'pre-lay shed' }).first();
  const next = await lane.locator('.lane-next').innerText();
  await lane.click();
  await expect(page.getByRole('heading', { level: 2, name: 'Season', exact: true })).toBeVisible();
  const coming = page.getByRole('list', { name: 'Coming' });
  await expect(coming.getByText(new RegExp(next.trim(), 'i'))).toBeVisible();
  await expect(coming.getByText(/^From ovulation/).first()).toBeVisible();
  await page.getByText(/^Since .* Why$/).click();
  await expect(page.getByText(/^Ovulation (seen|worked out)/)).toBeVisible();
  await expect(page.getByRole('img', { name: /^\d+ scans/ })).toBeVisible();
  await page.getByText('The same as a table').first().click();
  await expect(page.getByRole('columnheader', { name: 'Largest follicle' })).toBeVisible();
});

test('a reader who sees no picture gets every female and window in a table', async ({ page }) => {
  await page.getByText('The same as a table').click();
  const names = await namesOn(page);
  for (const name of names) {
    await expect(page.getByRole('rowheader', { name: new RegExp(`^${name},`) })).toBeVisible();
  }
  await expect(page.getByRole('cell', { name: /Eggs .* most likely/ }).first()).toBeVisible();
});

test('strip, key and table pass axe in every light and fit a narrow phone', async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 640 });
  await page.getByText('how to read it').click();
  await page.getByText('The same as a table').click();
  await fitsWidth(page);
  await inEveryLight(page, () => passesAxe(page));
});

// ISO 216 A4 and ANSI A, on their long side. Unit: mm.
for (const { paper, width, height } of [
  { paper: 'A4', width: 297, height: 210 },
  { paper: 'Letter', width: 279.4, height: 215.9 },
]) {
  test(`the demo’s season is one page of ${paper}, black on white, within its margins`, async ({
    page,
  }) => {
    const pdf = await printToPdf(page, `Print on ${paper}`);
    const pages = await rasterPdf(pdf, 72);
    expect(pages).toHaveLength(1);
    const [sheet] = pages;
    if (!sheet) throw new Error('Nothing was printed.');
    expect(Math.abs(sheet.pageMm.width - width)).toBeLessThan(1);
    expect(Math.abs(sheet.pageMm.height - height)).toBeLessThan(1);
    const dark = darkBox(sheet, { x: 0, y: 0, width, height });
    if (!dark) throw new Error('The page is white.');
    // Most printers leave a few millimetres at each edge white: common practice, no source.
    expect(Math.min(dark.x, dark.y)).toBeGreaterThan(7);
    expect(dark.x + dark.width).toBeLessThan(width - 7);
    expect(dark.y + dark.height).toBeLessThan(height - 7);
  });
}
