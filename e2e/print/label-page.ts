import { mkdtemp, readFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { extname, join } from 'node:path';
import preact from '@preact/preset-vite';
import type { Page } from '@playwright/test';
import { build } from 'vite';

const ORIGIN = 'https://labels.example';

// As strict as the app's own: an inline style or a style element would be refused, and seen.
const POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:";

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
};

/** Builds the page that holds the labels screen alone; returns the folder, for `openLabelPage`. */
export async function buildLabelPage(): Promise<string> {
  const outDir = await mkdtemp(join(tmpdir(), 'label-page-'));
  await build({
    configFile: false,
    root: join(import.meta.dirname, 'page'),
    base: './',
    logLevel: 'error',
    plugins: [preact()],
    build: { outDir, emptyOutDir: true, modulePreload: { polyfill: false }, assetsInlineLimit: 0 },
  });
  return outDir;
}

/** Opens the built page under a strict content policy, without any server. */
export async function openLabelPage(page: Page, folder: string, search = ''): Promise<void> {
  await page.route(`${ORIGIN}/**`, async (route) => {
    const { pathname } = new URL(route.request().url());
    const name = pathname === '/' ? 'index.html' : pathname.slice(1);
    await route.fulfill({
      body: await readFile(join(folder, name)),
      contentType: TYPES[extname(name)] ?? 'application/octet-stream',
      headers: { 'content-security-policy': POLICY },
    });
  });
  await page.goto(`${ORIGIN}/${search}`);
}
