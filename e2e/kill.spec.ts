import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from '@playwright/test';
import { browserArgs, findBrowser } from './browser.ts';
import { seeded } from './camera/random.ts';
import { backUp, beginWithThree, namesIn, walkToSnake } from './keeper.ts';
import { startRealBrowser, type RealBrowser } from './real-browser.ts';
import { serve, type Served } from './serve.ts';
import { tapAtOnce, type Offer, type Tap } from './tap-at-once.ts';

const KILLS = 8;
const CONFIRMED_AT_LEAST = 200;
const NAMES = ['Marrow', 'Sorrel', 'Flint'] as const;

/** What one life of the browser was asked to write, and how much of it was confirmed. */
interface Life {
  readonly taps: readonly Tap[];
  readonly confirmed: number;
}

let served: Served;
let profile: string;

test.beforeAll(async () => {
  served = await serve();
  profile = await mkdtemp(join(tmpdir(), 'nightdrop-kill-'));
});
test.afterAll(async () => {
  await running?.kill();
  await served.stop();
  await rm(profile, { recursive: true, force: true });
});

/** Whatever lives when a test fails. */
let running: RealBrowser | undefined;

test('a killed browser loses no confirmed record and doubles none', async ({
  playwright,
}, testInfo) => {
  testInfo.setTimeout(180_000);
  const random = seeded(20_261_124);
  const pick = <Item>(items: readonly Item[]): Item => items[Math.floor(random() * items.length)]!;

  /** Different from the one before, so that its confirmation can be told apart. */
  function nextTap(last: Tap | undefined): Tap {
    const tap = { name: pick(NAMES), offer: pick<Offer>(['ate', 'refused', 'refused']) };
    return tap.name === last?.name && tap.offer === last.offer ? nextTap(last) : tap;
  }

  const first = await startRealBrowser(profile);
  running = first;
  await beginWithThree(first.page, served.url);
  const routes = new Map<string, string>();
  for (const name of NAMES) routes.set(name, await walkToSnake(first.page, name));
  await first.page.evaluate(() => navigator.serviceWorker.ready);
  await first.kill();
  running = undefined;

  const lives: Life[] = [];
  const total = () => lives.reduce((sum, { confirmed }) => sum + confirmed, 0);
  while (lives.length < KILLS || total() < CONFIRMED_AT_LEAST) {
    const browser = await startRealBrowser(profile);
    const { page } = browser;
    running = browser;
    await page.goto(served.url);
    const taps: Tap[] = [];
    let confirmed = 0;
    let killed: Promise<void> | undefined;
    const wanted = 12 + Math.floor(random() * 30);
    const afterMs = random() * 80;
    try {
      for (;;) {
        const tap = nextTap(taps.at(-1));
        taps.push(tap);
        await tapAtOnce(page, routes.get(tap.name) ?? '', tap);
        confirmed += 1;
        if (confirmed < wanted) continue;
        // At any moment of a tap: before its record is written, while it is, or after.
        killed ??= new Promise((resolve, reject) => {
          setTimeout(() => browser.kill().then(resolve, reject), afterMs);
        });
      }
    } catch (error) {
      // Only the kill may end this.
      if (!killed || !/closed|crashed/.test(String(error))) throw error;
    }
    await killed;
    running = undefined;
    lives.push({ taps, confirmed });
  }

  const context = await playwright.chromium.launchPersistentContext(profile, {
    executablePath: findBrowser(),
    args: [...browserArgs],
  });
  const page = context.pages()[0] ?? (await context.newPage());
  await page.goto(served.url);
  const backup = await backUp(page);
  await context.close();

  const names = namesIn(backup);
  const meals = backup.records.filter(({ type }) => type === 'meal-offered');
  expect(new Set(backup.records.map(({ id }) => id)).size).toBe(backup.records.length);
  // Each life of the browser signs its records with letters of its own.
  const writers = [...new Set(meals.map(({ device }) => device))];
  expect(writers).toHaveLength(lives.length);
  for (const [i, { taps, confirmed }] of lives.entries()) {
    const kept = meals
      .filter(({ device }) => device === writers[i])
      .map(({ animal = '', outcome }) => ({ name: names.get(animal), offer: outcome }));
    // What was tapped last may be on disk although the end came before its confirmation.
    const unconfirmed = kept.length === confirmed ? 0 : 1;
    expect(kept).toEqual(taps.slice(0, confirmed + unconfirmed));
  }
  testInfo.annotations.push({
    type: 'kills',
    description: `${lives.length} kills, ${total()} confirmed, ${meals.length} kept`,
  });
});
