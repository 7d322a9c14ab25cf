import { addDays, daysBetween, type Day } from '../src/domain/core/calendar.ts';
import type { AnimalId } from '../src/domain/core/ids.ts';
import { dailyWarmth, DAY_MIN } from '../src/domain/incubation/daily-warmth.ts';
import { ownPip } from '../src/domain/incubation/own-pip.ts';
import { pipChances } from '../src/domain/incubation/pip-chances.ts';
import { progressOf, recentPace, type Progress } from '../src/domain/incubation/progress.ts';
import { developmentRate, takenError } from '../src/domain/incubation/rate.ts';
import type { Point } from '../src/domain/incubation/temperature-line.ts';
import type { Protocol } from '../src/domain/protocol/values.ts';
import { lagChances } from '../src/domain/windows/belief.ts';
import { between, notBefore, window } from '../src/domain/windows/day-chances.ts';
import { spreadOf } from '../src/domain/windows/link.ts';
import type { OwnInterval } from '../src/domain/windows/own-interval.ts';
import { chanceFrom, type Chance } from './random.ts';
import { gamma, normal } from './window-trial.ts';

// Keepers whose incubators drift, swing and fail in ways the forecasts do not know of, with eggs that
// develop by degree-days from a threshold instead of by a factor for ten degrees.

export interface IncubationTrial {
  readonly protocol: Protocol;
  readonly keepers: number;
  readonly seed: number;
  readonly ownCycles: number;
  /** The night after laying on which the forecast is made, and a look has found nothing. */
  readonly askedOn: number;
  readonly reads: 'by hand, twice a day' | 'by a sensor with gaps' | 'never';
  /** How much of the variance within a keeper is between females. */
  readonly femaleShare: number;
}

export interface PipOutcome {
  readonly isHeld: boolean;
  /** Days of the window, both ends included. */
  readonly width: number;
  readonly offDays: number;
}

const START = '2026-04-10' as Day;
const DAYS = 130;
/** Water pythons' threshold: two points and a straight line. Source: Shine et al. 1997, Ecology 78:1713–1721. */
const THRESHOLD_C = 9.5;
const HOUR_MIN = 60;
const STEP_H = 6;
const FEMALES = 5;

const femaleOf = (n: number): AnimalId => `f${n % FEMALES}` as AnimalId;

interface Cycle {
  /** The look that found the eggs after one on START that did not, and the pip; counted from START. */
  readonly found: number;
  readonly pip: number;
  readonly line: readonly Point[];
}

export function runIncubationTrial(trial: IncubationTrial): readonly PipOutcome[] {
  const { protocol, keepers, ownCycles, askedOn } = trial;
  const chance = chanceFrom(trial.seed);
  const { early, late } = spreadOf('lay to pip', protocol);
  // Nine in ten of a normal distribution lie below 1.2816.
  const half = (Math.log(late / early) / 2 / 1.2816) ** 2 / 2;
  return Array.from({ length: keepers }, (): PipOutcome => {
    const usual = Math.log(early * late) / 2 + Math.sqrt(half) * normal(chance);
    // Set a little off 31.5 °C, read with an error of its own.
    const setC = 31.5 + 0.35 * normal(chance);
    const females = Array.from(
      { length: FEMALES },
      () => usual + Math.sqrt(half * trial.femaleShare) * normal(chance),
    );
    const spread = half * (1 - trial.femaleShare);
    const next = (n: number) =>
      oneCycle(Math.exp(females[n % FEMALES] ?? usual), spread, setC, trial, chance);
    const own = Array.from({ length: ownCycles }, (_, n) => {
      const cycle = next(n);
      const progress = progressFor(cycle, cycle.pip + 1, protocol);
      const [laid, pipped] = [
        { first: START, last: addDays(START, cycle.found) },
        { first: addDays(START, cycle.pip), last: addDays(START, cycle.pip) },
      ];
      return ownPip(femaleOf(n), laid, pipped, progress);
    }).filter((each): each is OwnInterval => each !== undefined);
    let cycle = next(ownCycles);
    // Only clutches that have not pipped when it is asked.
    while (cycle.pip < askedOn) cycle = next(ownCycles);
    const { chances } = lagChances('lay to pip', protocol, own, femaleOf(ownCycles));
    const laid = between(START, addDays(START, cycle.found));
    const progress = progressFor(cycle, askedOn, protocol);
    const free = pipChances(laid, chances, progress, takenError(protocol.unreadDriftC, own.length));
    const { from, likely, to } = window(notBefore(addDays(START, askedOn), free) ?? free);
    const day = addDays(START, cycle.pip);
    return {
      isHeld: from <= day && day <= to,
      width: daysBetween(from, to) + 1,
      offDays: Math.abs(daysBetween(likely, day)),
    };
  });
}

