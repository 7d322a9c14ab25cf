import type { ProtocolValue } from './protocol-value.ts';

/** Feeding, weighing, visits and the household. Defaults of the middle school. */
export const homeValues = {
  rolloverHour: {
    value: 12,
    unit: 'o’clock',
    from: 5,
    to: 12,
  },
  eveningHour: {
    value: 19,
    unit: 'o’clock',
    from: 15,
    to: 23,
  },
  hatchlingBelowG: {
    value: 150,
    unit: 'g',
    from: 100,
    to: 200,
  },
  adultFromG: {
    value: 700,
    unit: 'g',
    from: 500,
    to: 1000,
  },
  feedHatchlingDays: {
    value: 6,
    unit: 'days',
    from: 5,
    to: 7,
  },
  feedGrowerDays: {
    value: 7,
    unit: 'days',
    from: 7,
    to: 10,
  },
  feedMaleDays: {
    value: 12,
    unit: 'days',
    from: 10,
    to: 21,
  },
  feedMaleSeasonDays: {
    value: 14,
    unit: 'days',
    from: 10,
    to: 21,
  },
  feedFemaleDays: {
    value: 14,
    unit: 'days',
    from: 10,
    to: 21,
  },
  feedFemaleSeasonDays: {
    value: 8,
    unit: 'days',
    from: 7,
    to: 10,
  },
  settleInDays: {
    value: 6,
    unit: 'days',
    from: 5,
    to: 7,
  },
  feedOverdueDays: {
    value: 5,
    unit: 'days',
    from: 2,
    to: 10,
  },
  leftHours: {
    value: 12,
    unit: 'hours',
    from: 8,
    to: 12,
  },
  regurgitationHoldDays: {
    value: 14,
    unit: 'days',
    from: 10,
    to: 14,
  },
  firstMealAfterHoldShare: {
    value: 0.05,
    unit: 'share of body mass',
    from: 0.03,
    to: 0.05,
  },
  blueHoldDays: {
    value: 25,
    unit: 'days',
    from: 14,
    to: 25,
  },
  maleStayDays: {
    value: 3,
    unit: 'days',
    from: 1,
    to: 5,
  },
  maleForgottenDays: {
    value: 5,
    unit: 'days',
    from: 3,
    to: 7,
  },
  weighDays: {
    value: 30,
    unit: 'days',
    from: 14,
    to: 30,
  },
  weighOftenDays: {
    value: 14,
    unit: 'days',
    from: 7,
    to: 14,
  },
  backupDays: {
    value: 7,
    unit: 'days',
    from: 1,
    to: 14,
  },
} as const satisfies Record<string, ProtocolValue>;
