import { GRAMS_PER_OUNCE, GRAMS_PER_POUND, showGrams } from '../core/units.ts';
import type { Doubt } from './doubt.ts';

export interface WeightContext {
  readonly massG: number;
  readonly last?: { readonly massG: number; readonly daysAgo: number } | undefined;
  readonly ageDays?: number | undefined;
  readonly sex: 'male' | 'female' | 'unknown';
  readonly lastMeal?: { readonly massG: number; readonly daysAgo: number } | undefined;
  /** Masses of tubs and bags the keeper has taken off before, in grams. */
  readonly taresG: readonly number[];
  /** The mass just written down for another animal. */
  readonly previousEntry?: { readonly name: string; readonly massG: number } | undefined;
  readonly neighbours: readonly { readonly name: string; readonly massG: number }[];
}

export interface SlipFindings {
  readonly doubts: readonly Doubt[];
  readonly notes: readonly string[];
}

/** Beyond these gaps a large ratio may be plain growth. Source: weightSlips. */
const LONGEST_GAP_DAYS = { small: 45, other: 90 };
const SMALL_G = 200;

/** A ratio to the last mass, what it usually means, and the factor that mends it. Source: weightSlips. */
const RATIO_SLIPS = [
  { from: 8.5, to: 11.5, factor: 1 / 10, says: 'a digit too many' },
  { from: 0.087, to: 0.118, factor: 10, says: 'a digit missing' },
  { from: 85, to: 115, factor: 1 / 100, says: 'two digits too many' },
  { from: 0.0087, to: 0.0118, factor: 100, says: 'two digits missing' },
  { from: 25, to: 32, factor: 1 / GRAMS_PER_OUNCE, says: 'grams and ounces mixed up' },
  { from: 0.031, to: 0.04, factor: GRAMS_PER_OUNCE, says: 'ounces, not grams' },
  { from: 400, to: 510, factor: 1 / GRAMS_PER_POUND, says: 'grams and pounds mixed up' },
  { from: 0.002, to: 0.0025, factor: GRAMS_PER_POUND, says: 'pounds, not grams' },
  { from: 850, to: 1150, factor: 1 / 1000, says: 'grams and kilograms mixed up' },
  { from: 0.00085, to: 0.00115, factor: 1000, says: 'kilograms, not grams' },
] as const;

const TARE_TOLERANCE_G = 5;
const SWAPPED_BACK_WITHIN = 0.12;
/** Within a week, a change up to this share is plain growth, loss or gut; later, what a month allows. */
const PLAIN_WITHIN_A_WEEK = 0.08;
const FULL_WITHIN_DAYS = 3;
const FULL_TOLERANCE = 0.35;
const SAME_CURVE = 0.03;
const OFF_OWN_CURVE = 0.12;

/**
 * What looks wrong with a mass at the scale, with the likely intended value.
 *
 * Held against the animal's own last mass for gaps up to 90 days (45 below 200 g), else against
 * its age alone. A rise that matches a meal of the last three days is noted, not doubted.
 *
 * Unit: grams. Source: weightSlips, growthBounds.
 */
export function weightSlips(context: WeightContext): SlipFindings {
  const { massG, last } = context;
  const longest = last && last.massG < SMALL_G ? LONGEST_GAP_DAYS.small : LONGEST_GAP_DAYS.other;
  if (!last || last.daysAgo > longest) {
    const doubt = outsideAge(context);
    return { doubts: doubt ? [doubt] : [], notes: [] };
  }
  const full = fullBelly(massG, last.massG, context);
  if (full) return { doubts: [], notes: [full] };
  const doubt =
    ratioSlip(massG, last.massG) ??
    transposed(massG, last) ??
    tareSlip(massG, last.massG, context.taresG) ??
    repeatedEntry(context, last.massG) ??
    neighbourSlip(context, last.massG) ??
    growthSlip(context, last);
  return { doubts: doubt ? [doubt] : [], notes: [] };
}

