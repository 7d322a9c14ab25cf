import type { ProtocolValue } from './protocol-value.ts';

/** Who eats how often, what is thawed for it, and when a refusal is more than that. */
export const appetiteValues = {
  yearShiftMonths: {
    value: 0,
    unit: 'months',
    from: 0,
    to: 6,
  },
  feedRecoveringDays: {
    value: 7,
    unit: 'days',
    from: 7,
    to: 10,
  },
  buildingPortion: {
    value: 0.75,
    unit: 'share',
    from: 0.5,
    to: 1,
  },
  maleSeasonPortion: {
    value: 0.75,
    unit: 'share',
    from: 0.5,
    to: 1,
  },
  mealsAfterHold: {
    value: 3,
    unit: 'meals',
    from: 2,
    to: 4,
  },
  afterHoldPortion: {
    value: 0.75,
    unit: 'share',
    from: 0.5,
    to: 0.75,
  },
  mealToHandlingDays: {
    value: 2,
    unit: 'days',
    from: 1,
    to: 5,
  },
  largeMealShare: {
    value: 0.15,
    unit: 'share of body mass',
    from: 0.1,
    to: 0.3,
  },
  largeMealRestDays: {
    value: 5,
    unit: 'days',
    from: 2,
    to: 8,
  },
  orderDays: {
    value: 10,
    unit: 'days',
    from: 5,
    to: 28,
  },
  regurgitationsWithinDays: {
    value: 60,
    unit: 'days',
    from: 30,
    to: 90,
  },
  acceptanceWorth: {
    value: 4,
    unit: 'offers',
    from: 1,
    to: 20,
  },
  thawEnoughShare: {
    value: 0.9,
    unit: 'share',
    from: 0.5,
    to: 0.99,
  },
  growerRefusals: {
    value: 3,
    unit: 'offers',
    from: 2,
    to: 4,
  },
  adultRefusals: {
    value: 4,
    unit: 'offers',
    from: 2,
    to: 8,
  },
  refusalLossShare: {
    value: 0.1,
    unit: 'share of body mass',
    from: 0.08,
    to: 0.15,
  },
  growerRefusalLossShare: {
    value: 0.05,
    unit: 'share of body mass',
    from: 0.03,
    to: 0.1,
  },
  arrivalRefusalDays: {
    value: 28,
    unit: 'days',
    from: 14,
    to: 42,
  },
  arrivalRefusalActDays: {
    value: 42,
    unit: 'days',
    from: 28,
    to: 60,
  },
  postLayRefusalDays: {
    value: 21,
    unit: 'days',
    from: 14,
    to: 28,
  },
} as const satisfies Record<string, ProtocolValue>;
