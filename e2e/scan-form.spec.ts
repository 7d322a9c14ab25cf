import { expect, test, type Page } from '@playwright/test';
import { clockFrom } from './clock-from.ts';
import { backUp, beginWithThree, walkTo, walkToSnake, written } from './keeper.ts';
import { openDemo } from './screens.ts';
import { serve, type Served } from './serve.ts';

// What a season is written down with at the tub. Taps are counted from the tub's own screen.

declare global {
  interface Window {
    taps: number;
  }
}

const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).click();

async function typeDigits(page: Page, digits: string): Promise<void> {
  for (const digit of digits) {
    const name = digit === '.' ? 'Point' : digit;
    await page.getByRole('button', { name, exact: true }).click();
  }
}

async function scan(page: Page, first: string, second: string): Promise<void> {
  await press(page, /^Follicles/);
  await typeDigits(page, first);
  await press(page, 'Next: second axis');
  await typeDigits(page, second);
  await press(page, `Write ${first} × ${second} mm`);
}

async function taps(page: Page, work: () => Promise<void>): Promise<number> {
  const before = await page.evaluate(() => window.taps);
  await work();
  return (await page.evaluate(() => window.taps)) - before;
}

/** The records of a kind, oldest first. */
async function records(page: Page, type: string) {
  const backup = await backUp(page);
  return backup.records.filter((record) => record.type === type);
}

/** An earlier night in the picker of the tub's screen. */
const toNight = (page: Page, nightsAgo: number) =>
  page.getByLabel('Write it to').selectOption({ index: nightsAgo });

test.describe('at one tub', () => {
  let tub: string;
  test.beforeEach(async ({ page, baseURL }) => {
    await page.addInitScript(() => {
      window.taps = 0;
      addEventListener('click', () => (window.taps += 1), true);
    });
    await beginWithThree(page, baseURL ?? '');
    tub = await walkToSnake(page, 'Marrow');
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
    await typeDigits(page, '19');
    await press(page, 'Next: second axis');
    await typeDigits(page, '17.5');
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

  test('near ovulation a look is one tap, feeding two, and “seen late” knows since when', async ({
    page,
  }) => {
    await scan(page, '38', '37');
    await expect(page.getByText('Look: has she ovulated?')).toBeVisible();
    await press(page, 'Meal');
    await press(page, /^Refused/);
    await expect(written(page, 'refused')).toBeVisible();
    const count = await taps(page, async () => {
      await press(page, /^Not yet/);
      await expect(written(page, 'no ovulation yet')).toBeVisible();
    });
    expect(count).toBe(1);
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
    await typeDigits(page, '640');
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

/** A picture as a phone takes it, larger than what is kept. */
async function aPicture(page: Page, width: number, height: number): Promise<Buffer> {
  const text = await page.evaluate(
    ([w, h]) => {
      const canvas = document.createElement('canvas');
      canvas.width = w ?? 1;
      canvas.height = h ?? 1;
      const pen = canvas.getContext('2d');
      pen?.fillRect((w ?? 1) / 4, 0, 40, h ?? 1);
      return canvas.toDataURL('image/png').split(',')[1] ?? '';
    },
    [width, height],
  );
  return Buffer.from(text, 'base64');
}

async function keepPicture(page: Page): Promise<void> {
  await page.getByLabel('Keep the picture').setInputFiles({
    name: 'scan.png',
    mimeType: 'image/png',
    buffer: await aPicture(page, 2_560, 1_440),
  });
  await expect(page.getByRole('button', { name: 'Picture to keep' })).toBeVisible();
}

/** Until the service worker answers for this page. */
async function controlled(page: Page): Promise<void> {
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (navigator.serviceWorker.controller) return;
    await new Promise((resolve) => {
      navigator.serviceWorker.addEventListener('controllerchange', resolve, { once: true });
    });
  });
}

const widthOfThumbnail = (page: Page) =>
  page
    .getByRole('img', { name: /^Picture/ })
    .first()
    .evaluate((image: HTMLImageElement) => image.naturalWidth);

async function keptPictures(page: Page, database: string): Promise<number> {
  return page.evaluate(
    (name) =>
      new Promise<number>((resolve, reject) => {
        const request = indexedDB.open(name);
        request.addEventListener('error', () => reject(request.error ?? new Error(name)));
        request.addEventListener('success', () => {
          const counted = request.result.transaction('photos').objectStore('photos').count();
          counted.addEventListener('success', () => {
            request.result.close();
            resolve(counted.result);
          });
        });
      }),
    database,
  );
}

async function scanWithPicture(page: Page): Promise<void> {
  await press(page, /^Follicles/);
  await keepPicture(page);
  await typeDigits(page, '18');
  await press(page, 'Next: second axis');
  await typeDigits(page, '16');
  await press(page, 'Write 18 × 16 mm');
  await expect(written(page, '18 × 16 mm')).toBeVisible();
}

test('a picture is kept with its scan, smaller, and is there without a network', async ({
  page,
}) => {
  const served = await serve();
  await beginWithThree(page, served.url);
  await controlled(page);
  const tub = await walkToSnake(page, 'Marrow');
  await scanWithPicture(page);
  await expect(page.getByRole('img', { name: /^Picture/ })).toBeVisible();
  expect(await widthOfThumbnail(page)).toBe(1_280);

  await served.stop();
  await page.reload();
  await page.getByRole('button', { name: /^Picture/ }).click();
  await expect(page.getByRole('dialog').getByRole('img')).toBeVisible();
  expect(await widthOfThumbnail(page)).toBe(1_280);
  await press(page, 'Close');

  const { records: all } = await backUp(page);
  const kept = all.find(({ type }) => type === 'photo-kept');
  expect(kept?.['about']).toBe(all.find(({ type }) => type === 'follicles-scanned')?.id);
  await expect(
    page.getByText(/^1 picture takes 0\.1 MB here\..*without the pictures/),
  ).toBeVisible();

  // Undo takes both back: they were written in one go.
  await walkTo(page, tub);
  await scanWithPicture(page);
  await press(page, 'Undo');
  await expect(written(page, /^Undone/)).toBeVisible();
  const struck = (await backUp(page)).records.filter(({ type }) => type === 'struck');
  expect(struck).toHaveLength(2);
});

test('pictures of the demo are erased with it', async ({ page }) => {
  await openDemo(page);
  await page
    .getByRole('link', { name: /Feed 1/ })
    .first()
    .click();
  await scanWithPicture(page).catch(async () => {
    // Hers may have been larger the last time: then it asks, and the picture is kept all the same.
    await press(page, 'Yes, write it');
  });
  expect(await keptPictures(page, 'nightdrop-demo-photos')).toBe(1);
  await walkTo(page, '/shelf');
  await press(page, 'Erase the demo');
  await expect(page.getByRole('button', { name: 'Begin my collection' })).toBeVisible();
  expect(await keptPictures(page, 'nightdrop-demo-photos')).toBe(0);
});
