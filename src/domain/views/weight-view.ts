import { daysBetween, type Day } from '../core/calendar.ts';
import type { AnimalId } from '../core/ids.ts';
import { showGrams } from '../core/units.ts';
import { chanceThereBy, growthWindow, type GrowthWindow } from '../growth/window.ts';
import type { Picture } from '../picture/picture.ts';
import { readRefusals, type RefusalReading } from '../prey/read-refusals.ts';
import { refusalFacts } from '../prey/refusal-facts.ts';
import { afterRegurgitation, type AfterRegurgitation } from '../rules/regurgitation.ts';
import { breedingFloor } from '../season/fitness.ts';
import type { Animal } from '../state/animal.ts';
import { weightAlarm, type WeightAlarm } from '../weight/alarm.ts';
import { alarmFacts, layingsOf, readingsOf } from '../weight/of-animal.ts';
import { weightCourse, type WeightCourse } from '../weight/trend.ts';
import { dateWords, daysWords } from '../core/day-words.ts';
import { window } from '../windows/day-chances.ts';
import { percent } from './chance-words.ts';
import type { ReadinessLine } from './readiness-line.ts';
import { readinessLines } from './readiness-lines.ts';

/** When it reaches the keeper's floor, as a band to be drawn. */
export interface TargetWindow {
  readonly targetG: number;
  readonly from: Day;
  readonly likely: Day;
  readonly to: Day;
}

export interface WeightView {
  /** The trend with its interval, or what is said in its place. */
  readonly trend: string;
  /** The robust line, two ends of it, in grams. */
  readonly line: readonly { readonly night: Day; readonly massG: number }[];
  readonly meal?: string | undefined;
  /** What the newest weight was held against, one sentence each; empty where it fell by nothing. */
  readonly looked: readonly string[];
  readonly speaks: boolean;
  readonly refusals?: RefusalReading | undefined;
  readonly after?: AfterRegurgitation | undefined;
  readonly growth?: string | undefined;
  readonly target?: TargetWindow | undefined;
  readonly readiness: readonly ReadinessLine[];
  readonly exceptions: NonNullable<Animal['feedingExcepted']>['exceptions'];
}

/** The weight of one snake, what its refusals mean beside it, and whether it is grown enough. */
export function weightView(id: AnimalId, picture: Picture): WeightView | undefined {
  const animal = picture.animal(id);
  if (!animal) return undefined;
  const { facts } = picture;
  const readings = readingsOf(animal, facts);
  const course = weightCourse(readings, layingsOf(animal), facts.protocol);
  const alarm = weightAlarm(alarmFacts(animal, facts));
  const read = refusalFacts(animal, facts);
  const { fromG: targetG } = breedingFloor(animal, facts.protocol);
  const growth =
    readings.length === 0 || animal.gone
      ? undefined
      : growthWindow(targetG, readings, {
          sex: animal.sex,
          layings: layingsOf(animal),
          tonight: facts.night,
          protocol: facts.protocol,
        });
  const since = readings.at(-1)?.daysSinceMeal;
  return {
    trend: trendWords(course),
    line: lineOf(course),
    meal:
      since === undefined ? undefined : `The newest weight is of ${daysWords(since)} after a meal.`,
    looked: lookedAt(alarm),
    speaks: alarm.speaks,
    refusals: read && readRefusals(read.facts, facts.protocol),
    after: afterRegurgitation(animal, facts),
    growth: growth && growthWords(growth, targetG, seasonStart(facts.night, picture)),
    target: growth && targetOf(growth, targetG),
    readiness: readinessLines(animal, picture),
    exceptions: animal.feedingExcepted?.exceptions ?? [],
  };
}

const perDay = (value: number): string => value.toFixed(2).replace('-', '−');

function trendWords(course: WeightCourse): string {
  switch (course.kind) {
    case 'trend': {
      const { percentPerDay, low, high, from, to, isMixed } = course;
      const mixed = isMixed ? ' Some weights are of a full gut.' : '';
      return `${perDay(percentPerDay)} % a day, ${perDay(low)} to ${perDay(high)} (80 %), from ${dateWords(from)} to ${dateWords(to)}.${mixed}`;
    }
    case 'difference': {
      const { changeG, days } = course;
      const change = `${changeG < 0 ? 'Lost' : 'Gained'} ${showGrams(Math.abs(changeG))}`;
      return `${change} in ${daysWords(days)}: a difference, and no trend yet.`;
    }
    case 'none':
      return course.why === 'no weight' ? 'Not weighed yet.' : 'One weight is no trend.';
  }
}

/** Drawn through the middle of the weights it rests on. */
function lineOf(course: WeightCourse): WeightView['line'] {
  if (course.kind !== 'trend') return [];
  const { from, to, percentPerDay, readings } = course;
  const logs = readings.map(({ night, massG }) => {
    return Math.log(massG) - (percentPerDay / 100) * daysBetween(from, night);
  });
  const middle = logs.toSorted((a, b) => a - b)[Math.floor(logs.length / 2)] ?? 0;
  return [from, to].map((night) => ({
    night,
    massG: Math.exp(middle + (percentPerDay / 100) * daysBetween(from, night)),
  }));
}

function lookedAt(alarm: WeightAlarm): readonly string[] {
  return alarm.speaks ? alarm.because : alarm.exclusions.map(({ sentence }) => sentence);
}

/** The next first month of scans: by then she should be there. */
function seasonStart(night: Day, { facts }: Picture): Day {
  const month = String(facts.protocol.firstScanMonth).padStart(2, '0');
  const year = Number(night.slice(0, 4));
  const first = `${year}-${month}-01` as Day;
  return first > night ? first : (`${year + 1}-${month}-01` as Day);
}

function growthWords(growth: GrowthWindow, targetG: number, start: Day): string {
  const target = showGrams(targetG);
  switch (growth.kind) {
    case 'there':
      return `At your floor of ${target} since ${dateWords(growth.since)}.`;
    case 'window':
      return `Chance to be at ${target} by ${dateWords(start)}, when the season begins: ${percent(chanceThereBy(start, growth))}. From ${growth.weights} weights.`;
    case 'not growing':
      return `It loses weight of late: no date for ${target} is given while it does.`;
    case 'not likely':
      return `Not likely to reach ${target} within ${daysWords(growth.withinDays)}: ${percent(growth.chanceWithin)}.`;
    case 'too little known':
      return `When it reaches ${target} cannot be said: ${growth.why}.`;
  }
}

function targetOf(growth: GrowthWindow, targetG: number): TargetWindow | undefined {
  return growth.kind === 'window' ? { targetG, ...window(growth.chances) } : undefined;
}
