import type { ReasonsFor } from './protocol-value.ts';
import type { weightValues } from './weight-values.ts';

export const weightReasons: ReasonsFor<typeof weightValues> = {
  gutDays: {
    why: 'A weight so soon after a meal may have the meal in it, and is not compared with an empty one.',
    source: 'gutContents',
  },
  weightTrendDays: {
    why: 'Older weights say how it grew then, not how it grows now.',
    source: 'weightModel',
  },
  weightTrendSpanDays: {
    why: 'Within less than this, water and urates move a weight more than growth does.',
    source: 'weightModel',
  },
  weightNoiseShare: {
    why: 'One SD of an empty weight: scale, water and urates.',
    source: 'weightModel',
  },
  weightPeakDays: {
    why: 'So far back, and not beyond the last laying.',
    source: 'weightModel',
  },
  shedLossShare: {
    why: 'Skin, and what was held back in blue: a drop across a shed is partly this.',
    source: 'weightModel',
  },
  fastLossLowShare: {
    why: '0.05 % a day: what a snake that spends little loses without food.',
    source: 'fasting',
  },
  fastLossHighShare: {
    why: '0.17 % a day. A faster loss is more than a fast.',
    source: 'fasting',
  },
  paceLossShare: {
    why: 'From its highest weight. Smaller drops come and go with water and urates.',
    source: 'lossLimits',
  },
  lossActShare: {
    why: 'From its highest weight, however slowly it went.',
    source: 'lossLimits',
  },
  hatchlingLossWatchShare: {
    why: 'Hatchlings lose twice as fast as adults and have less to lose.',
    source: 'nonFeeders',
  },
  hatchlingLossActShare: {
    why: 'From here a hatchling that does not eat is a vet’s matter.',
    source: 'nonFeeders',
  },
  weighAgainShare: {
    why: 'So much in so short a time is more often a slip than a loss.',
    source: 'weightSlips',
  },
  weighAgainDays: {
    why: 'Beyond this, so large a drop can be true.',
    source: 'weightSlips',
  },
  fastGainShare: {
    why: 'Heavy feeding makes fat animals, not early breeders.',
    source: 'powerFeeding',
  },
  growthWithinDays: {
    why: 'Nothing is said of a weight that lies farther off.',
    source: 'growthModel',
  },
  growthReachChance: {
    why: 'Where it is less likely to get there at all, only that is said.',
    source: 'growthModel',
  },
  growthStaleDays: {
    why: 'After so long without a weight, weigh first.',
    source: 'growthModel',
  },
};
