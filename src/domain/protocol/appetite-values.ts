import type { ProtocolValue } from './protocol-value.ts';

/** Who eats how often, what is thawed for it, and when a refusal is more than that. */
export const appetiteValues = {
  acceptanceWorth: {
    name: 'Weight of the usual appetite',
    value: 4,
    unit: 'offers',
    from: 1,
    to: 20,
  },
  thawEnoughShare: {
    name: 'Thaw enough for',
    value: 0.9,
    unit: 'share',
    from: 0.5,
    to: 0.99,
  },
  growerRefusals: {
    name: 'A grower’s refusals are looked into from',
    value: 3,
    unit: 'offers',
    from: 2,
    to: 4,
  },
  adultRefusals: {
    name: 'An adult’s refusals are looked into from',
    value: 4,
    unit: 'offers',
    from: 2,
    to: 8,
  },
  refusalLossShare: {
    name: 'Refusals with a loss count from',
    value: 0.1,
    unit: 'share of body mass',
    from: 0.08,
    to: 0.15,
  },
  growerRefusalLossShare: {
    name: 'A grower’s refusals with a loss count from',
    value: 0.05,
    unit: 'share of body mass',
    from: 0.03,
    to: 0.1,
  },
  arrivalRefusalDays: {
    name: 'A new arrival may refuse for',
    value: 28,
    unit: 'days',
    from: 14,
    to: 42,
  },
  arrivalRefusalActDays: {
    name: 'Ask about a new arrival that refuses for',
    value: 42,
    unit: 'days',
    from: 28,
    to: 60,
  },
  postLayRefusalDays: {
    name: 'A female that laid eats by',
    value: 21,
    unit: 'days',
    from: 14,
    to: 28,
  },
} as const satisfies Record<string, ProtocolValue>;
