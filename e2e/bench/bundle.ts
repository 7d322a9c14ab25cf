import { gzipSync } from 'node:zlib';
import { fileURLToPath } from 'node:url';
import { chromium, type Page } from '@playwright/test';
import { demoScenario } from '../../demo-data/scenario.ts';
import { simulate } from '../../demo-data/simulate.ts';
import { momentOf, roomNight } from '../../src/domain/core/calendar.ts';
import { browserArgs, findBrowser } from '../browser.ts';
import { atMost, print, type Tell } from './figure.ts';
import { serve } from '../serve.ts';

// What a phone must fetch before something can be written down at a tub. Counted is what the browser
// really asked for on a first visit, not what a build report says: every script of the page and of
// the desk, whole, until the capture screen of a label stands there, each compressed on its own.

const BUDGET_BYTES = 60_000;

/** Scripts asked for until now, with what they weigh compressed. */
interface Fetched {
  readonly names: readonly string[];
  readonly gzipBytes: number;
}

/**
 * Follows the scripts of a page and its workers. The service worker is left out: it is fetched for
 * the next visit, and its own fetches are copies for the time without a network.
 */
function followScripts(page: Page): () => Promise<Fetched> {
  const scripts = new Map<string, Promise<Buffer>>();
  page.on('response', (response) => {
    const path = new URL(response.url()).pathname;
    if (response.request().resourceType() === 'document') {
      scripts.set('in the page itself', response.text().then(ownScripts));
    }
    if (path.endsWith('.js') && !path.endsWith('/sw.js') && !response.fromServiceWorker()) {
      scripts.set(path, response.body());
    }
  });
  return async () => {
    const bodies = await Promise.all(scripts.values());
    return {
      names: [...scripts.keys()].map((path) => path.replace(/^.*\//, '')),
      gzipBytes: bodies.reduce((sum, body) => sum + gzipSync(body, { level: 9 }).length, 0),
    };
  };
}

/** The scripts that stand in a page. */
const ownScripts = (html: string): Buffer =>
  Buffer.from([...html.matchAll(/<script>(.*?)<\/script>/gs)].map(([, own]) => own).join('\n'));

/** The label of a tub of the demo with a snake in it. The demo is the same here and in the browser. */
function labelOfDemo(): string {
  const now = new Date();
  const clock = { ms: now.getTime(), offsetMin: -now.getTimezoneOffset() };
  const events = simulate(demoScenario(roomNight(momentOf(clock), 12), clock.offsetMin));
  const moved = events.findLast((event) => event.type === 'moved');
  const made = events.find((event) => event.type === 'tub-made' && event.tub === moved?.tub);
  if (made?.type !== 'tub-made') throw new Error('The demo has no tub with a label.');
  return made.code;
}

/** A few seconds. */
export async function bundleFigures(tell: Tell): Promise<void> {
  const served = await serve();
  const browser = await chromium.launch({ executablePath: findBrowser(), args: [...browserArgs] });
  try {
    // Without a service worker, whose own fetches and cache would blur what the page asks for.
    const context = await browser.newContext({ serviceWorkers: 'block' });
    const before = await context.newPage();
    await before.goto(served.url);
    await before.getByRole('button', { name: 'Look round the demo' }).click();
    await before.locator('.stop').first().waitFor();
    // Until the picture is saved: a start without one also loads what reads old records.
    await before.waitForTimeout(8_000);
    await before.close();

    const page = await context.newPage();
    const scriptsSoFar = followScripts(page);
    await page.goto(`${served.url}#/${labelOfDemo()}`);
    await page.getByRole('button', { name: 'Weight' }).waitFor();
    const needed = await scriptsSoFar();
    tell({
      name: `bundle: JavaScript until the capture screen (${needed.names.join(', ')})`,
      value: needed.gzipBytes,
      unit: 'bytes gzip',
      ...atMost(BUDGET_BYTES, needed.gzipBytes),
    });
    await page.waitForTimeout(3_000);
    const later = await scriptsSoFar();
    const after = later.names.filter((name) => !needed.names.includes(name));
    tell({
      name: `bundle: JavaScript fetched after it (${after.join(', ') || 'none'})`,
      value: later.gzipBytes - needed.gzipBytes,
      unit: 'bytes gzip',
    });
  } finally {
    await browser.close();
    await served.stop();
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await bundleFigures(print);
