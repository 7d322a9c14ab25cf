import { addDays, daysBetween, type Day } from '../src/domain/core/calendar.ts';
import type { AnimalId } from '../src/domain/core/ids.ts';
import type { Protocol } from '../src/domain/protocol/values.ts';
import { lagChances } from '../src/domain/windows/belief.ts';
import { convolve, onDay, window, type DayChances } from '../src/domain/windows/day-chances.ts';
import { spreadOf, type LinkName } from '../src/domain/windows/link.ts';
import type { OwnInterval } from '../src/domain/windows/own-interval.ts';
import { chanceFrom, type Chance } from './random.ts';

// Keepers who differ as the protocol says, with cycles of another family than the forecasts assume.

export interface Trial {
  readonly protocol: Protocol;
  readonly keepers: number;
  readonly seed: number;
  /** The links from what is known to what is awaited. */
  readonly links: readonly LinkName[];
  readonly ownCycles: number;
  /** How much of the variance within a keeper is between females. */
  readonly femaleShare: number;
  /** Days from one look for eggs to the next. 1 where own cycles are known to the day. */
  readonly lookDays: number;
}

/** How one forecast fared. */
export interface Outcome {
  readonly isHeld: boolean;
  /** Days of the window, both ends included. */
  readonly width: number;
  /** Continuous ranked probability score, in days: for a single day it is how far that day was off. */
  readonly crps: number;
  readonly days: number;
  /** Days that the likeliest day was off. */
  readonly offDays: number;
}

const FEMALES = 5;
const START = '2026-01-10' as Day;

/** One forecast for each keeper, after so many cycles of their own. */
export function runTrial(trial: Trial): readonly Outcome[] {
  const { protocol, links, ownCycles } = trial;
  const chance = chanceFrom(trial.seed);
  return Array.from({ length: trial.keepers }, () => {
    let forecast = onDay(START);
    let days = 0;
    for (const link of links) {
      const lengths = cycles(link, trial, chance);
      const own = lengths.slice(0, ownCycles).map((cycle) => betweenLooks(cycle, trial, chance));
      const next = lengths[ownCycles];
      forecast = convolve(forecast, lagChances(link, protocol, own, next?.female).chances);
      days += next?.days ?? 0;
    }
    return outcome(forecast, days);
  });
}

function outcome(forecast: DayChances, days: number): Outcome {
  const { from, likely, to } = window(forecast);
  const day = addDays(START, days);
  return {
    isHeld: from <= day && day <= to,
    width: daysBetween(from, to) + 1,
    crps: rankedScore(forecast, daysBetween(forecast.from, day)),
    days,
    offDays: Math.abs(daysBetween(likely, day)),
  };
}

/** Gneiting T. & Raftery A.E. 2007, J Am Stat Assoc 102:359–378, section 4.2, over whole days. */
export function rankedScore({ chances }: Pick<DayChances, 'chances'>, happened: number): number {
  let reached = 0;
  let score = Math.max(0, -happened) + Math.max(0, happened - chances.length);
  for (const [day, each] of chances.entries()) {
    reached += each;
    score += (reached - (day >= happened ? 1 : 0)) ** 2;
  }
  return score;
}

interface Cycle {
  readonly female: AnimalId;
  readonly days: number;
}

/** Lengths of one keeper's cycles, female by female in turn, one more than are told. */
function cycles(link: LinkName, trial: Trial, chance: Chance): readonly Cycle[] {
  const { early, late } = spreadOf(link, trial.protocol);
  // Nine in ten of a normal distribution lie below 1.2816.
  const half = (Math.log(late / early) / 2 / 1.2816) ** 2 / 2;
  const keeper = Math.log(early * late) / 2 + Math.sqrt(half) * normal(chance);
  const females = Array.from(
    { length: FEMALES },
    () => keeper + Math.sqrt(half * trial.femaleShare) * normal(chance),
  );
  const shape = 1 / (half * (1 - trial.femaleShare));
  return Array.from({ length: trial.ownCycles + 1 }, (_, n) => {
    const mean = Math.exp(females[n % FEMALES] ?? keeper);
    const days = Math.round((gamma(shape, chance) * mean) / shape);
    return { female: `f${n % FEMALES}` as AnimalId, days };
  });
}

function betweenLooks({ female, days }: Cycle, { lookDays }: Trial, chance: Chance): OwnInterval {
  const earliestDays = lookDays === 1 ? days : days - chance.whole(0, lookDays - 1);
  return { female, earliestDays, latestDays: earliestDays + lookDays - 1 };
}

/** Box G.E.P. & Muller M.E. 1958. */
export const normal = (chance: Chance): number =>
  Math.sqrt(-2 * Math.log(1 - chance.next())) * Math.cos(2 * Math.PI * chance.next());

/** Marsaglia G. & Tsang W.W. 2000, for shapes from 1 on. */
export function gamma(shape: number, chance: Chance): number {
  const d = shape - 1 / 3;
  for (;;) {
    const x = normal(chance);
    const v = (1 + x / Math.sqrt(9 * d)) ** 3;
    if (v > 0 && Math.log(1 - chance.next()) < x * x * 0.5 + d - d * v + d * Math.log(v))
      return d * v;
  }
}
