import type { ReasonsFor } from './protocol-value.ts';
import type { weightValues } from './weight-values.ts';

export const weightReasons: ReasonsFor<typeof weightValues> = {
  gutDays: {
    name: 'A meal may still be in the gut for',
    why: 'A weight so soon after a meal may have the meal in it, and is not compared with an empty one.',
    source: 'gutContents',
  },
  weightTrendDays: {
    name: 'A trend reaches back',
    why: 'Older weights say how it grew then, not how it grows now.',
    source: 'weightModel',
  },
  weightTrendSpanDays: {
    name: 'A trend spans at least',
    why: 'Within less than this, water and urates move a weight more than growth does.',
    source: 'weightModel',
  },
  weightNoiseShare: {
    name: 'A weight is off by',
    why: 'One SD of an empty weight: scale, water and urates.',
    source: 'weightModel',
  },
  weightPeakDays: {
    name: 'A loss is counted from the highest weight of',
    why: 'So far back, and not beyond the last laying.',
    source: 'weightModel',
  },
  shedLossShare: {
    name: 'A shed costs up to',
    why: 'Skin, and what was held back in blue: a drop across a shed is partly this.',
    source: 'weightModel',
  },
  fastLossLowShare: {
    name: 'A fast costs at least, in 30 days',
    why: '0.05 % a day: what a snake that spends little loses without food.',
    source: 'fasting',
  },
  fastLossHighShare: {
    name: 'A fast costs at most, in 30 days',
    why: '0.17 % a day. A faster loss is more than a fast.',
    source: 'fasting',
  },
  paceLossShare: {
    name: 'Watch one that lost, faster than a fast,',
    why: 'From its highest weight. Smaller drops come and go with water and urates.',
    source: 'lossLimits',
  },
  lossActShare: {
    name: 'Ask a vet about one that lost',
    why: 'From its highest weight, however slowly it went.',
    source: 'lossLimits',
  },
  hatchlingLossWatchShare: {
    name: 'Watch a hatchling that lost',
    why: 'Hatchlings lose twice as fast as adults and have less to lose.',
    source: 'nonFeeders',
  },
  hatchlingLossActShare: {
    name: 'Ask a vet about a hatchling that lost',
    why: 'From here a hatchling that does not eat is a vet’s matter.',
    source: 'nonFeeders',
  },
  weighAgainShare: {
    name: 'Weigh again before believing a drop of',
    why: 'So much in so short a time is more often a slip than a loss.',
    source: 'weightSlips',
  },
  weighAgainDays: {
    name: 'Weigh again where it dropped within',
    why: 'Beyond this, so large a drop can be true.',
    source: 'weightSlips',
  },
  fastGainShare: {
    name: 'Growing too fast from, in 30 days',
    why: 'Heavy feeding makes fat animals, not early breeders.',
    source: 'powerFeeding',
  },
  growthWithinDays: {
    name: 'A target weight is looked for within',
    why: 'Nothing is said of a weight that lies farther off.',
    source: 'growthModel',
  },
  growthReachChance: {
    name: 'Chance needed to say when it gets there',
    why: 'Where it is less likely to get there at all, only that is said.',
    source: 'growthModel',
  },
  growthStaleDays: {
    name: 'Too old to forecast growth from',
    why: 'After so long without a weight, weigh first.',
    source: 'growthModel',
  },
};
