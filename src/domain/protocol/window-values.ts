import type { ProtocolValue } from './protocol-value.ts';

/** The five numbers that say how long one link of a season takes, by what stands before them. */
type LinkValues<Name extends string> = Record<
  `${Name}${'Early' | 'Likely' | 'Late' | 'NeverBefore' | 'NeverAfter'}Days`,
  ProtocolValue
>;

interface Days {
  readonly early: number;
  readonly likely: number;
  readonly late: number;
  readonly never: readonly [before: number, after: number];
}

const days = (value: number, from: number, to: number): ProtocolValue => ({
  value,
  unit: 'days',
  from,
  to,
});

function linkValues<Name extends string>(
  name: Name,
  { early, likely, late, never: [before, after] }: Days,
): LinkValues<Name> {
  return {
    [`${name}EarlyDays`]: days(early, before, likely),
    [`${name}LikelyDays`]: days(likely, early, late),
    [`${name}LateDays`]: days(late, likely, after),
    [`${name}NeverBeforeDays`]: days(before, 0, early),
    [`${name}NeverAfterDays`]: days(after, late, 2 * after),
    // A computed key is only a string to the compiler.
  } as LinkValues<Name>;
}

/** How long the links of a season take before the keeper's own cycles say better, and how fast those do. */
export const windowValues = {
  ...linkValues('largeFollicleToOvulation', {
    early: 25,
    likely: 45,
    late: 80,
    never: [7, 150],
  }),
  ...linkValues('ripeFollicleToOvulation', {
    early: 5,
    likely: 15,
    late: 35,
    never: [0, 70],
  }),
  // Stored sperm makes this one as long as it may be.
  ...linkValues('lastLockToOvulation', {
    early: 5,
    likely: 25,
    late: 60,
    never: [0, 200],
  }),
  ...linkValues('ovulationToShed', {
    early: 15,
    likely: 19,
    late: 24,
    never: [8, 40],
  }),
  ...linkValues('shedToLay', {
    early: 26,
    likely: 30,
    late: 36,
    never: [14, 55],
  }),
  ...linkValues('layToPip', {
    early: 54,
    likely: 57,
    late: 62,
    never: [45, 90],
  }),
  ...linkValues('pipToOut', {
    early: 1,
    likely: 2,
    late: 3,
    never: [0, 7],
  }),
  ...linkValues('outToFirstShed', {
    early: 7,
    likely: 10,
    late: 16,
    never: [4, 30],
  }),
  ...linkValues('firstShedToFirstMeal', {
    early: 2,
    likely: 9,
    late: 35,
    never: [0, 150],
  }),
  windowKeeperShare: {
    value: 0.5,
    unit: 'share',
    from: 0.2,
    to: 0.8,
  },
  windowFemaleShare: {
    value: 0.25,
    unit: 'share',
    from: 0,
    to: 0.8,
  },
  windowSpreadCycles: {
    value: 8,
    unit: 'cycles',
    from: 2,
    to: 30,
  },
} as const satisfies Record<string, ProtocolValue>;
