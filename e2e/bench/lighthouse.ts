import { execFile } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import type { AddressInfo } from 'node:net';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { chromium } from '@playwright/test';
import { preview } from 'vite';
import { browserArgs, findBrowser } from '../browser.ts';
import { atLeast, print, rounded, type Tell } from './figure.ts';

// Lighthouse's own view of the built app, on its mobile preset: a slow phone on a slow network.

const LEAST = { performance: 95, accessibility: 100, 'best-practices': 100 } as const;

/** As much of Lighthouse's report as is told. */
interface Report {
  readonly categories: Readonly<Record<string, { readonly score: number | null }>>;
  readonly audits: Readonly<
    Record<string, { readonly id: string; readonly score: number | null; readonly title: string }>
  >;
}

async function freePort(): Promise<number> {
  const server = createServer();
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  await new Promise((resolve) => server.close(resolve));
  return port;
}

/** Judges a page in a browser that listens on `port`, with what that browser has stored. */
async function judge(url: string, port: number): Promise<Report> {
  const cli = fileURLToPath(import.meta.resolve('lighthouse/cli/index.js'));
  const { stdout } = await promisify(execFile)(
    process.execPath,
    [
      cli,
      url,
      `--port=${port}`,
      '--quiet',
      '--disable-storage-reset',
      `--only-categories=${Object.keys(LEAST).join(',')}`,
      '--output=json',
      '--output-path=stdout',
    ],
    { env: { ...process.env, CHROME_PATH: findBrowser() }, maxBuffer: 2 ** 26 },
  );
  return JSON.parse(stdout) as Report;
}

function tellScores(screen: string, report: Report, tell: Tell): void {
  for (const [category, least] of Object.entries(LEAST)) {
    const value = rounded((report.categories[category]?.score ?? 0) * 100);
    tell({
      name: `lighthouse: ${category}, ${screen}`,
      value,
      unit: 'points',
      ...atLeast(least, value),
    });
  }
  for (const { id, score, title } of Object.values(report.audits)) {
    if (score === null || score >= 0.9) continue;
    tell({ name: `lighthouse: ${screen}, ${id}: ${title}`, value: score, unit: 'score' });
  }
}

/** About a minute. */
export async function lighthouseFigures(tell: Tell): Promise<void> {
  const server = await preview({
    ...(process.env['BUILT_APP'] === undefined
      ? {}
      : { build: { outDir: process.env['BUILT_APP'] } }),
    logLevel: 'silent',
    preview: { host: '127.0.0.1', port: await freePort(), strictPort: true },
  });
  const url = server.resolvedUrls?.local[0] ?? '';
  const profile = await mkdtemp(join(tmpdir(), 'nightdrop-lighthouse-'));
  const port = await freePort();
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: findBrowser(),
    args: [...browserArgs, `--remote-debugging-port=${port}`],
  });
  try {
    tellScores('the first screen', await judge(url, port), tell);
    const page = await context.newPage();
    await page.goto(url);
    await page.getByRole('button', { name: 'Look round the demo' }).click();
    await page.locator('.stop').first().waitFor();
    await page.close();
    tellScores('tonight in the demo', await judge(`${url}#/tonight`, port), tell);
  } finally {
    await context.close();
    await server.close();
    await rm(profile, { recursive: true, force: true });
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await lighthouseFigures(print);
