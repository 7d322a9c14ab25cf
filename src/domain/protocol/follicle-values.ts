import type { ProtocolValue } from './protocol-value.ts';

/** Follicle scans: how far a size is to be trusted, and what counts as growing or resorbing. */
export const follicleValues = {
  follicleErrorShare: {
    value: 0.08,
    unit: 'share',
    from: 0.04,
    to: 0.15,
  },
  follicleErrorLeastMm: {
    value: 1,
    unit: 'mm',
    from: 0.5,
    to: 2,
  },
  follicleErrorWorth: {
    value: 8,
    unit: 'scans',
    from: 2,
    to: 30,
  },
  feltErrorShare: {
    value: 0.25,
    unit: 'share',
    from: 0.15,
    to: 0.4,
  },
  feltSmallMm: {
    value: 12,
    unit: 'mm',
    from: 8,
    to: 14,
  },
  feltRoundMm: {
    value: 20,
    unit: 'mm',
    from: 15,
    to: 24,
  },
  feltLargeMm: {
    value: 30,
    unit: 'mm',
    from: 25,
    to: 36,
  },
  feltEggMm: {
    value: 40,
    unit: 'mm',
    from: 38,
    to: 50,
  },
  follicleSeenFromMm: {
    value: 8,
    unit: 'mm',
    from: 4,
    to: 10,
  },
  follicleGrowsFromMm: {
    value: 10,
    unit: 'mm',
    from: 8,
    to: 15,
  },
  follicleSwingMm: {
    value: 5,
    unit: 'mm',
    from: 3,
    to: 10,
  },
  follicleWithinDays: {
    value: 150,
    unit: 'days',
    from: 60,
    to: 200,
  },
  follicleReachChance: {
    value: 0.9,
    unit: 'share',
    from: 0.5,
    to: 0.99,
  },
  resorbingApartDays: {
    value: 14,
    unit: 'days',
    from: 14,
    to: 28,
  },
} as const satisfies Record<string, ProtocolValue>;