/** What the keeper knows on a night: the readings until then. */
function progressFor(cycle: Cycle, until: number, protocol: Protocol): Progress {
  const line = cycle.line.filter(({ minute }) => minute < until * DAY_MIN);
  const warmth = dailyWarmth(line, 0, until, protocol.incubatorGapHours * HOUR_MIN);
  const pace = recentPace(warmth, developmentRate(protocol.incubatorTargetC));
  return progressOf(warmth, DAYS, pace);
}

/** One clutch: a random walk of the thermostat, warm days, and now and then no heat for hours. */
function oneCycle(
  usualDays: number,
  spread: number,
  setC: number,
  { reads }: IncubationTrial,
  chance: Chance,
): Cycle {
  const shape = 1 / spread;
  const needs = (gamma(shape, chance) * usualDays) / shape;
  const degreeDays = needs * (31.5 - THRESHOLD_C);
  // Household thermometers are off by up to half a degree, one way or the other. Source: thermometers.
  const readErrorC = chance.between(-0.5, 0.5);
  const failsOn = chance.happens(0.25) ? chance.whole(5, 45) * 24 + chance.whole(0, 23) : -1;
  const failsFor = chance.whole(3, 14);
  const silentFrom = chance.whole(10, 40) * 24;
  const silentFor = chance.whole(1, 6) * 24;
  // Found at the evening look, or a night or two late; laid on any of those nights.
  const found = chance.pick([0, 0, 0, 1, 2] as const);
  const laid = chance.whole(0, found);
  const line: Point[] = [];
  let driftC = 0;
  let coldC = 0;
  let sum = 0;
  let pip: number | undefined;
  for (let hour = 0; hour < DAYS * 24 && pip === undefined; hour += STEP_H) {
    driftC = driftC * 0.982 + 0.085 * normal(chance);
    const isOff = failsOn >= 0 && hour >= failsOn && hour < failsOn + failsFor;
    coldC = isOff ? coldC + (7 - coldC) * 0.65 : coldC * 0.02;
    const tempC = setC + driftC + 0.25 * Math.sin((2 * Math.PI * hour) / 24) - coldC;
    // Laid in the middle of the night; above 32 °C nothing goes faster.
    if (hour >= laid * 24 + 12)
      sum += Math.max(0, Math.min(tempC, 32) - THRESHOLD_C) * (STEP_H / 24);
    if (sum >= degreeDays) pip ??= Math.floor(hour / 24);
    const isRead =
      reads === 'by hand, twice a day'
        ? hour % 24 === 6 || (hour % 24 === 18 && chance.happens(0.9))
        : reads === 'by a sensor with gaps' &&
          (hour < silentFrom || hour >= silentFrom + silentFor);
    if (isRead) {
      const shownC = Math.round((tempC + readErrorC + 0.1 * normal(chance)) * 10) / 10;
      line.push({ minute: hour * HOUR_MIN, tempC: shownC });
    }
  }
  return { found, pip: pip ?? DAYS, line };
}
