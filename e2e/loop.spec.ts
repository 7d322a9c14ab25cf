import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test, type Page } from '@playwright/test';
import { LABEL_FORMATS } from '../src/domain/labels/formats.ts';
import type { LabelFormat } from '../src/domain/labels/format.ts';
import { cameraFrame } from './camera/frames.ts';
import { rasterPrint } from './camera/print.ts';
import { y4m } from './camera/y4m.ts';
import { addSnakes, begin, makeRack } from './keeper.ts';
import { chooseFormat, printToPdf } from './print/print-labels.ts';
import { crop, rasterPdf, type GrayRaster } from './print/raster.ts';
import { readCodes } from './print/read-codes.ts';
import { startRealBrowser, type RealBrowser } from './real-browser.ts';

// The main job on real input: a label printed by the app, seen by a camera, opens the tub, one tap
// writes a refusal, the browser dies, and the refusal is there. The network is off all the while.

const DPI = 300;
const sheet = LABEL_FORMATS.find(({ id }) => id === 'a4-24') ?? LABEL_FORMATS[0];

let profile: string;
let browser: RealBrowser | undefined;
test.beforeEach(async () => {
  profile = await mkdtemp(join(tmpdir(), 'keeper-'));
});
test.afterEach(async () => {
  await browser?.kill();
  await rm(profile, { recursive: true, force: true });
});

const heading = (page: Page, name: string | RegExp) =>
  expect(page.getByRole('heading', { level: 1, name })).toBeVisible();

/** A rack of eight tubs with three snakes, all due for a meal. */
async function beginWithEightTubs(page: Page, url: string): Promise<void> {
  await begin(page, url);
  await makeRack(page, 'B', 4, 2);
  await addSnakes(page, [
    'Pumice, f, B1-1, 1650 g',
    'Ferrule, m, B2-1, 820 g',
    'Tansy, f, B3-2, 1430 g',
  ]);
  await heading(page, 'Racks');
}

/** Prints the tub labels to PDF, and gives the first page as a scanner would see it. */
async function printedPage(page: Page, url: string, holds: 'Code only' | 'A link') {
  await page.goto(`${url}#/labels`);
  await heading(page, 'Print labels');
  await page.getByRole('radio', { name: holds }).check();
  await chooseFormat(page, sheet as LabelFormat);
  const pdf = await printToPdf(page, /^Print 8 labels/);
  const [first] = await rasterPdf(pdf, DPI);
  if (!first) throw new Error('The PDF has no page.');
  return first;
}

/** One label cut out of the page, by its place in the print order. */
function labelOn(raster: GrayRaster, index: number): GrayRaster {
  const { left, top, label, gapX, gapY, columns } = sheet as LabelFormat;
  return crop(raster, {
    x: left + (index % columns) * (label.width + gapX),
    y: top + Math.floor(index / columns) * (label.height + gapY),
    ...label,
  });
}

/** A film of a hand that holds a label before the camera, not quite still and not quite straight. */
async function film(label: GrayRaster, file: string): Promise<void> {
  const print = rasterPrint({ width: label.width, height: label.height, gray: label.pixels });
  const frames = Array.from({ length: 12 }, (_, i) =>
    cameraFrame(print, {
      scale: 0.7,
      rotation: 8 + 3 * Math.sin(i),
      tilt: 15,
      blur: 0.8,
      contrast: 0.6,
      noise: 6,
      seed: i + 1,
      offset: [20 * Math.sin(i / 2), 10 * Math.cos(i / 2)],
    }),
  );
  await writeFile(file, y4m(frames, 20));
}

const tonightLine = (page: Page) => page.getByRole('listitem').filter({ hasText: 'Ferrule' });

const offlineReady = (page: Page) =>
  page.waitForFunction(() => navigator.serviceWorker.controller?.state === 'activated');

test('a printed label before a camera opens its tub; a refusal outlives the browser', async ({
  baseURL,
}) => {
  const url = baseURL ?? '';
  browser = await startRealBrowser(profile);
  await beginWithEightTubs(browser.page, url);
  await offlineReady(browser.page);
  const paper = await printedPage(browser.page, url, 'Code only');
  await browser.kill();

  // Labels come in walking order, so the third is B2-1, where Ferrule lives.
  const camera = join(profile, 'camera.y4m');
  await film(labelOn(paper, 2), camera);
  const withCamera = [
    '--use-fake-device-for-media-stream',
    '--use-fake-ui-for-media-stream',
    `--use-file-for-fake-video-capture=${camera}`,
  ];
  browser = await startRealBrowser(profile, withCamera);
  await browser.context.setOffline(true);
  await browser.page.goto(url);
  await heading(browser.page, 'Tonight');
  await expect(tonightLine(browser.page)).toContainText(/Feed 1 \w+ rat/);

  await browser.page.getByRole('link', { name: /Start the round/ }).click();
  await heading(browser.page, /Ferrule/);
  await expect(browser.page.getByText('B2-1', { exact: true })).toBeVisible();
  await browser.page.getByRole('button', { name: /^Refused/ }).click();
  await expect(browser.page.getByRole('status')).toContainText(/Ferrule refused 1 \w+ rat/);
  await browser.kill();

  browser = await startRealBrowser(profile);
  await browser.context.setOffline(true);
  await browser.page.goto(url);
  await heading(browser.page, 'Tonight');
  await expect(browser.page.getByRole('link', { name: /Pumice/ })).toBeVisible();
  await expect(tonightLine(browser.page)).toHaveCount(0);
  await browser.page.goto(`${url}#/find`);
  await browser.page.getByRole('link', { name: /Ferrule/ }).click();
  await expect(browser.page.getByRole('button', { name: /Strike refused 1 \w+ rat/ })).toHaveCount(
    1,
  );
});

test('the link that a phone’s own camera opens leads to the same tub', async ({ baseURL }) => {
  const url = baseURL ?? '';
  browser = await startRealBrowser(profile);
  await beginWithEightTubs(browser.page, url);
  await offlineReady(browser.page);
  const paper = await printedPage(browser.page, url, 'A link');
  const [code] = await readCodes(labelOn(paper, 2));
  expect(code?.text).toMatch(new RegExp(`^${url}#/[0-9A-Z]{7}$`));
  await browser.kill();

  browser = await startRealBrowser(profile);
  await browser.context.setOffline(true);
  await browser.page.goto(code?.text ?? '');
  await heading(browser.page, /Ferrule/);
  await browser.page.getByRole('button', { name: /^Ate/ }).click();
  await expect(browser.page.getByRole('status')).toContainText(/Ferrule ate 1 \w+ rat/);
});

test('a link opened where the records are not says so and begins nothing', async ({ baseURL }) => {
  const url = baseURL ?? '';
  browser = await startRealBrowser(profile);
  await browser.page.goto(`${url}#/000000Z`);
  await expect(browser.page.getByRole('link', { name: /Take in a backup/ })).toBeVisible();
  await browser.page.goto(url);
  await browser.page.reload();
  await expect(browser.page.getByRole('button', { name: /Begin my collection/ })).toBeVisible();
});
