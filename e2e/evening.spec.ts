import { expect, test, type Page } from '@playwright/test';
import { showToCamera, useCanvasCamera } from './camera/canvas-camera.ts';
import { cameraFrame } from './camera/frames.ts';
import { qrPrint } from './camera/print.ts';
import { walkTo, walkToSnake, beginWithThree } from './keeper.ts';
import { openDemo } from './screens.ts';

// An evening in the room, with taps counted: the budgets of taps are what makes it worth writing down.

declare global {
  interface Window {
    taps: number;
  }
}

test.beforeEach(async ({ page }) => {
  await page.addInitScript(() => {
    window.taps = 0;
    addEventListener('click', () => (window.taps += 1), true);
  });
});

const written = (page: Page) => page.getByRole('status').filter({ hasText: /\S/ }).first();

/** The taps that the work takes, from the tub's screen to the record. */
async function taps(page: Page, work: () => Promise<void>): Promise<number> {
  const before = await page.evaluate(() => window.taps);
  await work();
  return (await page.evaluate(() => window.taps)) - before;
}

async function typeDigits(page: Page, digits: string): Promise<void> {
  for (const digit of digits) {
    await page.getByRole('button', { name: digit, exact: true }).click();
  }
}

test.describe('at one tub', () => {
  test.beforeEach(async ({ page, baseURL }) => {
    await beginWithThree(page, baseURL ?? '');
    await walkToSnake(page, 'Marrow');
  });

  test('a planned meal takes one tap, and undo takes it back', async ({ page }) => {
    const count = await taps(page, async () => {
      await page.getByRole('button', { name: /^Ate/ }).click();
      await expect(written(page)).toContainText('Marrow ate 1');
    });
    expect(count).toBe(1);
    await walkTo(page, '/tonight');
    await expect(page.getByRole('link', { name: /Marrow.*Feed/ })).toHaveCount(0);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect(page.getByRole('link', { name: /Marrow.*Feed/ })).toHaveCount(1);
  });

  test('a weight of four digits takes six taps', async ({ page }) => {
    const count = await taps(page, async () => {
      await page.getByRole('button', { name: 'Weight' }).click();
      await typeDigits(page, '1532');
      await page.getByRole('button', { name: 'Write 1532 g' }).click();
      await expect(written(page)).toContainText('weighed 1,532 g');
    });
    expect(count).toBeLessThanOrEqual(6);
  });

  test('a digit too many is asked about, and the likely weight is one tap away', async ({
    page,
  }) => {
    await page.getByRole('button', { name: 'Weight' }).click();
    await typeDigits(page, '15320');
    await page.getByRole('button', { name: /^Write/ }).click();
    await expect(page.getByText(/15,320\sg cannot be a ball python/)).toBeVisible();
    await page.getByRole('button', { name: /Write 1,532\sg/ }).click();
    await expect(written(page)).toContainText('1,532 g');
  });

  test('a digit missing is asked about, and may be right', async ({ page }) => {
    await page.getByRole('button', { name: 'Weight' }).click();
    await typeDigits(page, '153');
    await page.getByRole('button', { name: /^Write/ }).click();
    await expect(page.getByText(/a digit missing\?/)).toBeVisible();
    await expect(page.getByRole('button', { name: /Write 1,530\sg/ })).toBeVisible();
    await page.getByRole('button', { name: 'Yes, write it' }).click();
    await expect(written(page)).toContainText('153 g');
  });

  test('a half-typed weight survives a reload', async ({ page }) => {
    await page.getByRole('button', { name: 'Weight' }).click();
    await typeDigits(page, '15');
    await page.reload();
    await page.getByRole('button', { name: 'Weight' }).click();
    await expect(page.getByLabel('Weight', { exact: true })).toHaveText('15');
  });

  test('a whole shed takes two taps', async ({ page }) => {
    const count = await taps(page, async () => {
      await page.getByRole('button', { name: 'Shed' }).click();
      await page.getByRole('button', { name: 'Whole' }).click();
      await expect(written(page)).toContainText('shed whole');
    });
    expect(count).toBe(2);
  });

  test('a follicle scan of two axes takes eight taps at most', async ({ page }) => {
    const count = await taps(page, async () => {
      await page.getByRole('button', { name: 'Follicles' }).click();
      await typeDigits(page, '18');
      await page.getByRole('button', { name: 'Next: second axis' }).click();
      await typeDigits(page, '16');
      await page.getByRole('button', { name: 'Write 18 × 16 mm' }).click();
      await expect(written(page)).toContainText('18 × 16 mm');
    });
    expect(count).toBeLessThanOrEqual(8);
  });

  test('a pair is put together, a lock seen in one tap, and he is taken out', async ({ page }) => {
    await page.getByRole('button', { name: 'Pair' }).click();
    await page.getByRole('button', { name: /^Flint/ }).click();
    await expect(page.getByText(/together since/)).toBeVisible();
    const count = await taps(page, async () => {
      await page.getByRole('button', { name: /^Lock/ }).click();
      await expect(written(page)).toContainText('Lock seen');
    });
    expect(count).toBe(1);
    await walkTo(page, '/racks');
    await page.getByRole('link', { name: /^Rack B/ }).click();
    await page.getByRole('link', { name: /B2-1/ }).click();
    await expect(page.getByText(/Flint is on a visit with Marrow in B1-1/)).toBeVisible();
    await page.getByRole('link', { name: 'Go to Flint' }).click();
    await page.getByRole('button', { name: /^Take out/ }).click();
    await expect(written(page)).toContainText('Flint taken out');
  });

  test('a meal left overnight is open until it is settled', async ({ page }) => {
    await page.getByRole('button', { name: 'Other meal' }).click();
    await page.getByRole('button', { name: 'Left overnight' }).click();
    await expect(written(page)).toContainText('left overnight');
    await walkTo(page, '/tonight');
    await page.getByRole('link', { name: /Marrow.*left: eaten\?/ }).click();
    await page.getByRole('button', { name: /^Not eaten/ }).click();
    await expect(written(page)).toContainText('meal left was not eaten');
    await expect(page.getByText('the meal left was refused')).toBeVisible();
  });

  test('what is passed over with a reason leaves the list, and says why', async ({ page }) => {
    await page.getByRole('button', { name: 'More' }).click();
    await page.getByRole('button', { name: /^Pass over: Feed/ }).click();
    await page.getByLabel('Why').fill('scanned tomorrow');
    await page.getByRole('button', { name: 'Write', exact: true }).click();
    await expect(page.getByText('passed over: scanned tomorrow')).toBeVisible();
    await walkTo(page, '/tonight');
    await expect(page.getByRole('link', { name: /Flint/ })).toBeVisible();
    await expect(page.getByRole('link', { name: /Marrow.*Feed/ })).toHaveCount(0);
  });

  test('an older record is struck with a reason and stays readable', async ({ page }) => {
    await page.getByRole('button', { name: /^Refused/ }).click();
    await expect(written(page)).toContainText('refused');
    await page.getByRole('heading', { level: 1 }).getByRole('link').click();
    await page.getByRole('button', { name: /^Strike refused/ }).click();
    await page.getByLabel('Why').fill('wrong snake');
    await page.getByRole('button', { name: 'Strike it out' }).click();
    await expect(page.getByText('struck: wrong snake')).toBeVisible();
  });
});

