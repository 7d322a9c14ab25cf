import type { Protocol } from '../protocol/values.ts';

/** From one event of a season to the next. Each link is learnt by itself. */
export type LinkName = keyof typeof prefixes;

/** Where a link's numbers stand in the protocol. */
const prefixes = {
  /** From a largest follicle of 20 mm. */
  'large follicle to ovulation': 'largeFollicleToOvulation',
  /** From a largest follicle of 35 mm or more. */
  'ripe follicle to ovulation': 'ripeFollicleToOvulation',
  'last lock to ovulation': 'lastLockToOvulation',
  'ovulation to shed': 'ovulationToShed',
  'shed to lay': 'shedToLay',
  /** At an incubator's usual 31.5 °C. */
  'lay to pip': 'layToPip',
  'pip to out': 'pipToOut',
  'out to first shed': 'outToFirstShed',
  'first shed to first meal': 'firstShedToFirstMeal',
} as const;

/** How long a link takes among all keepers, in days. */
export interface Spread {
  /** One in ten takes no longer. */
  readonly early: number;
  readonly likely: number;
  /** One in ten takes at least as long. */
  readonly late: number;
  /** Outside these two, one of the dates must be wrong. */
  readonly neverBefore: number;
  readonly neverAfter: number;
}

export function spreadOf(link: LinkName, protocol: Protocol): Spread {
  const prefix = prefixes[link];
  return {
    early: protocol[`${prefix}EarlyDays`],
    likely: protocol[`${prefix}LikelyDays`],
    late: protocol[`${prefix}LateDays`],
    neverBefore: protocol[`${prefix}NeverBeforeDays`],
    neverAfter: protocol[`${prefix}NeverAfterDays`],
  };
}
