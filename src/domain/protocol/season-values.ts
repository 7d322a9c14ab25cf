import type { ProtocolValue } from './protocol-value.ts';

/** From the first scan to recovery: when to look, when to pair, and when to worry. */
export const seasonValues = {
  femaleFromG: {
    value: 1500,
    unit: 'g',
    from: 1200,
    to: 2000,
  },
  femaleFromMonths: {
    value: 30,
    unit: 'months',
    from: 18,
    to: 48,
  },
  maleFromG: {
    value: 500,
    unit: 'g',
    from: 350,
    to: 800,
  },
  maleFromMonths: {
    value: 12,
    unit: 'months',
    from: 6,
    to: 18,
  },
  maleLossWatchShare: {
    value: 0.08,
    unit: 'share of body mass',
    from: 0.05,
    to: 0.15,
  },
  maleLossStopShare: {
    value: 0.12,
    unit: 'share of body mass',
    from: 0.1,
    to: 0.2,
  },
  maleRestDays: {
    value: 4,
    unit: 'days',
    from: 2,
    to: 7,
  },
  maleThinRestDays: {
    value: 7,
    unit: 'days',
    from: 4,
    to: 14,
  },
  maleFemales: {
    value: 6,
    unit: 'females',
    from: 2,
    to: 12,
  },
  youngMaleFemales: {
    value: 2,
    unit: 'females',
    from: 1,
    to: 4,
  },
  recoveredShare: {
    value: 0.95,
    unit: 'share of body mass',
    from: 0.9,
    to: 1,
  },
  recoveringDays: {
    value: 180,
    unit: 'days',
    from: 90,
    to: 270,
  },
  firstScanMonth: {
    value: 10,
    unit: 'month',
    from: 8,
    to: 12,
  },
  scanSmallDays: {
    value: 30,
    unit: 'days',
    from: 14,
    to: 42,
  },
  scanGrowingDays: {
    value: 21,
    unit: 'days',
    from: 14,
    to: 30,
  },
  scanLargeDays: {
    value: 14,
    unit: 'days',
    from: 7,
    to: 21,
  },
  pairFromMm: {
    value: 12,
    unit: 'mm',
    from: 8,
    to: 15,
  },
  largeFromMm: {
    value: 20,
    unit: 'mm',
    from: 18,
    to: 25,
  },
  preLayFromMm: {
    value: 30,
    unit: 'mm',
    from: 28,
    to: 40,
  },
  dailyLooksFromMm: {
    value: 35,
    unit: 'mm',
    from: 30,
    to: 40,
  },
  pairStopMm: {
    value: 45,
    unit: 'mm',
    from: 40,
    to: 50,
  },
  pairAgainDays: {
    value: 9,
    unit: 'days',
    from: 7,
    to: 30,
  },
  mealToPairingDays: {
    value: 3,
    unit: 'days',
    from: 2,
    to: 5,
  },
  signsFreshDays: {
    value: 60,
    unit: 'days',
    from: 30,
    to: 90,
  },
} as const satisfies Record<string, ProtocolValue>;