const instead = (massG: number) => {
  const value = massG >= 100 ? Math.round(massG) : Math.round(massG * 10) / 10;
  return { label: showGrams(value), value };
};

function ratioSlip(massG: number, lastG: number): Doubt | undefined {
  const ratio = massG / lastG;
  const slip = RATIO_SLIPS.find(({ from, to }) => ratio >= from && ratio <= to);
  return (
    slip && {
      code: 'ratio',
      message: `${showGrams(massG)} against ${showGrams(lastG)} last time: ${slip.says}?`,
      instead: instead(massG * slip.factor),
    }
  );
}

/**
 * Digits swapped: as typed it is more than an adult gains or loses in the time, swapped it is close.
 *
 * Asking from 8 % on, whatever the time, questioned four true weights of real growing animals.
 */
function transposed(
  massG: number,
  last: { readonly massG: number; readonly daysAgo: number },
): Doubt | undefined {
  const limit =
    last.daysAgo <= 7
      ? { gain: PLAIN_WITHIN_A_WEEK, loss: PLAIN_WITHIN_A_WEEK }
      : limitOver(MONTHLY.adult, last.daysAgo);
  const isPlain = (each: number) => isWithin(limit, each / last.massG - 1);
  if (!Number.isInteger(massG) || isPlain(massG)) return undefined;
  const digits = String(massG);
  const swapped = Array.from({ length: digits.length - 1 }, (_, i) =>
    Number(digits.slice(0, i) + digits.charAt(i + 1) + digits.charAt(i) + digits.slice(i + 2)),
  ).filter((each) => each !== massG && isNear(each, last.massG, SWAPPED_BACK_WITHIN));
  const off = (each: number) => Math.abs(each - last.massG);
  const [best] = swapped.toSorted((a, b) => off(a) - off(b));
  return best === undefined
    ? undefined
    : {
        code: 'transposed',
        message: `${showGrams(massG)} against ${showGrams(last.massG)} last time: two digits swapped?`,
        instead: instead(best),
      };
}

function tareSlip(massG: number, lastG: number, taresG: readonly number[]): Doubt | undefined {
  const tareG = taresG.find((tare) => Math.abs(massG - lastG - tare) <= TARE_TOLERANCE_G);
  return tareG === undefined
    ? undefined
    : {
        code: 'tare',
        message: `${showGrams(massG - lastG)} more than last time, as much as the tub: tare left in?`,
        instead: instead(massG - tareG),
      };
}

function repeatedEntry({ massG, previousEntry }: WeightContext, lastG: number): Doubt | undefined {
  return previousEntry?.massG === massG && !isNear(massG, lastG, SAME_CURVE)
    ? {
        code: 'repeated',
        message: `${showGrams(massG)} is what ${previousEntry.name} just weighed. This snake too?`,
      }
    : undefined;
}

function neighbourSlip({ massG, neighbours }: WeightContext, lastG: number): Doubt | undefined {
  if (isNear(massG, lastG, OFF_OWN_CURVE)) return undefined;
  const close = neighbours.find((each) => isNear(massG, each.massG, SAME_CURVE));
  return close && Math.abs(massG - lastG) / lastG > 2 * OFF_OWN_CURVE
    ? {
        code: 'neighbour',
        message: `${showGrams(massG)} fits ${close.name} next door (${showGrams(close.massG)}), not this one (${showGrams(lastG)}). Right snake?`,
      }
    : undefined;
}

function fullBelly(massG: number, lastG: number, { lastMeal }: WeightContext): string | undefined {
  const gainG = massG - lastG;
  return lastMeal &&
    lastMeal.daysAgo <= FULL_WITHIN_DAYS &&
    gainG > 0 &&
    isNear(gainG, lastMeal.massG, FULL_TOLERANCE)
    ? `Weighed ${lastMeal.daysAgo} days after a meal of ${showGrams(lastMeal.massG)}: the meal is in it.`
    : undefined;
}

