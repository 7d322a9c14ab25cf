import { readdirSync, readFileSync } from 'node:fs';
import { Worker } from 'node:worker_threads';
import type { Page } from '@playwright/test';

/** Whom to slow down: the page's own thread, or the page, its workers and all else that renders. */
export type Slowed = 'page' | 'page and desk';

/** One slice of work and the pause after it are short beside what is measured. */
const SLICE_MS = 2;

/**
 * Slows a page down until the returned function is called.
 *
 * Chromium's own throttling reaches the page's thread and refuses workers. To slow the desk too, its
 * processes are stopped by signal for three quarters of the time, which Linux and macOS can.
 */
export async function slowDown(
  page: Page,
  profile: string,
  whom: Slowed,
  times: number,
): Promise<() => Promise<void>> {
  if (whom === 'page') {
    const session = await page.context().newCDPSession(page);
    await session.send('Emulation.setCPUThrottlingRate', { rate: times });
    return () => session.detach();
  }
  const stopping = new Int32Array(new SharedArrayBuffer(8));
  const worker = new Worker(STOP_AND_GO, {
    eval: true,
    workerData: { stopping, pids: renderersOf(profile), sliceMs: SLICE_MS, times },
  });
  const ended = new Promise<void>((resolve) => worker.once('exit', () => resolve()));
  // A page that moves to another origin may get another process.
  const follow = setInterval(() => worker.postMessage(renderersOf(profile)), 50);
  return async () => {
    clearInterval(follow);
    Atomics.store(stopping, 0, 1);
    await ended;
  };
}

/** Plain JavaScript in a thread of its own: its pauses must not depend on what the driver does. */
const STOP_AND_GO = `
const { workerData, receiveMessageOnPort, parentPort } = require('node:worker_threads');
const { stopping, sliceMs, times } = workerData;
let { pids } = workerData;
const signal = (name) => { for (const pid of pids) try { process.kill(pid, name); } catch {} };
while (Atomics.load(stopping, 0) === 0) {
  for (let told; (told = receiveMessageOnPort(parentPort)); ) pids = told.message;
  signal('SIGSTOP');
  Atomics.wait(stopping, 1, 0, sliceMs * (times - 1));
  signal('SIGCONT');
  Atomics.wait(stopping, 1, 0, sliceMs);
}
parentPort.close();
`;

interface Process {
  readonly pid: number;
  readonly parent: number;
  readonly command: string;
}

function processes(): readonly Process[] {
  return readdirSync('/proc')
    .filter((name) => /^\d+$/.test(name))
    .flatMap((name) => {
      try {
        const stat = readFileSync(`/proc/${name}/stat`, 'utf8');
        const parent = Number(stat.slice(stat.lastIndexOf(')') + 2).split(' ')[1]);
        const command = readFileSync(`/proc/${name}/cmdline`, 'utf8');
        return [{ pid: Number(name), parent, command }];
      } catch {
        return []; // It ended while it was being looked at.
      }
    });
}

/** The processes that render pages for the browser on a profile. */
function renderersOf(profile: string): readonly number[] {
  const all = processes();
  const byPid = new Map(all.map((each) => [each.pid, each]));
  const own = `--user-data-dir=${profile}`;
  const belongs = (each: Process | undefined): boolean =>
    each !== undefined && (each.command.includes(own) || belongs(byPid.get(each.parent)));
  return all
    .filter((each) => each.command.includes('--type=renderer') && belongs(each))
    .map(({ pid }) => pid);
}
