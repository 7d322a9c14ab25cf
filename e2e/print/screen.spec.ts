import { rm } from 'node:fs/promises';
import { expect, test } from '@playwright/test';
import { LABEL_FORMATS } from '../../src/domain/labels/formats.ts';
import { paginate } from '../../src/domain/labels/pages.ts';
import { fitsWidth, passesAxe } from '../access-check.ts';
import { buildLabelPage, openLabelPage } from './label-page.ts';
import { boxAround, darkBox, expectedQr } from './measure.ts';
import { chooseFormat, printToPdf } from './print-labels.ts';
import { rasterPdf } from './raster.ts';
import { readCodes } from './read-codes.ts';
import { subjectsFor } from './subjects.ts';

let folder = '';
test.beforeAll(async () => {
  folder = await buildLabelPage();
});
test.afterAll(() => rm(folder, { recursive: true, force: true }));

const format = LABEL_FORMATS.find(({ id }) => id === 'a4-24-64x34')!;
const PIXEL_MM = 25.4 / 300;

test('a half-used sheet is printed from the tapped label on, and remembered', async ({ page }) => {
  await openLabelPage(page, folder, '?count=5');
  await chooseFormat(page, format);
  await page.getByText('A full sheet').click();
  await page.getByRole('radio', { name: 'Label 20', exact: true }).check();
  const [raster] = await rasterPdf(await printToPdf(page, /^Print 5 labels on 1 sheet/), 300);

  const tubs = subjectsFor(5).filter(({ kind }) => kind === 'tub');
  const [cells = []] = paginate(tubs, format, 20);
  expect(cells[0]?.cell).toBe(19);
  for (const filled of cells) {
    expect(darkBox(raster!, boxAround(expectedQr(filled, format)))).toBeDefined();
  }
  const used = expectedQr({ ...cells[0]!, cell: 18 }, format);
  expect(darkBox(raster!, boxAround(used))).toBeUndefined();

  await page.getByRole('button', { name: 'Yes' }).click();
  await expect(page.locator('body')).toHaveAttribute('data-printed', `5 of ${format.name}`);
  await page.reload();
  await expect(page.getByText('A full sheet')).toBeVisible();
});

test('a printer that is off is put right by what the keeper enters', async ({ page }) => {
  await openLabelPage(page, folder, '?count=1');
  await chooseFormat(page, format);
  await page.getByText('Printer test').click();
  await page.getByLabel('Move right (mm)').fill('1.5');
  await page.getByLabel('Move down (mm)').fill('-0.5');
  await page.getByLabel('Move down (mm)').blur();
  const [raster] = await rasterPdf(await printToPdf(page, /^Print 1 label/), 300);

  const [cells = []] = paginate(subjectsFor(1).slice(0, 1), format, 1);
  const qr = expectedQr(cells[0]!, format);
  const moved = { ...qr, x: qr.x + 1.5, y: qr.y - 0.5 };
  const dark = darkBox(raster!, boxAround(moved))!;
  expect(Math.abs(dark.x - moved.x)).toBeLessThanOrEqual(PIXEL_MM);
  expect(Math.abs(dark.y - moved.y)).toBeLessThanOrEqual(PIXEL_MM);
});

test('the test page is one page, and its ruler is 100 mm long', async ({ page }) => {
  await openLabelPage(page, folder);
  await chooseFormat(page, format);
  await page.getByText('Printer test').click();
  const rasters = await rasterPdf(await printToPdf(page, 'Print the test page'), 300);
  expect(rasters).toHaveLength(1);
  // Beyond the hundredth millimetre there is white again, up to the label's own edge.
  const ruler = darkBox(rasters[0]!, { x: 54.5, y: 98.9, width: 101.5, height: 1.4 })!;
  expect(Math.abs(ruler.width - 100)).toBeLessThanOrEqual(3 * PIXEL_MM);
});

test('only the labels are printed, and nothing breaks the content policy', async ({ page }) => {
  const complaints: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  await openLabelPage(page, folder, '?count=2');
  await chooseFormat(
    page,
    LABEL_FORMATS.find(({ id }) => id === 'roll-50x30')!,
  );
  const rasters = await rasterPdf(await printToPdf(page, /^Print 2 labels$/), 203.2);
  expect(rasters).toHaveLength(2);
  await page.emulateMedia({ media: 'print' });
  await expect(page.getByRole('heading', { name: 'Print labels' })).toBeHidden();
  await expect(page.getByRole('button')).toHaveCount(0);
  expect(complaints).toEqual([]);
});

test('a whole sheet held before the camera is read at once', async ({ page }) => {
  await openLabelPage(page, folder, '?count=24');
  await chooseFormat(page, format);
  const [raster] = await rasterPdf(await printToPdf(page, /^Print 24/), 300);
  const read = new Set((await readCodes(raster!)).map(({ text }) => text));
  const tubs = subjectsFor(24).filter(({ kind }) => kind === 'tub');
  expect(tubs.filter(({ code }) => !read.has(code))).toEqual([]);
});

for (const [width, height] of [
  [390, 844],
  [360, 640],
] as const) {
  test(`the screen is usable at ${width} × ${height}`, async ({ page }) => {
    await page.setViewportSize({ width, height });
    await openLabelPage(page, folder);
    for (const fold of await page.locator('summary').all()) await fold.click();
    await fitsWidth(page);
    await passesAxe(page);
  });
}
