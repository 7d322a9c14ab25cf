import { addDays, monthOf, type Day } from '../src/domain/core/calendar.ts';
import type { WeightReading } from '../src/domain/weight/reading.ts';
import type { Moment } from '../src/domain/core/calendar.ts';
import { chanceFrom, type Chance } from './random.ts';

/** How a grower truly slows down. The forecast knows neither. */
export type TrueCourse = 'von Bertalanffy' | 'logistic';

/** A growing animal, day by day, and what its keeper wrote down. */
export interface Grower {
  readonly sex: 'female' | 'male';
  /** True mass without gut contents, from the day it hatched. Unit: grams. */
  readonly massG: readonly number[];
  readonly readings: readonly (WeightReading & { readonly day: number })[];
}

const YEARS = 7;
const HATCHED = '2020-07-15' as Day;
export const nightOfDay = (day: number): Day => addDays(HATCHED, day);

const normal = (chance: Chance): number =>
  Math.sqrt(-2 * Math.log(1 - chance.next())) * Math.cos(2 * Math.PI * chance.next());

/** Grams a day at a mass, well fed. Unit of `pace`: a day. */
const gainG: Readonly<Record<TrueCourse, (massG: number, adultG: number, pace: number) => number>> =
  {
    // Length, the cube root of mass, closes in on its last value [von Bertalanffy L. 1938].
    'von Bertalanffy': (massG, adultG, pace) =>
      3 * pace * massG ** (2 / 3) * (adultG ** (1 / 3) - massG ** (1 / 3)),
    logistic: (massG, adultG, pace) => pace * massG * (1 - massG / adultG),
  };

const USUAL_PACE: Readonly<Record<TrueCourse, number>> = {
  'von Bertalanffy': 0.0023,
  logistic: 0.0066,
};

/** Days from a meal until it is body, and until what is left of it is dropped. */
const DIGESTING = 6;
const DROPPING = 9;

/**
 * An invented grower: its own adult weight and pace, meals at intervals, refused ones, spells of fasting from autumn on,
 * weights about monthly on a scale that is 1 % off, some just after a meal.
 */
export function grower(seed: number, course: TrueCourse): Grower {
  const chance = chanceFrom(seed);
  const sex = chance.happens(0.6) ? 'female' : 'male';
  const adultG = (sex === 'female' ? 2_150 : 1_250) * Math.exp(0.25 * normal(chance));
  const pace = USUAL_PACE[course] * Math.exp(0.3 * normal(chance));
  const appetite = chance.between(0.85, 0.98);
  const often = chance.whole(20, 40);
  const fasts = chance.happens(0.6);
  let massNow = chance.between(55, 78);
  let nextMeal = 14;
  let fastUntil = -1;
  let lastMeal = -Infinity;
  let lastMealG = 0;
  let gainLeft = 0;
  let nextWeight = 14 + chance.whole(0, 20);
  const massG: number[] = [];
  const readings: Grower['readings'][number][] = [];
  for (let day = 0; day < YEARS * 365; day += 1) {
    const night = nightOfDay(day);
    massNow *= 1 - 0.0011;
    if (day - lastMeal < DIGESTING) massNow += gainLeft / DIGESTING;
    massG.push(massNow);
    if (day === nextWeight) {
      readings.push({
        ...weigh(massNow, day - lastMeal, lastMealG, chance),
        day,
        night,
        ...named(day),
      });
      nextWeight += Math.max(7, often + chance.whole(-6, 10));
    }
    // A fast may begin any night of autumn and winter, from half grown on.
    const isWinter = monthOf(night) >= 10 || monthOf(night) <= 2;
    if (fasts && isWinter && massNow > 300 && day > fastUntil && chance.happens(0.006)) {
      fastUntil = day + chance.whole(25, 110);
    }
    if (day < nextMeal || day < fastUntil) continue;
    const interval = massNow < 150 ? 6 : massNow < 700 ? 8 : 12;
    nextMeal = day + interval;
    if (!chance.happens(appetite)) continue;
    lastMeal = day;
    lastMealG = massNow * (massNow < 200 ? 0.12 : massNow < 700 ? 0.085 : 0.06);
    const wanted = gainG[course](massNow, adultG, pace) + 0.0011 * massNow;
    gainLeft = Math.max(0, interval * wanted * chance.between(0.7, 1.3));
  }
  return { sex, massG, readings };
}

const named = (day: number) => ({
  id: `w-${day}`,
  at: `${nightOfDay(day)}T20:00:00+00:00` as Moment,
});

function weigh(massG: number, sinceMeal: number, mealG: number, chance: Chance) {
  const inGutG = mealG * Math.max(0, 1 - sinceMeal / DROPPING);
  const shownG = (massG + inGutG) * (1 + 0.01 * normal(chance));
  const daysSinceMeal = Number.isFinite(sinceMeal) ? sinceMeal : undefined;
  return {
    massG: shownG < 300 ? Math.round(shownG * 10) / 10 : Math.round(shownG),
    daysSinceMeal,
    gut:
      sinceMeal <= 10
        ? ({ kind: 'may be full', mealG: Math.round(mealG) } as const)
        : ({ kind: 'empty' } as const),
  };
}
