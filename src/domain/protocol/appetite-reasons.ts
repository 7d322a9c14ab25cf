import type { ReasonsFor } from './protocol-value.ts';
import type { appetiteValues } from './appetite-values.ts';

export const appetiteReasons: ReasonsFor<typeof appetiteValues> = {
  yearShiftMonths: {
    name: 'The year runs behind the north by',
    why: 'South of the equator the season comes half a year later: six months.',
    source: 'feedingUp',
  },
  feedRecoveringDays: {
    name: 'Feed females after their eggs every',
    why: 'Small meals soon after laying, then a steady rhythm until she is back.',
    source: 'recovery',
  },
  buildingPortion: {
    name: 'A meal of one that builds follicles, of the usual one',
    why: 'Follicles leave less room; a large meal is the sooner brought up.',
    source: 'feedingUp',
  },
  maleSeasonPortion: {
    name: 'A male’s meal in the season, of the usual one',
    why: 'He is offered small meals and not chased.',
    source: 'feedingUp',
  },
  mealsAfterHold: {
    name: 'Meals kept down before it is fed as usual again',
    why: 'Each meal kept down is a step back to the usual one.',
    source: 'regurgitation',
  },
  afterHoldPortion: {
    name: 'Meals after the first of those, of the usual one',
    why: 'Half to three quarters, until it keeps them down.',
    source: 'regurgitation',
  },
  mealToHandlingDays: {
    name: 'From a meal to the scale or a scan',
    why: 'Handled sooner, a snake may bring its meal up; and the scale would weigh the meal.',
    source: 'digestion',
  },
  largeMealShare: {
    name: 'A large meal, from',
    why: 'Of the last weight. A meal this large is long in the gut.',
    source: 'digestion',
  },
  largeMealRestDays: {
    name: 'Rest after a large meal',
    why: 'Before it is handled, weighed or paired, if that is longer than after any meal.',
    source: 'digestion',
  },
  orderDays: {
    name: 'Say that prey runs out',
    why: 'A delivery takes days, and a size may be sold out. Days before.',
    source: 'preyStock',
  },
  regurgitationsWithinDays: {
    name: 'Two meals brought up are a vet’s matter within',
    why: 'Once is a meal too large, too cold or disturbed; twice is more.',
    source: 'vetClock',
  },
  acceptanceWorth: {
    name: 'Weight of the usual appetite',
    why: 'So many of its own offers weigh as much as what its class usually eats.',
    source: 'preyModel',
  },
  thawEnoughShare: {
    name: 'Thaw enough for',
    why: 'On this share of nights nobody who would eat goes without.',
    source: 'preyModel',
  },
  growerRefusals: {
    name: 'A grower’s refusals are looked into from',
    why: 'Growers that refuse in summer usually have something wrong around them.',
    source: 'refusals',
  },
  adultRefusals: {
    name: 'An adult’s refusals are looked into from',
    why: 'Outside the season, where nothing explains them.',
    source: 'refusals',
  },
  refusalLossShare: {
    name: 'Refusals with a loss count from',
    why: 'Even where refusing is usual.',
    source: 'refusals',
  },
  growerRefusalLossShare: {
    name: 'A grower’s refusals with a loss count from',
    why: 'A grower should be gaining.',
    source: 'refusals',
  },
  arrivalRefusalDays: {
    name: 'A new arrival may refuse for',
    why: 'It settles in first.',
    source: 'refusals',
  },
  arrivalRefusalActDays: {
    name: 'Ask about a new arrival that refuses for',
    why: 'By then it should have eaten.',
    source: 'refusals',
  },
  postLayRefusalDays: {
    name: 'A female that laid eats by',
    why: 'After laying: no meal by then is not usual.',
    source: 'recovery',
  },
};