test('a rack that ate as planned but for one takes two taps and one more', async ({ page }) => {
  await openDemo(page);
  await walkTo(page, '/racks');
  await page.getByRole('link', { name: /^Rack H/ }).click();
  const count = await taps(page, async () => {
    await page.getByRole('link', { name: /Feed this rack/ }).click();
    await page.getByRole('button', { name: /ate$/ }).first().click();
    await page.getByRole('button', { name: /^Write \d+ meals/ }).click();
    await expect(written(page)).toContainText(/\d+ meals written, 1 exceptions?/);
  });
  expect(count).toBe(3);
});

test('forty tubs are made and labelled in one go', async ({ page, baseURL }) => {
  await page.goto(baseURL ?? '');
  await page.getByRole('button', { name: /Begin my collection/ }).click();
  await page.getByLabel('Letter on the rack').fill('G');
  await page.getByRole('button', { name: 'Make 40 tubs' }).click();
  await expect(page.getByRole('link', { name: /G10-4/ })).toBeVisible();
  await page.getByRole('link', { name: 'Print labels' }).click();
  await expect(page.getByRole('button', { name: /^Print 40 labels/ })).toBeVisible();
});

test('the demo is erased in one tap and leaves nothing behind', async ({ page }) => {
  await openDemo(page);
  await page.getByRole('button', { name: 'Erase the demo' }).click();
  await expect(page.getByRole('button', { name: /Begin my collection/ })).toBeVisible();
  await page.getByRole('button', { name: /Begin my collection/ }).click();
  await walkTo(page, '/find');
  await expect(page.getByText('Nothing by that name')).toBeVisible();
});

test('in the round, a label that slips into view takes no form away and no tap', async ({
  page,
}) => {
  await useCanvasCamera(page);
  await openDemo(page);
  await walkTo(page, '/labels');
  await expect(page.locator('.labels-code').nth(2)).toBeAttached();
  const codes = await page.locator('.labels-code').allTextContents();
  const label = (index: number) =>
    cameraFrame(qrPrint((codes[index] ?? '').replaceAll(' ', '')), { scale: 6 });
  await walkTo(page, '/round');
  await showToCamera(page, label(0));
  await expect(page.getByText('A1-1', { exact: true })).toBeVisible();
  await page.getByRole('button', { name: 'Weight' }).click();
  await typeDigits(page, '17');
  await showToCamera(page, label(1));
  await typeDigits(page, '20');
  await expect(page.getByLabel('Weight', { exact: true })).toHaveText('1720');
  await page.getByRole('button', { name: 'Close' }).click();
  await showToCamera(page, label(2));
  await expect(page.getByText('A2-1', { exact: true })).toBeVisible();
  const hand = page.locator('.capture-hand');
  await expect(hand).toHaveCSS('pointer-events', 'auto');
});
