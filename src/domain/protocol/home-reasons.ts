import type { ReasonsFor } from './protocol-value.ts';
import type { homeValues } from './home-values.ts';

export const homeReasons: ReasonsFor<typeof homeValues> = {
  rolloverHour: {
    why: 'Before this hour, a record belongs to the evening before.',
    source: 'household',
  },
  eveningHour: {
    why: 'Alarms in the calendar file ring then, in time for the evening round.',
    source: 'household',
  },
  hatchlingBelowG: {
    why: 'Below this it is fed and weighed as a hatchling.',
    source: 'feedingRhythm',
  },
  adultFromG: {
    why: 'From here it is fed as an adult, not as a grower.',
    source: 'feedingRhythm',
  },
  feedHatchlingDays: {
    why: 'Hatchlings eat all year round.',
    source: 'feedingRhythm',
  },
  feedGrowerDays: {
    why: 'Growers eat weekly; faster growth makes fat animals, not early ones.',
    source: 'feedingRhythm',
  },
  feedMaleDays: {
    why: 'Adult males in summer, kept good, not fat.',
    source: 'feedingUp',
  },
  feedMaleSeasonDays: {
    why: 'Males in the season often fast; offer small and seldom, weigh instead.',
    source: 'feedingUp',
  },
  feedFemaleDays: {
    why: 'Adult females from April to July, kept from getting fat.',
    source: 'feedingUp',
  },
  feedFemaleSeasonDays: {
    why: 'Adult females from August to March, fed up into the season and while they build.',
    source: 'feedingUp',
  },
  settleInDays: {
    why: 'A new arrival is left alone before its first meal.',
    source: 'newArrival',
  },
  feedOverdueDays: {
    why: 'A meal this late is marked as overdue.',
    source: 'household',
  },
  leftHours: {
    why: 'Prey left in a tub is taken out by then.',
    source: 'leftOvernight',
  },
  regurgitationHoldDays: {
    why: 'After a regurgitation: no food and no handling.',
    source: 'regurgitation',
  },
  firstMealAfterHoldShare: {
    why: 'The first meal after the hold is small.',
    source: 'regurgitation',
  },
  blueHoldDays: {
    why: 'If no shed was seen by then, the look that saw it in blue no longer holds feeding back.',
    source: 'inBlue',
  },
  maleStayDays: {
    why: 'Then he goes home to drink, rest and eat.',
    source: 'maleStay',
  },
  maleForgottenDays: {
    why: 'A male left in longer than this is losing weight unfed.',
    source: 'maleStay',
  },
  weighDays: {
    why: 'Slow losses show only in a series of weights.',
    source: 'weighing',
  },
  weighOftenDays: {
    why: 'Hatchlings, and males from October to March.',
    source: 'weighing',
  },
  backupDays: {
    why: 'The phone is the weakest part of the record.',
    source: 'backups',
  },
};
