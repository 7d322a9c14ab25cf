import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from '@playwright/test';
import { bestPlanner, tryRotation } from '../../demo-data/rotation-trial.ts';
import { isProvenBest, type LinearModel } from '../../src/domain/rotation/linear-model.ts';
import type { FromPlanner } from '../../src/worker/planner/messages.ts';
import { highsSolver } from '../../src/worker/planner/highs-solver.ts';
import { browserArgs, findBrowser } from '../browser.ts';
import { builtApp, serve } from '../serve.ts';
import { atLeast, atMost, median, print, rounded, type Tell } from './figure.ts';

// Plans for 12 males, 40 females and 14 nights, in the planner's own worker in a real browser: the
// evenings of two invented months as they came, each model as the desk would send it.

const SIZE = { males: 12, females: 40, nights: 60 };
const SEED = 101;
const MOST_MS = 2_000;

/** The models of all evenings of a season on which somebody was there. */
async function modelsOf(seed: number): Promise<readonly LinearModel[]> {
  const solve = highsSolver();
  const models: LinearModel[] = [];
  const planner = bestPlanner((model) => {
    models.push(model);
    return solve(model);
  });
  await tryRotation(planner, seed, SIZE);
  return models;
}

export async function plannerFigures(tell: Tell): Promise<void> {
  const models = await modelsOf(SEED);
  /** A single choice: what it takes is the loading. */
  const least: LinearModel = { worths: [1], rows: [], fixed: [] };
  const script = (await readdir(join(builtApp, 'assets'))).find((name) =>
    /^planner-.*\.js$/.test(name),
  );
  if (script === undefined) throw new Error('The built app has no planner.');
  const served = await serve();
  const browser = await chromium.launch({ executablePath: findBrowser(), args: [...browserArgs] });
  try {
    const page = await browser.newPage();
    // What runs this file names functions through a helper that pages do not have.
    await page.addInitScript('globalThis.__name = (named) => named;');
    await page.goto(served.url);
    const answers = await page.evaluate(
      async ([url, all]) => {
        const worker = new Worker(url, { type: 'module' });
        const found: { ms: number; solved: FromPlanner['solved'] }[] = [];
        for (const [id, model] of all.entries()) {
          const start = performance.now();
          const solved = await new Promise<FromPlanner['solved']>((settle) => {
            worker.addEventListener('message', ({ data }) => settle(data.solved), { once: true });
            worker.postMessage({ id, model });
          });
          found.push({ ms: performance.now() - start, solved });
        }
        return found;
      },
      [`${served.url}assets/${script}`, [least, ...models]] as const,
    );
    const [loading, ...plans] = answers;
    const times = plans.map(({ ms }) => ms);
    const proven = plans.filter(({ solved }) => solved && isProvenBest(solved)).length;
    const loadMs = rounded(loading?.ms ?? NaN);
    tell({ name: 'planner: until the solver is loaded', value: loadMs, unit: 'ms' });
    tell({ name: 'planner: plan 12 × 40 × 14, median', value: rounded(median(times)), unit: 'ms' });
    const worst = rounded(Math.max(...times));
    tell({
      name: `planner: plan 12 × 40 × 14, slowest of ${times.length}`,
      value: worst,
      unit: 'ms',
      ...atMost(MOST_MS, worst),
    });
    const share = rounded((proven / times.length) * 100, 1);
    tell({ name: 'planner: plans proven best', value: share, unit: '%', ...atLeast(100, share) });
  } finally {
    await browser.close();
    await served.stop();
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await plannerFigures(print);
