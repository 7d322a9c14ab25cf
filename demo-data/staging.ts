import { isLeanMonth } from './nights.ts';

/**
 * How the history ends, whatever the date: each animal's part on the last night.
 *
 * The last meal is offered exactly `mealAgo` nights before it. What a demo must show tonight is so
 * a matter of this table and not of luck.
 */
export interface Closing {
  readonly scene: 'fed' | 'due' | 'left' | 'in blue' | 'regurgitated' | 'refusing' | 'visit';
  readonly mealAgo: number;
  /** Nights since the scene began: opaque seen, brought up, male put in. */
  readonly since?: number;
  /** Not weighed for more than a month. */
  readonly unweighed?: true;
}

export type Role = 'female' | 'male' | 'grower' | 'hatchling' | 'quarantined' | 'passing';

const fed = (mealAgo: number): Closing => ({ scene: 'fed', mealAgo });
const due = (mealAgo: number): Closing => ({ scene: 'due', mealAgo });
const unweighed = (closing: Closing): Closing => ({ ...closing, unweighed: true });
const left: Closing = { scene: 'left', mealAgo: 1 };
const forgotten: Closing = { scene: 'visit', mealAgo: 10, since: 5 };
const lastEvening: Closing = { scene: 'visit', mealAgo: 5, since: 1 };

/** A larger collection repeats the rows, so that every rack has its share of tonight's work. */
const parts: Readonly<Record<Role, readonly Closing[]>> = {
  female: [
    fed(4),
    due(14),
    fed(2),
    forgotten,
    fed(6),
    unweighed(due(15)),
    { scene: 'in blue', mealAgo: 17, since: 4 },
    fed(3),
    fed(5),
    lastEvening,
    left,
    fed(2),
    due(16),
    fed(6),
    due(14),
    fed(4),
  ],
  male: [forgotten, fed(4), fed(3), lastEvening, unweighed(due(15)), fed(6)],
  grower: [
    unweighed(due(8)),
    fed(3),
    fed(2),
    due(7),
    left,
    { scene: 'in blue', mealAgo: 12, since: 6 },
    fed(4),
    unweighed(due(9)),
    { scene: 'regurgitated', mealAgo: 7, since: 5 },
    fed(1),
    due(7),
    fed(3),
  ],
  hatchling: [
    fed(3),
    due(7),
    { scene: 'refusing', mealAgo: 7 },
    fed(2),
    unweighed(due(8)),
    { scene: 'in blue', mealAgo: 9, since: 3 },
    due(7),
    { scene: 'refusing', mealAgo: 6 },
    fed(1),
    due(7),
  ],
  quarantined: [due(14), fed(4)],
  passing: [fed(3)],
};

/** From August to March females are fed every 8 nights and not every 14: all comes sooner. */
const SOONER_IN_SEASON = 6;

export function closingOf(role: Role, index: number, lastMonth: number): Closing {
  const part = parts[role];
  const closing = part[index % part.length] ?? fed(3);
  const inRhythm = closing.scene === 'due' || closing.scene === 'in blue';
  const female = role === 'female' || role === 'quarantined';
  if (!inRhythm || !female || isLeanMonth(lastMonth)) return closing;
  return { ...closing, mealAgo: closing.mealAgo - SOONER_IN_SEASON };
}

/** Nights a thing may take that must be over before the last meal is offered. */
export const settlesInTime = (closing: Closing, toGo: number, takes: number): boolean =>
  toGo - takes > closing.mealAgo;

/** What the table says about a meal tonight; undefined: as hunger and habit have it. */
export function stagedMeal(closing: Closing, toGo: number, interval: number): boolean | undefined {
  if (toGo === closing.mealAgo) return true;
  return toGo < closing.mealAgo + Math.ceil(interval * 0.6) ? false : undefined;
}

/** For how long a hatchling of the scene 'refusing' has taken nothing: five or six offers. */
const REFUSING_NIGHTS = 38;

/** What the table says about taking a meal tonight; undefined: as appetite has it. */
export function stagedOutcome(
  closing: Closing,
  toGo: number,
): 'ate' | 'refused' | 'left' | undefined {
  if (closing.scene === 'refusing') return toGo <= REFUSING_NIGHTS ? 'refused' : undefined;
  if (toGo !== closing.mealAgo || closing.scene === 'fed') return undefined;
  return closing.scene === 'left' ? 'left' : 'ate';
}

/** Weights of these are put off until they are plainly due. */
export const stagedUnweighed = (closing: Closing, toGo: number): boolean =>
  closing.unweighed === true && toGo < 37;
