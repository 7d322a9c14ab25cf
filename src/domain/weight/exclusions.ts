import type { Day } from '../core/calendar.ts';
import { showGrams } from '../core/units.ts';
import type { Protocol } from '../protocol/values.ts';
import { standsAlone, type Drop } from './drop.ts';
import { fastLoss } from './fast.ts';
import { layingBetween, type Laying } from './laying.ts';
import type { WeightReading } from './reading.ts';
import { dateWords, daysWords } from '../core/day-words.ts';
import { percentWords } from './words.ts';

/** What a drop may be, other than a loss. */
export type Cause = 'laying' | 'entry error?' | 'gut contents' | 'shed' | 'expected fast';

/** One such cause looked at, and what was found. */
export interface Looked {
  readonly what: Cause;
  readonly sentence: string;
  /** All of the drop is put down to it. */
  readonly excludes: boolean;
  /** How much of the drop it may be, in grams; undefined where that is not known. */
  readonly upToG?: number | undefined;
}

export interface DropContext {
  readonly readings: readonly WeightReading[];
  readonly layings: readonly Laying[];
  /** Nights of sheds. */
  readonly sheds: readonly Day[];
  readonly protocol: Protocol;
}

/** Eggs laid between two weights are not a loss, whatever they weigh. */
export function lookAtLaying({ before, after, lostG }: Drop, { layings }: DropContext): Looked {
  const laying = layingBetween(before, after, layings);
  if (!laying) return { what: 'laying', excludes: false, sentence: 'No laying between the two.' };
  const eggs = laying.clutchMassG;
  const sentence =
    eggs === undefined
      ? 'She laid between the two: the drop is her eggs.'
      : `She laid ${showGrams(eggs)} of eggs between the two: the drop of ${showGrams(lostG)} is that.`;
  return { what: 'laying', excludes: true, sentence };
}

/**
 * A very large drop in a very short time, or from a weight that stands alone, is first taken for a slip.
 * A second weight that agrees with the newest settles it. Sources: weightSlips.
 */
export function lookForSlip(drop: Drop, { readings, protocol }: DropContext): Looked {
  const { before, after, days, share } = drop;
  const alone = standsAlone(before, readings);
  if (alone) {
    const sentence = `${showGrams(before.massG)} on ${dateWords(before.night)} stands alone between ${showGrams(alone.before.massG)} and ${showGrams(alone.after.massG)}: look at that entry.`;
    return { what: 'entry error?', excludes: true, sentence };
  }
  const isSudden = share > protocol.weighAgainShare && days < protocol.weighAgainDays;
  if (!isSudden) {
    const sentence = `${percentWords(share)} in ${daysWords(days)}: no need to doubt the scale first.`;
    return { what: 'entry error?', excludes: false, sentence };
  }
  const agrees = readings.some(
    (reading) =>
      reading !== before &&
      reading !== after &&
      reading.night >= before.night &&
      Math.abs(reading.massG / after.massG - 1) <= SAME_WEIGHT,
  );
  return agrees
    ? { what: 'entry error?', excludes: false, sentence: 'Weighed again, and it is so.' }
    : {
        what: 'entry error?',
        excludes: true,
        sentence: `${percentWords(share)} in ${daysWords(days)} is more often a slip: weigh again.`,
      };
}

/** Two weights this near say the same. */
const SAME_WEIGHT = 0.05;

/** What was in the gut at the earlier weight, and has been digested since. */
export function lookAtGut({ before, lostG }: Drop): Looked {
  const what = 'gut contents';
  if (before.gut.kind === 'empty') {
    const { daysSinceMeal } = before;
    const since = daysSinceMeal === undefined ? '' : `, ${daysWords(daysSinceMeal)} after a meal`;
    const sentence = `The earlier weight was of an empty gut${since}.`;
    return { what, excludes: false, upToG: 0, sentence };
  }
  if (before.gut.kind === 'unknown') {
    const sentence = 'No meal is on record before the earlier weight: its gut may have been full.';
    return { what, excludes: false, upToG: undefined, sentence };
  }
  const { mealG } = before.gut;
  if (mealG === undefined) {
    const sentence = 'The earlier weight came soon after a meal of unknown mass.';
    return { what, excludes: false, upToG: undefined, sentence };
  }
  const all = mealG >= lostG;
  const sentence = `The earlier weight had up to ${showGrams(mealG)} of food in it${all ? ': as much as the drop' : ''}.`;
  return { what, excludes: all, upToG: mealG, sentence };
}

/** Skin, and the water and urates held back in blue. */
export function lookAtShed({ before, after }: Drop, { sheds, protocol }: DropContext): Looked {
  const shed = sheds.findLast((night) => night >= before.night && night <= after.night);
  if (shed === undefined) {
    return { what: 'shed', excludes: false, upToG: 0, sentence: 'No shed between the two.' };
  }
  const upToG = protocol.shedLossShare * before.massG;
  const sentence = `It shed on ${shed}: that may be up to ${showGrams(upToG)}.`;
  return { what: 'shed', excludes: false, upToG, sentence };
}

/** What is left of the drop, against what days without food cost. Unit of `leftG`: grams. */
export function lookAtFast(
  { before, after, days }: Drop,
  leftG: number,
  protocol: Protocol,
): Looked {
  const fasted = Math.min(days, after.daysSinceMeal ?? days);
  const { low, high } = fastLoss(fasted, protocol);
  const upToG = high * before.massG;
  const sentence =
    fasted === 0
      ? 'It ate the night of the newest weight.'
      : `${daysWords(fasted)} without food cost ${percentWords(low)} to ${percentWords(high)}; ${leftG > upToG ? 'this is more' : 'this is no more'}.`;
  return { what: 'expected fast', excludes: leftG > 0 && leftG <= upToG, upToG, sentence };
}
