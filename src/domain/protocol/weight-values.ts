import type { ProtocolValue } from './protocol-value.ts';

/** Weights and growth: what counts as a loss, and how far ahead anything is said. */
export const weightValues = {
  gutDays: {
    value: 10,
    unit: 'days',
    from: 7,
    to: 14,
  },
  weightTrendDays: {
    value: 120,
    unit: 'days',
    from: 60,
    to: 200,
  },
  weightTrendSpanDays: {
    value: 14,
    unit: 'days',
    from: 14,
    to: 28,
  },
  weightNoiseShare: {
    value: 0.02,
    unit: 'share of body mass',
    from: 0.01,
    to: 0.04,
  },
  weightPeakDays: {
    value: 365,
    unit: 'days',
    from: 180,
    to: 500,
  },
  shedLossShare: {
    value: 0.03,
    unit: 'share of body mass',
    from: 0.01,
    to: 0.05,
  },
  fastLossLowShare: {
    value: 0.015,
    unit: 'share of body mass',
    from: 0.01,
    to: 0.03,
  },
  fastLossHighShare: {
    value: 0.05,
    unit: 'share of body mass',
    from: 0.03,
    to: 0.06,
  },
  paceLossShare: {
    value: 0.05,
    unit: 'share of body mass',
    from: 0.03,
    to: 0.1,
  },
  lossActShare: {
    value: 0.15,
    unit: 'share of body mass',
    from: 0.1,
    to: 0.2,
  },
  hatchlingLossWatchShare: {
    value: 0.08,
    unit: 'share of body mass',
    from: 0.05,
    to: 0.1,
  },
  hatchlingLossActShare: {
    value: 0.12,
    unit: 'share of body mass',
    from: 0.1,
    to: 0.15,
  },
  weighAgainShare: {
    value: 0.25,
    unit: 'share of body mass',
    from: 0.2,
    to: 0.35,
  },
  weighAgainDays: {
    value: 30,
    unit: 'days',
    from: 14,
    to: 45,
  },
  fastGainShare: {
    value: 0.12,
    unit: 'share of body mass',
    from: 0.08,
    to: 0.2,
  },
  growthWithinDays: {
    value: 1_000,
    unit: 'days',
    from: 365,
    to: 1_500,
  },
  growthReachChance: {
    value: 0.5,
    unit: 'share',
    from: 0.3,
    to: 0.9,
  },
  growthStaleDays: {
    value: 90,
    unit: 'days',
    from: 45,
    to: 150,
  },
} as const satisfies Record<string, ProtocolValue>;
