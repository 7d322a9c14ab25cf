import { daysBetween, type Day } from '../core/calendar.ts';
import type { Protocol } from '../protocol/values.ts';
import { sinceLaying, type Laying } from '../weight/laying.ts';
import type { WeightReading } from '../weight/reading.ts';
import { weightCourse, type WeightTrend } from '../weight/trend.ts';
import { chanceBy, type DayChances } from '../windows/day-chances.ts';
import { chancesReached } from './first-reach.ts';
import { follow } from './follow.ts';
import { marksOf } from './marks.ts';
import { coursesOf, growthPriors } from './prior.ts';

export type GrowthWindow =
  | {
      /** `chances` are for each day, given that it gets there within `withinDays`. */
      readonly kind: 'window';
      readonly chances: DayChances;
      /** Chance that it gets there within `withinDays` at all. */
      readonly chanceWithin: number;
      readonly withinDays: number;
      /** Nights of weights that it rests on. */
      readonly weights: number;
    }
  | { readonly kind: 'there'; readonly since: Day }
  /** It loses weight of late, beyond doubt: no date is given while it does. */
  | { readonly kind: 'not growing'; readonly trend: WeightTrend }
  | {
      readonly kind: 'not likely';
      readonly chanceWithin: number;
      readonly withinDays: number;
      readonly weights: number;
    }
  | {
      readonly kind: 'too little known';
      readonly why:
        'fewer than three weights' | 'weights too close together' | 'last weight too old';
    };

const NIGHTS = 3;
const SPAN_DAYS = 28;

/**
 * When a growing animal first weighs a target, without what is in its gut.
 *
 * Growth slows towards an adult weight; how fast, and towards what, is learnt from its own weights over what is usual for
 * its sex. A female that has laid is grown: only her weights since then count. Tonight is the first day of the window.
 *
 * Unit: grams. Source: growthModel.
 */
export function growthWindow(
  targetG: number,
  readings: readonly WeightReading[],
  facts: {
    readonly sex: 'female' | 'male' | 'unknown';
    readonly layings: readonly Laying[];
    readonly tonight: Day;
    readonly protocol: Protocol;
  },
): GrowthWindow {
  const { sex, layings, tonight, protocol } = facts;
  const marks = marksOf(sinceLaying(readings, layings), protocol);
  const [first] = marks;
  const last = marks.at(-1);
  const there = marks.find(({ massG }) => massG >= targetG);
  if (there && last && last.massG >= targetG) return { kind: 'there', since: there.night };
  if (!first || !last || marks.length < NIGHTS) {
    return { kind: 'too little known', why: 'fewer than three weights' };
  }
  if (last.days - first.days < SPAN_DAYS) {
    return { kind: 'too little known', why: 'weights too close together' };
  }
  const ago = daysBetween(last.night, tonight);
  if (ago > protocol.growthStaleDays) {
    return { kind: 'too little known', why: 'last weight too old' };
  }
  const trend = weightCourse(readings, layings, protocol);
  if (trend.kind === 'trend' && trend.high < 0) return { kind: 'not growing', trend };
  const withinDays = protocol.growthWithinDays;
  const followed = follow(coursesOf(growthPriors[sex]), marks);
  const reached = chancesReached(followed, targetG, withinDays + ago).slice(ago);
  const chanceWithin = reached.at(-1) ?? 0;
  const weights = marks.length;
  if (chanceWithin < protocol.growthReachChance) {
    return { kind: 'not likely', chanceWithin, withinDays, weights };
  }
  const chances = reached.map((chance, day) => (chance - (reached[day - 1] ?? 0)) / chanceWithin);
  return { kind: 'window', chances: { from: tonight, chances }, chanceWithin, withinDays, weights };
}

/** Chance that it is there by the end of a day, whether or not it ever is. */
export const chanceThereBy = (
  day: Day,
  { chances, chanceWithin }: Extract<GrowthWindow, { kind: 'window' }>,
): number => chanceWithin * chanceBy(day, chances);
