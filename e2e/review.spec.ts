import { expect, test, type Locator, type Page } from '@playwright/test';
import { fitsWidth, passesAxe } from './access-check.ts';
import { darkBox } from './print/measure.ts';
import { printToPdf } from './print/print-labels.ts';
import { rasterPdf } from './print/raster.ts';
import { inEveryLight } from './room-light.ts';
import { openDemo } from './screens.ts';
import { to } from './screen-stop.ts';

test.use({ contextOptions: { reducedMotion: 'reduce' } });

test.beforeEach(async ({ page }) => {
  await openDemo(page);
  await to('/review')(page);
  await expect(page.getByRole('heading', { name: 'From pairing to eggs' })).toBeVisible();
});

const section = (page: Page, title: string) =>
  page.locator('section').filter({ has: page.getByRole('heading', { name: title }) });

/** What a strip shows, in per cent: where its post stands, and where its band begins and ends. */
async function drawn(strip: Locator): Promise<{ at: number; low: number; high: number }> {
  const post = (await strip.locator('.review-here').getAttribute('d')) ?? '';
  const band = strip.locator('.review-likely');
  const low = Number(await band.getAttribute('x'));
  const width = Number(await band.getAttribute('width'));
  return { at: Number(/^M([\d.]+) /.exec(post)?.[1]), low, high: low + width };
}

test('it is a step from the shelf and from the season', async ({ page }) => {
  for (const screen of ['/shelf', '/season']) {
    await to(screen)(page);
    await page.getByRole('link', { name: /Season review/ }).click();
    await expect(page.getByRole('heading', { level: 1, name: 'Season review' })).toBeVisible();
  }
});

test('each strip shows what its row and its line of the table say', async ({ page }) => {
  for (const title of ['From pairing to eggs', 'Eggs and young']) {
    const part = section(page, title);
    await part.getByText(`${title} as a table`).click();
    const lines = await part.locator('tbody tr').all();
    const rows = await part.locator('.review-row').all();
    expect(lines).toHaveLength(rows.length);
    for (const [n, line] of lines.entries()) {
      const row = rows[n];
      if (!row) throw new Error('A line of the table has no row.');
      const name = await line.getByRole('rowheader').innerText();
      const [counted = '', share = '', interval = ''] = await line
        .getByRole('cell')
        .allInnerTexts();
      await expect(row).toContainText(name);
      await expect(row).toContainText(counted);
      await expect(row).toContainText(share);
      await expect(row).toContainText(`${interval} likely`);
      const [hits, of] = counted.split(' of ').map(Number);
      const strip = await drawn(row);
      expect(strip.at).toBeCloseTo((100 * (hits ?? NaN)) / (of ?? NaN), 6);
      expect(interval).toBe(`${Math.floor(strip.low)}–${Math.ceil(strip.high - 1e-9)} %`);
    }
  }
});

test('one season is a part of all, and its shares open to how they are counted', async ({
  page,
}) => {
  const eggs = section(page, 'Eggs and young').locator('.review-row').first();
  const countOf = async () => Number(/of (\d+) eggs/.exec(await eggs.innerText())?.[1]);
  const all = await countOf();
  const choice = page.getByRole('combobox', { name: 'Season', exact: true });
  const seasons = (await choice.locator('option').allTextContents()).slice(1);
  expect(seasons.length).toBeGreaterThan(1);
  let sum = 0;
  for (const season of seasons) {
    await choice.selectOption(season);
    await expect(page.getByRole('heading', { name: `Eggs and young ${season}` })).toBeVisible();
    sum += await countOf();
  }
  expect(sum).toBe(all);
  await eggs.getByText('Why', { exact: true }).click();
  await expect(eggs.getByText(/^G \/ E: eggs that were good when laid/)).toBeVisible();
  await expect(eggs.getByText(/Wilson E\.B\. 1927/)).toBeVisible();
});

test('months of refusals stand in the chart as in the table', async ({ page }) => {
  const part = section(page, 'Feeding');
  await part.getByText('The same as a table').click();
  const posts = await part.locator('.months-chart .review-post').all();
  const lines = await part.locator('tbody tr').all();
  expect(lines).toHaveLength(12);
  expect(posts).toHaveLength(12);
  for (const [n, post] of posts.entries()) {
    const [counted = ''] = (await lines[n]?.getByRole('cell').allInnerTexts()) ?? [];
    const [hits, of] = counted.split(' of ').map(Number);
    const height = Number(await post.getAttribute('height'));
    expect(height).toBeCloseTo((60 * (hits ?? NaN)) / (of ?? NaN), 6);
  }
});

test('each female has her line, and a tap leads to her', async ({ page }) => {
  const part = section(page, 'One by one');
  await part.getByText(/^\d+ females$/).click();
  const first = part.getByRole('rowheader').first();
  const name = await first.innerText();
  await first.getByRole('link').click();
  await expect(page.getByRole('heading', { level: 1, name: new RegExp(name) })).toBeVisible();
});

test('pairs with too few young are said to be silent', async ({ page }) => {
  const part = section(page, 'Outcomes and odds');
  await expect(part.getByText(/fewer than 8 young with a known father/)).toBeVisible();
});

test('with all unfolded it passes axe in every light and fits a narrow phone', async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 640 });
  await page.evaluate(() => {
    for (const each of document.querySelectorAll('details')) each.open = true;
  });
  await expect(page.getByText(/Wilson E\.B\. 1927/).first()).toBeVisible();
  await fitsWidth(page);
  await inEveryLight(page, () => passesAxe(page));
});

// ISO 216 A4 and ANSI A, upright. Unit: mm.
for (const { paper, width, height } of [
  { paper: 'A4', width: 210, height: 297 },
  { paper: 'Letter', width: 215.9, height: 279.4 },
]) {
  test(`the sheet on ${paper} is black on white, within its margins`, async ({ page }) => {
    const pages = await rasterPdf(await printToPdf(page, `Print on ${paper}`), 72);
    expect(pages.length).toBeGreaterThan(0);
    for (const sheet of pages) {
      expect(Math.abs(sheet.pageMm.width - width)).toBeLessThan(1);
      expect(Math.abs(sheet.pageMm.height - height)).toBeLessThan(1);
      const dark = darkBox(sheet, { x: 0, y: 0, width, height });
      if (!dark) throw new Error('A page is white.');
      // Most printers leave a few millimetres at each edge white: common practice, no source.
      expect(Math.min(dark.x, dark.y)).toBeGreaterThan(7);
      expect(dark.x + dark.width).toBeLessThan(width - 7);
      expect(dark.y + dark.height).toBeLessThan(height - 7);
    }
    await page.emulateMedia({ media: 'print' });
    const overrun = await page.locator('.review-paper > g').evaluateAll((rows) =>
      rows.flatMap((row) => {
        const boxes = Array.from(row.querySelectorAll('text'), (text) => ({
          words: text.textContent,
          ...text.getBoundingClientRect().toJSON(),
        })).filter(({ words }) => words !== '');
        return boxes.flatMap(({ words, right }, n) =>
          right > (boxes[n + 1]?.left ?? Infinity) ? [words] : [],
        );
      }),
    );
    expect(overrun).toEqual([]);
  });
}
