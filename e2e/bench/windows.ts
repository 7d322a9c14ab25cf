import { fileURLToPath } from 'node:url';
import { runTrial, type Outcome, type Trial } from '../../demo-data/window-trial.ts';
import { addDays, type Day } from '../../src/domain/core/calendar.ts';
import type { AnimalId } from '../../src/domain/core/ids.ts';
import { defaultProtocol } from '../../src/domain/protocol/values.ts';
import { lagChances } from '../../src/domain/windows/belief.ts';
import { convolve, notBefore, onDay, window } from '../../src/domain/windows/day-chances.ts';
import { spreadOf, type LinkName } from '../../src/domain/windows/link.ts';
import type { OwnInterval } from '../../src/domain/windows/own-interval.ts';
import { atMost, median, print, rounded, type Tell } from './figure.ts';

// How often windows hold and how near forecasts are, with keepers who differ as assumed and cycles
// from a gamma distribution; and how long a room of females takes.

const KEEPERS = 2_000;
const LAY: readonly LinkName[] = ['ovulation to shed', 'shed to lay'];
const chains: readonly (readonly [string, readonly LinkName[]])[] = [
  ['eggs, from the shed', ['shed to lay']],
  ['eggs, from the ovulation', LAY],
  ['eggs, from a scan of 20 mm', ['large follicle to ovulation', ...LAY]],
  ['ovulation, from a scan of 20 mm', ['large follicle to ovulation']],
];

const trial = (links: readonly LinkName[], ownCycles: number, more: Partial<Trial> = {}) =>
  runTrial({
    protocol: defaultProtocol,
    keepers: KEEPERS,
    seed: ownCycles + 1,
    links,
    ownCycles,
    femaleShare: defaultProtocol.windowFemaleShare,
    lookDays: 1,
    ...more,
  });

const mean = (values: readonly number[]): number =>
  values.reduce((a, b) => a + b, 0) / values.length;

const heldPercent = (outcomes: readonly Outcome[]): number =>
  rounded(100 * mean(outcomes.map(({ isHeld }) => Number(isHeld))), 1);

function tellTrial(name: string, outcomes: readonly Outcome[], tell: Tell): void {
  const held = heldPercent(outcomes);
  const isWithin = held >= 77 && held <= 87;
  tell({ name: `${name}: held`, value: held, unit: '%', budget: '77–87', ok: isWithin });
  const width = median(outcomes.map((each) => each.width));
  tell({ name: `${name}: median width`, value: width, unit: 'days' });
  const crps = rounded(mean(outcomes.map((each) => each.crps)), 2);
  tell({ name: `${name}: mean CRPS`, value: crps, unit: 'days' });
}

function tellCoverage(tell: Tell): void {
  for (const [name, links] of chains) {
    for (const own of [0, 3, 10]) {
      tellTrial(`windows: ${name}, ${own} own cycles`, trial(links, own), tell);
    }
  }
  const ten = (more: Partial<Trial>) => trial(['shed to lay'], 10, more);
  const name = 'windows: eggs, from the shed, 10 own cycles';
  tellTrial(`${name} known to 5 days`, ten({ lookDays: 5 }), tell);
  tellTrial(`${name}, females all alike`, ten({ femaleShare: 0 }), tell);
}

/** The forecast against thirty days after the shed, and its likeliest day as a date against it. */
function tellFixedRule(tell: Tell): void {
  for (const own of [0, 1, 2, 3, 5, 10]) {
    const outcomes = trial(['shed to lay'], own);
    const fixed = rounded(mean(outcomes.map(({ days }) => Math.abs(days - 30))), 2);
    const crps = rounded(mean(outcomes.map((each) => each.crps)), 2);
    const name = `windows: mean CRPS at cycle ${own + 1}, fixed rule ${fixed}`;
    const judged = own < 2 ? {} : { budget: `< ${fixed}`, ok: crps < fixed };
    tell({ name, value: crps, unit: 'days', ...judged });
    const off = rounded(mean(outcomes.map((each) => each.offDays)), 2);
    const told = `windows: likeliest day off at cycle ${own + 1}, fixed rule ${fixed}`;
    tell({ name: told, value: off, unit: 'days' });
  }
}

const SEASON: readonly LinkName[] = [
  ...LAY,
  'lay to pip',
  'pip to out',
  'out to first shed',
  'first shed to first meal',
];
const FEMALES = 100;
const START = '2026-01-10' as Day;

/** Sixty own cycles of forty of the females, every other one known only to five days. */
const ownCycles = (link: LinkName): readonly OwnInterval[] =>
  Array.from({ length: 60 }, (_, n) => {
    const earliestDays = spreadOf(link, defaultProtocol).likely + (n % 4);
    const latestDays = earliestDays + (n % 2) * 4;
    return { female: `f${n % 40}` as AnimalId, earliestDays, latestDays };
  });

function oneRoom(): { readonly clockMs: number; readonly processorMs: number } {
  const own = SEASON.map(ownCycles);
  const used = process.cpuUsage();
  const from = performance.now();
  for (let female = 0; female < FEMALES; female += 1) {
    let when = onDay(addDays(START, female % 30));
    for (const [n, link] of SEASON.entries()) {
      const { chances } = lagChances(link, defaultProtocol, own[n] ?? [], `f${female}` as AnimalId);
      const next = notBefore(addDays(START, 15 * n), convolve(when, chances));
      if (!next) throw new Error('Nothing is left of the season that was to be timed.');
      window(next);
      when = next;
    }
  }
  const clockMs = performance.now() - from;
  const { user, system } = process.cpuUsage(used);
  return { clockMs, processorMs: (user + system) / 1_000 };
}

function tellTime(tell: Tell): void {
  const times = Array.from({ length: 25 }, oneRoom);
  const ms = rounded(median(times.map(({ clockMs }) => clockMs)), 1);
  const name = 'windows: from ovulation to first meal, 100 females';
  tell({ name, value: ms, unit: 'ms', ...atMost(50, ms) });
  // Far less than by the clock where others wanted the same cores. Collector threads count too.
  const processorMs = rounded(median(times.map((each) => each.processorMs)), 1);
  tell({ name: `${name}, processor time`, value: processorMs, unit: 'ms' });
}

/** About half a minute. */
export function windowFigures(tell: Tell): void {
  tellTime(tell);
  tellCoverage(tell);
  tellFixedRule(tell);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) windowFigures(print);
