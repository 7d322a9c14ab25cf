import type { SourceId } from '../sources.ts';

/** One number the rules work with, and everything a keeper needs to judge it. */
export interface ProtocolValue {
  readonly value: number;
  readonly unit: 'days' | 'hours' | 'o’clock' | 'g' | 'share of body mass';
  /** The range in use among keepers. */
  readonly from: number;
  readonly to: number;
  readonly why: string;
  readonly source: SourceId;
}

/** Defaults of the middle school. Data: no rule holds a number of its own. */
export const protocolValues = {
  rolloverHour: {
    value: 12,
    unit: 'o’clock',
    from: 5,
    to: 12,
    why: 'Before this hour, a record belongs to the evening before.',
    source: 'household',
  },
  hatchlingBelowG: {
    value: 150,
    unit: 'g',
    from: 100,
    to: 200,
    why: 'Below this it is fed and weighed as a hatchling.',
    source: 'feedingRhythm',
  },
  adultFromG: {
    value: 700,
    unit: 'g',
    from: 500,
    to: 1000,
    why: 'From here it is fed as an adult, not as a grower.',
    source: 'feedingRhythm',
  },
  feedHatchlingDays: {
    value: 6,
    unit: 'days',
    from: 5,
    to: 7,
    why: 'Hatchlings eat all year round.',
    source: 'feedingRhythm',
  },
  feedGrowerDays: {
    value: 7,
    unit: 'days',
    from: 7,
    to: 10,
    why: 'Growers eat weekly; faster growth makes fat animals, not early ones.',
    source: 'feedingRhythm',
  },
  feedMaleDays: {
    value: 12,
    unit: 'days',
    from: 10,
    to: 21,
    why: 'Adult males in summer, kept good, not fat.',
    source: 'feedingUp',
  },
  feedMaleSeasonDays: {
    value: 14,
    unit: 'days',
    from: 10,
    to: 21,
    why: 'Males in the season often fast; offer small and seldom, weigh instead.',
    source: 'feedingUp',
  },
  feedFemaleDays: {
    value: 14,
    unit: 'days',
    from: 10,
    to: 21,
    why: 'Adult females from April to July, kept from getting fat.',
    source: 'feedingUp',
  },
  feedFemaleSeasonDays: {
    value: 8,
    unit: 'days',
    from: 7,
    to: 10,
    why: 'Adult females from August to March, fed up into the season and while they build.',
    source: 'feedingUp',
  },
  settleInDays: {
    value: 6,
    unit: 'days',
    from: 5,
    to: 7,
    why: 'A new arrival is left alone before its first meal.',
    source: 'newArrival',
  },
  feedOverdueDays: {
    value: 5,
    unit: 'days',
    from: 2,
    to: 10,
    why: 'A meal this late is marked as overdue.',
    source: 'household',
  },
  leftHours: {
    value: 12,
    unit: 'hours',
    from: 8,
    to: 12,
    why: 'Prey left in a tub is taken out by then.',
    source: 'leftOvernight',
  },
  regurgitationHoldDays: {
    value: 14,
    unit: 'days',
    from: 10,
    to: 14,
    why: 'After a regurgitation: no food and no handling.',
    source: 'regurgitation',
  },
  firstMealAfterHoldShare: {
    value: 0.05,
    unit: 'share of body mass',
    from: 0.03,
    to: 0.05,
    why: 'The first meal after the hold is small.',
    source: 'regurgitation',
  },
  blueHoldDays: {
    value: 25,
    unit: 'days',
    from: 14,
    to: 25,
    why: 'If no shed was seen by then, the look that saw it in blue no longer holds feeding back.',
    source: 'inBlue',
  },
  maleStayDays: {
    value: 3,
    unit: 'days',
    from: 1,
    to: 5,
    why: 'Then he goes home to drink, rest and eat.',
    source: 'maleStay',
  },
  maleForgottenDays: {
    value: 5,
    unit: 'days',
    from: 3,
    to: 7,
    why: 'A male left in longer than this is losing weight unfed.',
    source: 'maleStay',
  },
  weighDays: {
    value: 30,
    unit: 'days',
    from: 14,
    to: 30,
    why: 'Slow losses show only in a series of weights.',
    source: 'weighing',
  },
  weighOftenDays: {
    value: 14,
    unit: 'days',
    from: 7,
    to: 14,
    why: 'Hatchlings, and males from October to March.',
    source: 'weighing',
  },
  backupDays: {
    value: 7,
    unit: 'days',
    from: 1,
    to: 14,
    why: 'The phone is the weakest part of the record.',
    source: 'backups',
  },
} as const satisfies Record<string, ProtocolValue>;

export type ProtocolKey = keyof typeof protocolValues;

/** The numbers alone, as rules read them. */
export type Protocol = Readonly<Record<ProtocolKey, number>>;

export const defaultProtocol = Object.fromEntries(
  Object.entries(protocolValues).map(([key, { value }]) => [key, value]),
) as Protocol;
