import type { ReasonsFor, ValueReason } from './protocol-value.ts';
import type { windowValues } from './window-values.ts';

const whys = [
  ['EarlyDays', 'early', 'one in ten takes no longer than this'],
  ['LikelyDays', 'likely', 'the most usual length'],
  ['LateDays', 'late', 'one in ten takes at least this long'],
  ['NeverBeforeDays', 'never before', 'shorter than this, a date must be wrong'],
  ['NeverAfterDays', 'never after', 'longer than this, a date must be wrong'],
] as const;

/** Why each of the five numbers of a link, by what stands before them. */
const linkReasons = <Name extends string>(name: Name, words: string) =>
  Object.fromEntries(
    whys.map(([part, told, why]): [string, ValueReason] => [
      `${name}${part}`,
      { name: `${words}, ${told}`, why: `${words}: ${why}.`, source: 'seasonLinks' },
    ]),
    // A computed key is only a string to the compiler.
  ) as Record<`${Name}${(typeof whys)[number][0]}`, ValueReason>;

export const windowReasons: ReasonsFor<typeof windowValues> = {
  ...linkReasons('largeFollicleToOvulation', 'Follicle of 20 mm to ovulation'),
  ...linkReasons('ripeFollicleToOvulation', 'Follicle of 35 mm or more to ovulation'),
  ...linkReasons('lastLockToOvulation', 'Last lock to ovulation'),
  ...linkReasons('ovulationToShed', 'Ovulation to pre-lay shed'),
  ...linkReasons('shedToLay', 'Pre-lay shed to eggs'),
  ...linkReasons('layToPip', 'Eggs to first pip at 31.5 °C'),
  ...linkReasons('pipToOut', 'First pip to out of the egg'),
  ...linkReasons('outToFirstShed', 'Out of the egg to first shed'),
  ...linkReasons('firstShedToFirstMeal', 'First shed to first meal taken'),
  windowKeeperShare: {
    name: 'Spread from room to room',
    why: 'How much of the usual spread is one room differing from another, not one cycle from the next.',
    source: 'windowLearning',
  },
  windowFemaleShare: {
    name: 'Spread from female to female',
    why: 'How much of the spread within a room is one female differing from another.',
    source: 'windowLearning',
  },
  windowSpreadCycles: {
    name: 'Weight of the usual spread',
    why: 'The usual spread counts as much as this many of your own cycles.',
    source: 'windowLearning',
  },
};
