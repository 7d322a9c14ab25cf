import { fileURLToPath } from 'node:url';
import { simulateLarge } from '../../demo-data/large.ts';
import { atMost, median, print, rounded, type Tell } from './figure.ts';
import { EVENTS, furnishLargeRoom, openTonight } from './large-room.ts';

// Tonight's list, the thaw list and a four-week order for a large collection, in the desk's own worker
// of the built app, without the way of the answer to the page.

const ANIMALS = 500;
const RUNS = 15;
const parts = [
  ['tonight’s list', 'tonight', null],
  ['feeding and thaw list', 'feeding', null],
  ['stock and a four-week order', 'prey', 4],
] as const;

/**
 * Runs in the worker: asks it as the page does, and takes the answer before it is sent. All that it
 * works out for a view lies between the two.
 */
const ASK_IN_WORKER = `(async () => {
  const send = self.postMessage;
  let id = 1e9;
  const ask = (kind, ask) => new Promise((resolve) => {
    const asked = (id += 1);
    self.postMessage = (message) => {
      if (message.id !== asked || message.is !== 'view') return send.call(self, message);
      const ms = performance.now() - from;
      self.postMessage = send;
      self.dispatchEvent(new MessageEvent('message', { data: { is: 'unwatch', id: asked } }));
      resolve(ms);
    };
    const from = performance.now();
    self.dispatchEvent(new MessageEvent('message', { data: { is: 'watch', id: asked, kind, ask } }));
  });
  const runs = [];
  for (let run = 0; run <= ${RUNS}; run += 1) {
    const times = [];
    for (const [, kind, what] of ${JSON.stringify(parts)}) times.push(await ask(kind, what));
    runs.push(times);
  }
  return runs;
})()`;

/** About a minute. */
export async function feedingFigures(tell: Tell): Promise<void> {
  const room = await furnishLargeRoom((lastNight, offsetMin) =>
    simulateLarge(EVENTS, ANIMALS, 7, lastNight, offsetMin),
  );
  const browser = await room.start();
  try {
    const { page } = browser;
    await openTonight(page, room);
    const desk = page.workers()[0];
    if (!desk) throw new Error('The page has no desk.');
    // The first round loads what it needs.
    const [, ...runs] = await desk.evaluate<readonly (readonly number[])[]>(ASK_IN_WORKER);
    for (const [i, [name]] of parts.entries()) {
      const value = rounded(median(runs.map((times) => times[i] ?? NaN)), 1);
      tell({ name: `feeding: ${name}, ${ANIMALS} animals, in the worker`, value, unit: 'ms' });
    }
    const all = rounded(median(runs.map((times) => times.reduce((a, b) => a + b, 0))), 1);
    const name = `feeding: the three together, ${ANIMALS} animals, in the worker`;
    tell({ name, value: all, unit: 'ms', ...atMost(100, all) });
  } finally {
    await browser.kill();
    await room.close();
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await feedingFigures(print);
