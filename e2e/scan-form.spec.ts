import { expect, test } from '@playwright/test';
import { countTaps, press, records, scan, taps, typeNumber } from './at-tub.ts';
import { beginWithThree, walkToSnake, written } from './keeper.ts';

// Follicles, measured and felt. Taps are counted from the tub's own screen.

test.beforeEach(async ({ page, baseURL }) => {
  await countTaps(page);
  await beginWithThree(page, baseURL ?? '');
  await walkToSnake(page, 'Marrow');
});

test('two axes of two digits take eight taps at most, with counts if they are wanted', async ({
  page,
}) => {
  const count = await taps(page, async () => {
    await scan(page, '18', '16');
    await expect(written(page, '18 × 16 mm')).toBeVisible();
  });
  expect(count).toBeLessThanOrEqual(8);
  await press(page, /^Follicles/);
  await typeNumber(page, '19');
  await press(page, 'Next: second axis');
  await typeNumber(page, '17.5');
  await press(page, 'Counts');
  await press(page, 'Left: one more');
  await press(page, 'Left: one more');
  await press(page, 'Right: one less');
  await page.reload();
  await press(page, /^Follicles/);
  await press(page, 'Counts');
  await press(page, 'Write 19 × 17.5 mm');
  await expect(written(page, '19 × 17.5 mm')).toBeVisible();
  const [plain, counted] = await records(page, 'follicles-scanned');
  expect(plain?.['found']).toEqual({ method: 'ultrasound', largestMm: [18, 16] });
  expect(counted?.['found']).toEqual({
    method: 'ultrasound',
    largestMm: [19, 17.5],
    left: 2,
    right: 0,
  });
});

test('centimetres in one axis are noticed, and the other axis stays', async ({ page }) => {
  await scan(page, '1.8', '16');
  await expect(page.getByText(/one axis is far smaller .* Was it centimetres\?/)).toBeVisible();
  await press(page, /^Write 18 × 16 mm/);
  await expect(written(page, '18 × 16 mm')).toBeVisible();
  const [scanned] = await records(page, 'follicles-scanned');
  expect(scanned?.['found']).toEqual({ method: 'ultrasound', largestMm: [18, 16] });
});

test('a size that no follicle has is not written, and what was meant is one tap away', async ({
  page,
}) => {
  await scan(page, '180', '160');
  await expect(page.getByText(/180 mm cannot be a follicle/)).toBeVisible();
  await press(page, /^Write 18 × 16 mm/);
  await expect(written(page, '18 × 16 mm')).toBeVisible();
});

test('what the fingers feel is picked from a scale, which stands ready the next time', async ({
  page,
}) => {
  await press(page, /^Follicles/);
  await press(page, 'Felt');
  await press(page, /^round lumps/);
  await expect(written(page, 'felt: round lumps')).toBeVisible();
  const count = await taps(page, async () => {
    await press(page, /^Follicles/);
    await press(page, /^large lumps/);
    await expect(written(page, 'felt: large lumps')).toBeVisible();
  });
  expect(count).toBe(2);
  await expect(page.getByText('Building, felt about 30 mm, tonight')).toBeVisible();
});
