import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { chromium } from '@playwright/test';

const KNOWN_PATHS = [
  process.env['CHROMIUM_PATH'],
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/usr/bin/google-chrome-stable',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

const installed = (): string | undefined =>
  KNOWN_PATHS.find((path) => path !== undefined && existsSync(path)) ??
  (existsSync(chromium.executablePath()) ? chromium.executablePath() : undefined);

function attempt(command: string, args: readonly string[]): boolean {
  try {
    execFileSync(command, args, { stdio: 'inherit', timeout: 300_000 });
    return true;
  } catch {
    return false;
  }
}

/**
 * A Chromium to test in: one already there, else Playwright's own, else the system's package.
 *
 * Errors: throws with what was tried, when none of the three gives one.
 */
export function findBrowser(): string {
  const there = installed();
  if (there) return there;
  if (attempt('npx', ['playwright', 'install', 'chromium'])) {
    const fetched = installed();
    if (fetched) return fetched;
  }
  const asRoot = process.getuid?.() === 0 ? [] : ['sudo', '-n'];
  const apt = (...args: string[]) => {
    const [command = '', ...rest] = [...asRoot, 'apt-get', ...args];
    return attempt(command, rest);
  };
  if (apt('update', '-qq') && apt('install', '-y', '-qq', '--no-install-recommends', 'chromium')) {
    const packaged = installed();
    if (packaged) return packaged;
  }
  throw new Error(
    'No Chromium: none was found, Playwright could not fetch one, and the system package could not ' +
      'be installed. Install Chromium or Chrome, or set CHROMIUM_PATH to one.',
  );
}

/** Quiet, offline-safe flags; without a sandbox only where root runs the suite. */
export const browserArgs: readonly string[] = [
  ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];