const HATCHLING_DAYS = 60;
const ADULT_FROM_G = 700;

/** Most gain and loss in 30 days, as shares. Source: growthBounds, weightSlips. */
const MONTHLY = {
  young: { gain: 0.8, loss: 0.12 },
  adult: { gain: 0.2, loss: 0.12 },
};
/** Hatchlings under 60 days old, per day. Source: weightSlips. */
const HATCHLING_DAILY = { gain: 0.08, loss: 0.03 };

interface Limit {
  readonly gain: number;
  readonly loss: number;
}

function limitOver(monthly: Limit, days: number): Limit {
  const months = Math.max(1, days / 30);
  return { gain: (1 + monthly.gain) ** months - 1, loss: 1 - (1 - monthly.loss) ** months };
}

const isWithin = ({ gain, loss }: Limit, change: number): boolean =>
  change <= gain && change >= -loss;

function growthSlip(
  { massG, ageDays, lastMeal }: WeightContext,
  last: { readonly massG: number; readonly daysAgo: number },
): Doubt | undefined {
  const gapDays = Math.max(1, last.daysAgo);
  const change = massG / last.massG - 1;
  const isHatchling = ageDays !== undefined && ageDays < HATCHLING_DAYS;
  const monthly = last.massG < ADULT_FROM_G ? MONTHLY.young : MONTHLY.adult;
  const limit = isHatchling
    ? {
        gain: HATCHLING_DAILY.gain * gapDays + (lastMeal ? lastMeal.massG / last.massG : 0),
        loss: HATCHLING_DAILY.loss * gapDays,
      }
    : limitOver(monthly, gapDays);
  if (isWithin(limit, change)) return undefined;
  const percent = `${change > 0 ? '+' : '−'}${Math.abs(change * 100).toFixed(0)} %`;
  return {
    code: change > 0 ? 'gain' : 'loss',
    message: `${showGrams(massG)} is ${percent} in ${gapDays === 1 ? '1 day' : `${gapDays} days`}. Weigh again?`,
  };
}

/** Lowest and highest mass that passes without a question, by age. Wide on purpose. Source: weightSlips. */
const AGE_ENVELOPE = [
  { untilDays: 15, female: [35, 95], male: [35, 95] },
  { untilDays: 45, female: [40, 120], male: [40, 120] },
  { untilDays: 120, female: [40, 220], male: [40, 220] },
  { untilDays: 240, female: [55, 450], male: [55, 420] },
  { untilDays: 450, female: [90, 1_000], male: [90, 800] },
  { untilDays: 640, female: [200, 1_500], male: [180, 1_050] },
  { untilDays: 900, female: [350, 2_000], male: [300, 1_300] },
  { untilDays: 1_300, female: [500, 2_800], male: [400, 1_700] },
  { untilDays: Number.POSITIVE_INFINITY, female: [900, 4_500], male: [500, 2_500] },
] as const;

function outsideAge({ massG, ageDays, sex }: WeightContext): Doubt | undefined {
  if (ageDays === undefined) return undefined;
  const row = AGE_ENVELOPE.find(({ untilDays }) => ageDays <= untilDays);
  if (!row) return undefined;
  const [lowG, highG] =
    sex === 'unknown'
      ? [Math.min(row.female[0], row.male[0]), Math.max(row.female[1], row.male[1])]
      : row[sex];
  return massG >= lowG && massG <= highG
    ? undefined
    : {
        code: 'age',
        message: `${showGrams(massG)} at ${ageWords(ageDays)}: usual is ${showGrams(lowG)} to ${showGrams(highG)}. Right snake, right unit?`,
      };
}

const ageWords = (ageDays: number): string =>
  ageDays < 60 ? `${ageDays} days old` : `${Math.round(ageDays / 30.44)} months old`;

const isNear = (a: number, b: number, share: number): boolean => Math.abs(a - b) <= share * b;
