import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, expect, test, type Page } from '@playwright/test';
import { browserArgs, findBrowser } from './browser.ts';
import { seeded } from './camera/random.ts';
import { backUp, beginWithThree, namesIn, walkToSnake } from './keeper.ts';
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

interface RunningBrowser {
  readonly page: Page;
  /** The whole process group at once, as an empty battery would. */
  readonly kill: () => Promise<void>;
}

/** Whatever lives when a test fails. */
let running: RunningBrowser | undefined;

/** A browser of our own, not Playwright's: that one would be closed in good order. */
async function startBrowser(): Promise<RunningBrowser> {
  const child = spawn(
    findBrowser(),
    [
      '--headless',
      '--remote-debugging-port=0',
      `--user-data-dir=${profile}`,
      '--window-size=390,844',
      ...browserArgs,
      'about:blank',
    ],
    { stdio: ['ignore', 'ignore', 'pipe'], detached: true },
  );
  const browser = await chromium.connectOverCDP(await devToolsOf(child));
  const page = browser.contexts()[0]?.pages()[0];
  if (!page) throw new Error('The browser opened no page.');
  running = {
    page,
    async kill() {
      running = undefined;
      const gone = once(child, 'exit');
      process.kill(-(child.pid ?? 0), 'SIGKILL');
      await gone;
      await browser.close();
    },
  };
  return running;
}

const devToolsOf = (child: ChildProcess): Promise<string> =>
  new Promise((resolve, reject) => {
    let said = '';
    child.stderr?.on('data', (more: Buffer) => {
      said += more.toString();
      const address = /DevTools listening on (ws:\S+)/.exec(said)?.[1];
      if (address !== undefined) resolve(address);
    });
    child.once('exit', () => reject(new Error(`The browser ended at once. ${said.slice(-500)}`)));
  });

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

  const first = await startBrowser();
  await beginWithThree(first.page, served.url);
  const routes = new Map<string, string>();
  for (const name of NAMES) routes.set(name, await walkToSnake(first.page, name));
  await first.page.evaluate(() => navigator.serviceWorker.ready);
  await first.kill();

  const lives: Life[] = [];
  const total = () => lives.reduce((sum, { confirmed }) => sum + confirmed, 0);
  while (lives.length < KILLS || total() < CONFIRMED_AT_LEAST) {
    const { page, kill } = await startBrowser();
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
          setTimeout(() => kill().then(resolve, reject), afterMs);
        });
      }
    } catch (error) {
      // Only the kill may end this.
      if (!killed || !/closed|crashed/.test(String(error))) throw error;
    }
    await killed;
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
