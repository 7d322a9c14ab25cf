import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, expect, test, type Page } from '@playwright/test';
import { browserArgs, findBrowser } from '../browser.ts';
import { showToCamera, useCanvasCamera, type CanvasCameraOptions } from './canvas-camera.ts';
import { cameraFrame } from './frames.ts';
import { qrPrint } from './print.ts';
import { serveScanPage, type ServedPage } from './scan-page.ts';
import { y4m } from './y4m.ts';

let served: ServedPage;
test.beforeAll(async () => {
  served = await serveScanPage();
});
test.afterAll(async () => {
  await served.close();
});

const label = (text: string) => cameraFrame(qrPrint(text), { scale: 4 });

/** Opens the page before such a camera. */
async function visit(page: Page, options?: CanvasCameraOptions): Promise<void> {
  await useCanvasCamera(page, options);
  await page.goto(served.url);
}

test('a label is read, and read on after the next one', async ({ page }) => {
  await visit(page);
  await page.evaluate(() => window.scanPage.open());
  for (const text of ['7KQ2M9X', 'https://example.org/app/#/1234567']) {
    await showToCamera(page, label(text));
    const atMs = await page.evaluate((wanted) => window.scanPage.whenRead(wanted, 5000), text);
    expect(atMs).toBeDefined();
  }
  const texts = await page.evaluate(() => window.scanPage.read.map(({ text }) => text));
  expect(texts).toEqual(['7KQ2M9X', 'https://example.org/app/#/1234567']);
  expect(await page.evaluate(() => window.scanPage.violations)).toEqual([]);
});

test('a label just dealt with is not told of while it stays in view', async ({ page }) => {
  await visit(page);
  await showToCamera(page, label('7KQ2M9X'));
  await page.evaluate(() => window.scanPage.open({ inView: '7KQ2M9X' }));
  await showToCamera(page, label('1234567'));
  await page.evaluate(() => window.scanPage.whenRead('1234567', 5000));
  const texts = await page.evaluate(() => window.scanPage.read.map(({ text }) => text));
  expect(texts).toEqual(['1234567']);
});

test('stopping turns the torch off, releases the camera and empties the box', async ({ page }) => {
  await visit(page, { cameras: [{ id: 'back', name: 'Back', torch: true }] });
  const seen = await page.evaluate(async () => {
    const opened = await window.scanPage.open();
    if (!opened.ok) return opened;
    const { torch, cameraId, cameras, stop } = opened.scanner;
    const set = await torch?.set(true);
    const lit = { set, on: torch?.on, lamp: window.canvasCamera.torch };
    await stop();
    await stop();
    const { torch: lamp, running } = window.canvasCamera;
    const box = document.querySelector('#box')?.childElementCount;
    return { cameraId, cameras, lit, left: { lamp, running: running(), box } };
  });
  expect(seen).toEqual({
    cameraId: 'back',
    cameras: [{ id: 'back', name: 'Back' }],
    lit: { set: true, on: true, lamp: true },
    left: { lamp: false, running: 0, box: 0 },
  });
});

test('the remembered camera is taken, and another when it is gone', async ({ page }) => {
  const cameras = [
    { id: 'back', name: 'Back' },
    { id: 'wide', name: 'Wide' },
  ];
  await visit(page, { cameras });
  const taken = await page.evaluate(async () => {
    const ids: (string | undefined)[] = [];
    for (const cameraId of ['wide', 'unplugged']) {
      const opened = await window.scanPage.open({ cameraId });
      if (!opened.ok) return opened;
      ids.push(opened.scanner.cameraId);
      await opened.scanner.stop();
    }
    return ids;
  });
  expect(taken).toEqual(['wide', 'back']);
});

for (const [refuse, trouble] of [
  ['NotAllowedError', 'not-allowed'],
  ['NotFoundError', 'no-camera'],
  ['NotReadableError', 'busy'],
] as const) {
  test(`a camera that answers ${refuse} is ${trouble}`, async ({ page }) => {
    await visit(page, { refuse });
    const opened = await page.evaluate(() => window.scanPage.open());
    expect(opened).toEqual({ ok: false, trouble });
    expect(await page.locator('#box > *').count()).toBe(0);
  });
}

test('a scanner told to stop while it starts leaves no camera running', async ({ page }) => {
  await visit(page);
  const left = await page.evaluate(async () => {
    const leaving = new AbortController();
    const opening = window.scanPage.open({ signal: leaving.signal });
    leaving.abort();
    const { ok } = await opening;
    return { ok, running: window.canvasCamera.running() };
  });
  expect(left).toEqual({ ok: false, running: 0 });
});

test('a camera that is pulled out is told of once, and the box is empty', async ({ page }) => {
  await visit(page);
  const ends = await page.evaluate(async () => {
    let count = 0;
    const ended = new Promise<void>((resolve) => {
      const onEnded = () => {
        count += 1;
        resolve();
      };
      void window.scanPage.open({ onEnded }).then(() => window.canvasCamera.unplug());
    });
    await ended;
    return { count, box: document.querySelector('#box')?.childElementCount };
  });
  expect(ends).toEqual({ count: 1, box: 0 });
});

test('without WebAssembly a label is still read', async ({ page }) => {
  await page.route('**/*.wasm', (route) => route.abort());
  await visit(page);
  await showToCamera(page, label('7KQ2M9X'));
  const opened = await page.evaluate(() => window.scanPage.open());
  expect(opened.ok).toBe(true);
  const atMs = await page.evaluate(() => window.scanPage.whenRead('7KQ2M9X', 5000));
  expect(atMs).toBeDefined();
  expect(await page.evaluate(() => window.canvasCamera.running())).toBe(1);
});

test("a film is read through the browser's own camera", async () => {
  const folder = await mkdtemp(join(tmpdir(), 'film-'));
  const film = join(folder, 'label.y4m');
  await writeFile(film, y4m([label('7KQ2M9X')], 20));
  const browser = await chromium.launch({
    executablePath: findBrowser(),
    args: [
      ...browserArgs,
      '--use-fake-ui-for-media-stream',
      '--use-fake-device-for-media-stream',
      `--use-file-for-fake-video-capture=${film}`,
    ],
  });
  try {
    const page = await browser.newPage();
    await page.goto(served.url);
    const opened = await page.evaluate(() => window.scanPage.open());
    expect(opened.ok).toBe(true);
    const atMs = await page.evaluate(() => window.scanPage.whenRead('7KQ2M9X', 5000));
    expect(atMs).toBeDefined();
    expect(await page.evaluate(() => window.scanPage.violations)).toEqual([]);
  } finally {
    await browser.close();
    await rm(folder, { recursive: true, force: true });
  }
});
