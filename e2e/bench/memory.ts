import { readFileSync } from 'node:fs';
import { setTimeout as wait } from 'node:timers/promises';

// What processes hold of the machine's memory: what several of them share counts once (PSS).

const EVERY_MS = 100;

interface Held {
  readonly allMb: number;
  readonly renderersMb: number;
}

function heldBy(pid: number): number {
  const text = readFileSync(`/proc/${pid}/smaps_rollup`, 'utf8');
  return Number(/^Pss:\s+(\d+) kB$/m.exec(text)?.[1] ?? 0) / 1_000;
}

const isRenderer = (pid: number): boolean =>
  readFileSync(`/proc/${pid}/cmdline`, 'utf8').includes('--type=renderer');

export function held(processes: readonly number[]): Held {
  let [allMb, renderersMb] = [0, 0];
  for (const pid of processes) {
    try {
      const mb = heldBy(pid);
      allMb += mb;
      if (isRenderer(pid)) renderersMb += mb;
    } catch {
      // It ended while it was being looked at.
    }
  }
  return { allMb, renderersMb };
}

/** The most that was held above what was held before, while the work was done. */
export async function peakAboveRest(
  processes: () => readonly number[],
  work: () => Promise<void>,
): Promise<{ readonly rest: Held; readonly above: Held }> {
  const rest = held(processes());
  const peak = { ...rest };
  const done = new AbortController();
  const watch = async () => {
    while (!done.signal.aborted) {
      const now = held(processes());
      peak.allMb = Math.max(peak.allMb, now.allMb);
      peak.renderersMb = Math.max(peak.renderersMb, now.renderersMb);
      await wait(EVERY_MS);
    }
  };
  const watching = watch();
  try {
    await work();
  } finally {
    done.abort();
    await watching;
  }
  const above = {
    allMb: peak.allMb - rest.allMb,
    renderersMb: peak.renderersMb - rest.renderersMb,
  };
  return { rest, above };
}
