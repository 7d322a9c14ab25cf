import { spawn } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { chromium, type BrowserContext, type Page } from '@playwright/test';
import { browserArgs, findBrowser } from './browser.ts';

/** A browser on a profile of its own, as a phone has it: what it stores outlives it. */
export interface RealBrowser {
  readonly context: BrowserContext;
  readonly page: Page;
  /** Of the browser itself, its renderers and whatever else it has started. */
  processes(): readonly number[];
  /** Ends the browser and all its processes without a word, as a flat battery does. */
  kill(): Promise<void>;
}

const children = (parent: number): number[] => {
  const found: number[] = [];
  for (const name of readdirSync('/proc').filter((entry) => /^\d+$/.test(entry))) {
    try {
      const stat = readFileSync(`/proc/${name}/stat`, 'utf8');
      const ppid = Number(stat.slice(stat.lastIndexOf(')') + 2).split(' ')[1]);
      if (ppid === parent) found.push(Number(name), ...children(Number(name)));
    } catch {
      // It ended while it was being looked at.
    }
  }
  return found;
};

const kill = (pid: number): void => {
  try {
    process.kill(pid, 'SIGKILL');
  } catch {
    // Gone already.
  }
};

/**
 * Starts the browser itself rather than through the test runner, which would close it politely.
 *
 * Errors: throws when it does not say where it listens.
 */
export async function startRealBrowser(
  profile: string,
  args: readonly string[] = [],
): Promise<RealBrowser> {
  const browser = spawn(
    findBrowser(),
    [
      '--headless',
      '--remote-debugging-port=0',
      `--user-data-dir=${profile}`,
      '--window-size=390,844',
      ...browserArgs,
      ...args,
      'about:blank',
    ],
    { stdio: ['ignore', 'ignore', 'pipe'] },
  );
  const address = await new Promise<string>((resolve, reject) => {
    let said = '';
    browser.stderr.on('data', (part: Buffer) => {
      said += part.toString();
      const found = /DevTools listening on (ws:\S+)/.exec(said)?.[1];
      if (found) resolve(found);
    });
    browser.once('exit', () => reject(new Error(`The browser ended at once: ${said.slice(-400)}`)));
  });
  const ended = new Promise((resolve) => browser.once('exit', resolve));
  const driver = await chromium.connectOverCDP(address);
  const context = driver.contexts()[0] ?? (await driver.newContext());
  const page = context.pages()[0] ?? (await context.newPage());
  const processes = () =>
    browser.pid === undefined ? [] : [browser.pid, ...children(browser.pid)];
  return {
    context,
    page,
    processes,
    async kill() {
      if (browser.pid === undefined) return;
      for (const each of processes()) kill(each);
      await ended;
      await driver.close().catch(() => undefined);
    },
  };
}
