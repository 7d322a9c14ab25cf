import { fileURLToPath } from 'node:url';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { simulateLarge } from '../../demo-data/large.ts';
import type { Day } from '../../src/domain/core/calendar.ts';
import type { EventId } from '../../src/domain/core/ids.ts';
import type { RackEvent } from '../../src/domain/events/event.ts';
import { createPicture, type Picture } from '../../src/domain/picture/picture.ts';
import { rules } from '../../src/domain/rules/all.ts';
import { createLedger } from '../../src/domain/state/ledger.ts';
import { protocolPreview } from '../../src/domain/views/protocol-preview.ts';
import { atMost, median, print, quantile, rounded, type Tell } from './figure.ts';

// How long the pure core takes, without disk, worker or screen.

const ANIMALS = 300;
const SEED = 7;
const LAST_NIGHT = '2026-11-24' as Day;
const OFFSET_MIN = 60;
const clock = { ms: Date.UTC(2026, 10, 24, 20), offsetMin: OFFSET_MIN };

const made = (events: number): readonly RackEvent[] =>
  simulateLarge(events, ANIMALS, SEED, LAST_NIGHT, OFFSET_MIN);

setFlagsFromString('--expose-gc');
const collectGarbage = runInNewContext('gc') as () => void;

/** Milliseconds of each of so many folds of the whole log: by the clock, and on the processor. */
function foldTimes(events: readonly RackEvent[], runs: number) {
  const times = Array.from({ length: runs }, () => {
    // A start has no litter of an earlier fold to clear away.
    collectGarbage();
    const used = process.cpuUsage();
    const from = performance.now();
    createLedger().add(events);
    const clockMs = performance.now() - from;
    const { user, system } = process.cpuUsage(used);
    return { clockMs, processorMs: (user + system) / 1_000 };
  });
  return {
    clockMs: rounded(median(times.map((each) => each.clockMs))),
    quickestMs: Math.min(...times.map((each) => each.clockMs)),
    processorMs: rounded(median(times.map((each) => each.processorMs))),
  };
}

/** The same record once more under a new id, made `minutes` after another. */
const again = (event: RackEvent, n: number, minutes: number): RackEvent => ({
  ...event,
  id: `~${String(n).padStart(16, '0')}` as EventId,
  at: new Date(Date.parse(event.at) + 60_000 * minutes).toISOString() as RackEvent['at'],
});

/** What is to be done is worked out when it is asked for, so a picture is whole when all was asked. */
const asksOfAll = (picture: Picture): number =>
  picture.living().reduce((sum, { id }) => sum + picture.tasks(id).length, 0);

/** Milliseconds from one record more to the picture with it in, for three kinds of arrival. */
function updateTimes(events: readonly RackEvent[]) {
  const ledger = createLedger();
  ledger.add(events);
  const picture = createPicture(ledger, clock, rules);
  asksOfAll(picture);
  const meals = events.filter(({ type }) => type === 'meal-offered');
  const time = (event: RackEvent): number => {
    const from = performance.now();
    picture.update(ledger.add([event]), clock);
    asksOfAll(picture);
    return performance.now() - from;
  };
  const each = <Arrival>(wanted: (meal: RackEvent, n: number) => Arrival): readonly Arrival[] =>
    Array.from({ length: 400 }, (_, n) => {
      const meal = meals[Math.floor((meals.length * (n + 0.5)) / 400)];
      if (!meal) throw new Error('The simulated log holds no meals.');
      return wanted(meal, n);
    });
  const newest = Math.max(...events.slice(-100).map(({ at }) => Date.parse(at)));
  return {
    inOrder: each((meal, n) =>
      time(again(meal, n, (newest - Date.parse(meal.at)) / 60_000 + 1 + n)),
    ),
    outOfOrder: each((meal, n) => time(again(meal, 1_000 + n, 1))),
    struck: each((meal, n) => {
      const { id, at, precision, loggedAt, device } = again(meal, 2_000 + n, 1);
      const envelope = { id, at, precision, loggedAt, device };
      return time({ ...envelope, type: 'struck', v: 1, target: meal.id, reason: 'a slip' });
    }),
  };
}

/** MB that the log of 100,000 and everything folded from it hold, the events themselves included. */
function megabytesHeld(): number {
  collectGarbage();
  const before = process.memoryUsage().heapUsed;
  // Parsed, as from a disk: simulated events share strings with each other that stored ones do not.
  const events = made(100_000).map((event) => JSON.parse(JSON.stringify(event)) as RackEvent);
  const ledger = createLedger();
  ledger.add(events);
  const picture = createPicture(ledger, clock, rules);
  asksOfAll(picture);
  collectGarbage();
  const held = (process.memoryUsage().heapUsed - before) / 1e6;
  if (picture.ledger.size !== events.length) throw new Error('Some events were not folded.');
  return held;
}

/** Milliseconds from a number of the protocol to what it would change, for each of a few numbers. */
function previewTimes(events: readonly RackEvent[]): readonly number[] {
  const ledger = createLedger();
  ledger.add(events);
  const picture = createPicture(ledger, clock, rules);
  const tried = [7, 9, 10].flatMap((days) => [
    { feedFemaleSeasonDays: days },
    { maleStayDays: days - 6 },
    { shedToLayLikelyDays: 20 + days },
  ]);
  return [...tried, ...tried, ...tried].map((changes) => {
    const from = performance.now();
    protocolPreview(changes, picture);
    return performance.now() - from;
  });
}

/** About twenty seconds. */
export function foldFigures(tell: Tell): void {
  const held = rounded(megabytesHeld(), 1);
  tell({ name: 'memory: 100,000 events', value: held, unit: 'MB', ...atMost(150, held) });
  const hundred = made(100_000);
  const fold100 = foldTimes(hundred, 15);
  tellFold('100,000', fold100, 250, tell);

  const updates = updateTimes(hundred);
  const kinds = [
    ['in order', updates.inOrder],
    ['out of order', updates.outOfOrder],
    ['a strike', updates.struck],
  ] as const;
  for (const [kind, times] of kinds) {
    const p95 = rounded(quantile(times, 0.95), 2);
    const name = `update: one event at 100,000, ${kind}, p95`;
    tell({ name, value: p95, unit: 'ms', ...atMost(5, p95) });
  }

  const preview = rounded(median(previewTimes(hundred)));
  const previewed = `preview: a number of the protocol, ${ANIMALS} animals, median`;
  tell({ name: previewed, value: preview, unit: 'ms', ...atMost(100, preview) });

  const fold500 = foldTimes(made(500_000), 7);
  tellFold('500,000', fold500, 1_500, tell);
  const ratio = rounded(fold500.quickestMs / 5 / fold100.quickestMs, 2);
  const name = 'fold: time an event at 500,000 to that at 100,000, the quickest of each';
  tell({ name, value: ratio, unit: 'ratio', ...atMost(1.3, ratio) });
}

function tellFold(
  count: string,
  times: ReturnType<typeof foldTimes>,
  budgetMs: number,
  tell: Tell,
): void {
  const { clockMs, quickestMs, processorMs } = times;
  const name = `fold: ${count} events`;
  tell({ name: `${name}, median`, value: clockMs, unit: 'ms', ...atMost(budgetMs, clockMs) });
  tell({ name: `${name}, the quickest`, value: rounded(quickestMs), unit: 'ms' });
  // Far less than by the clock where others wanted the same cores. Collector threads count too.
  tell({ name: `${name}, processor time`, value: processorMs, unit: 'ms' });
}

if (process.argv[1] === fileURLToPath(import.meta.url)) foldFigures(print);
