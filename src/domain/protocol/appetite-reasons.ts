import type { ReasonsFor } from './protocol-value.ts';
import type { appetiteValues } from './appetite-values.ts';

export const appetiteReasons: ReasonsFor<typeof appetiteValues> = {
  acceptanceWorth: {
    why: 'So many of its own offers weigh as much as what its class usually eats.',
    source: 'preyModel',
  },
  thawEnoughShare: {
    why: 'On this share of nights nobody who would eat goes without.',
    source: 'preyModel',
  },
  growerRefusals: {
    why: 'Growers that refuse in summer usually have something wrong around them.',
    source: 'refusals',
  },
  adultRefusals: {
    why: 'Outside the season, where nothing explains them.',
    source: 'refusals',
  },
  refusalLossShare: {
    why: 'Even where refusing is usual.',
    source: 'refusals',
  },
  growerRefusalLossShare: {
    why: 'A grower should be gaining.',
    source: 'refusals',
  },
  arrivalRefusalDays: {
    why: 'It settles in first.',
    source: 'refusals',
  },
  arrivalRefusalActDays: {
    why: 'By then it should have eaten.',
    source: 'refusals',
  },
  postLayRefusalDays: {
    why: 'After laying: no meal by then is not usual.',
    source: 'recovery',
  },
};
