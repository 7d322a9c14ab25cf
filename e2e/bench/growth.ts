import { fileURLToPath } from 'node:url';
import { grower, nightOfDay, type TrueCourse } from '../../demo-data/growers.ts';
import { growthTrial, type Asked } from '../../demo-data/growth-trial.ts';
import { growthWindow } from '../../src/domain/growth/window.ts';
import { defaultProtocol } from '../../src/domain/protocol/values.ts';
import { median, print, rounded, type Tell } from './figure.ts';

// How often growth windows hold, of invented growers that grow otherwise than assumed, and how long one
// takes.

const GROWERS = 3_000;
const seeds = Array.from({ length: GROWERS }, (_, i) => i + 1);

const shareOf = (values: readonly boolean[]): number =>
  rounded(values.filter(Boolean).length / values.length, 3);

function tellCourse(course: TrueCourse, isJudged: boolean, tell: Tell): void {
  const asked = growthTrial(seeds, course);
  const windows = asked.filter(({ isHeld }) => isHeld !== undefined);
  tellHeld(`growth (${course}): 80 % window holds the day`, windows, isJudged, tell);
  const groups = [
    ['3–5 weights', 3, 5],
    ['6–11 weights', 6, 11],
    ['12 weights or more', 12, Infinity],
  ] as const;
  for (const [name, from, to] of groups) {
    const group = windows.filter(({ weights }) => weights >= from && weights <= to);
    tellHeld(`growth (${course}): the same, ${name}`, group, false, tell);
  }
  const width = median(windows.map((each) => each.width ?? NaN));
  tell({ name: `growth (${course}): 80 % window, median width`, value: width, unit: 'days' });
  const ahead = median(windows.map((each) => each.daysAhead ?? NaN));
  tell({ name: `growth (${course}): days still to go, median`, value: ahead, unit: 'days' });
  const told = asked.filter(({ chanceWithin }) => chanceWithin !== undefined);
  const chances = told.reduce((sum, { chanceWithin = NaN }) => sum + chanceWithin, 0);
  tell({
    name: `growth (${course}): get there in time, ${rounded(chances / told.length, 3)} said`,
    value: shareOf(told.map(({ gotThere }) => gotThere)),
    unit: 'share',
  });
}

function tellHeld(name: string, windows: readonly Asked[], isJudged: boolean, tell: Tell): void {
  const value = shareOf(windows.map(({ isHeld }) => isHeld === true));
  const judged = isJudged ? { budget: '0.75–0.87', ok: value >= 0.75 && value <= 0.87 } : {};
  tell({ name: `${name}, of ${windows.length}`, value, unit: 'share', ...judged });
}

function tellTime(tell: Tell): void {
  const growing = seeds
    .slice(0, 100)
    .map((seed) => grower(seed, 'von Bertalanffy').readings.slice(0, 12));
  const used = process.cpuUsage();
  for (const readings of growing) {
    const tonight = nightOfDay(readings.at(-1)?.day ?? 0);
    growthWindow(1_500, readings, {
      sex: 'female',
      layings: [],
      tonight,
      protocol: defaultProtocol,
    });
  }
  const { user, system } = process.cpuUsage(used);
  const value = rounded((user + system) / 1_000 / growing.length, 1);
  tell({ name: 'growth: one window from 12 weights, processor time', value, unit: 'ms' });
}

/** About a minute. */
export function growthFigures(tell: Tell): void {
  tellTime(tell);
  tellCourse('von Bertalanffy', true, tell);
  // Slow at first, then very fast: farther from what is assumed than any growth curve on record.
  tellCourse('logistic', false, tell);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) growthFigures(print);
