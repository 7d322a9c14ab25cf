import { fileURLToPath } from 'node:url';
import { simulateLarge } from '../../demo-data/large.ts';
import type { Day } from '../../src/domain/core/calendar.ts';
import { createPicture } from '../../src/domain/picture/picture.ts';
import { rules } from '../../src/domain/rules/all.ts';
import { createLedger } from '../../src/domain/state/ledger.ts';
import { feedingView } from '../../src/domain/views/feeding-view.ts';
import { preyView } from '../../src/domain/views/prey-view.ts';
import { tonightView } from '../../src/domain/views/tonight-view.ts';
import { atMost, median, print, rounded, type Tell } from './figure.ts';

// Tonight's list, the thaw list and a four-week order for a large collection, in the pure core.

const ANIMALS = 500;
const RUNS = 15;
const EVENTS = 100_000;
const clock = { ms: Date.UTC(2026, 10, 24, 20), offsetMin: 60 };

/** About ten seconds. */
export function feedingFigures(tell: Tell): void {
  const ledger = createLedger();
  ledger.add(simulateLarge(EVENTS, ANIMALS, 7, '2026-11-24' as Day, clock.offsetMin));
  const picture = createPicture(ledger, clock, rules);
  const parts = [
    ['tonight’s list', () => tonightView(picture)],
    ['feeding and thaw list', () => feedingView(picture)],
    ['stock and a four-week order', () => preyView(4, picture)],
  ] as const;
  const times = parts.map(([, work]) =>
    Array.from({ length: RUNS }, () => {
      const from = performance.now();
      work();
      return performance.now() - from;
    }),
  );
  for (const [i, [name]] of parts.entries()) {
    const value = rounded(median(times[i] ?? []), 1);
    tell({ name: `feeding: ${name}, ${ANIMALS} animals, median`, value, unit: 'ms' });
  }
  const sums = Array.from({ length: RUNS }, (_, run) =>
    times.reduce((sum, each) => sum + (each[run] ?? 0), 0),
  );
  const all = rounded(median(sums), 1);
  const name = `feeding: the three together, ${ANIMALS} animals, median`;
  tell({ name, value: all, unit: 'ms', ...atMost(100, all) });
}

if (process.argv[1] === fileURLToPath(import.meta.url)) feedingFigures(print);
