import type { ReasonsFor } from './protocol-value.ts';
import type { homeValues } from './home-values.ts';

export const homeReasons: ReasonsFor<typeof homeValues> = {
  rolloverHour: {
    name: 'The night ends at',
    why: 'Before this hour, a record belongs to the evening before.',
    source: 'household',
  },
  eveningHour: {
    name: 'The evening begins at',
    why: 'Alarms in the calendar file ring then, in time for the evening round.',
    source: 'household',
  },
  hatchlingBelowG: {
    name: 'A hatchling weighs less than',
    why: 'Below this it is fed and weighed as a hatchling.',
    source: 'feedingRhythm',
  },
  adultFromG: {
    name: 'Adult from',
    why: 'From here it is fed as an adult, not as a grower.',
    source: 'feedingRhythm',
  },
  feedHatchlingDays: {
    name: 'Feed hatchlings every',
    why: 'Hatchlings eat all year round.',
    source: 'feedingRhythm',
  },
  feedGrowerDays: {
    name: 'Feed growers every',
    why: 'Growers eat weekly; faster growth makes fat animals, not early ones.',
    source: 'feedingRhythm',
  },
  feedMaleDays: {
    name: 'Feed males in summer every',
    why: 'Adult males in summer, kept good, not fat.',
    source: 'feedingUp',
  },
  feedMaleSeasonDays: {
    name: 'Feed males in the season every',
    why: 'Males in the season often fast; offer small and seldom, weigh instead.',
    source: 'feedingUp',
  },
  feedFemaleDays: {
    name: 'Feed females in summer every',
    why: 'Adult females from April to July, kept from getting fat.',
    source: 'feedingUp',
  },
  feedFemaleSeasonDays: {
    name: 'Feed females in the season every',
    why: 'Adult females from August to March, fed up into the season and while they build.',
    source: 'feedingUp',
  },
  settleInDays: {
    name: 'First meal after arrival',
    why: 'A new arrival is left alone before its first meal.',
    source: 'newArrival',
  },
  feedOverdueDays: {
    name: 'A meal is overdue after',
    why: 'A meal this late is marked as overdue.',
    source: 'household',
  },
  leftHours: {
    name: 'A meal left is overdue after',
    why: 'Prey left in a tub is taken out by then.',
    source: 'leftOvernight',
  },
  regurgitationHoldDays: {
    name: 'Rest after a regurgitation',
    why: 'After a regurgitation: no food and no handling.',
    source: 'regurgitation',
  },
  firstMealAfterHoldShare: {
    name: 'First meal after that rest',
    why: 'The first meal after the hold is small.',
    source: 'regurgitation',
  },
  blueHoldDays: {
    name: 'In blue holds feeding back for',
    why: 'If no shed was seen by then, the look that saw it in blue no longer holds feeding back.',
    source: 'inBlue',
  },
  maleStayDays: {
    name: 'A male stays',
    why: 'Then he goes home to drink, rest and eat.',
    source: 'maleStay',
  },
  maleForgottenDays: {
    name: 'A male is overdue after',
    why: 'A male left in longer than this is losing weight unfed.',
    source: 'maleStay',
  },
  weighDays: {
    name: 'Weigh every',
    why: 'Slow losses show only in a series of weights.',
    source: 'weighing',
  },
  weighOftenDays: {
    name: 'Weigh hatchlings and busy males every',
    why: 'Hatchlings, and males from October to March.',
    source: 'weighing',
  },
  backupDays: {
    name: 'Back up every',
    why: 'The phone is the weakest part of the record.',
    source: 'backups',
  },
};
