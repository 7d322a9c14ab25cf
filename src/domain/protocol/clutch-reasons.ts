import type { clutchValues } from './clutch-values.ts';
import type { ReasonsFor } from './protocol-value.ts';

export const clutchReasons: ReasonsFor<typeof clutchValues> = {
  incubatorTargetC: {
    name: 'Eggs are kept at',
    why: 'What an incubator is taken to be set to, where you have not said it.',
    source: 'incubation',
  },
  eggLowC: {
    name: 'Eggs are cool below',
    why: 'Between the eggs; below it they are looked after.',
    source: 'eggAlarms',
  },
  eggHighC: {
    name: 'Eggs are warm above',
    why: 'Between the eggs; above it they are looked after.',
    source: 'eggAlarms',
  },
  eggAmberMinutes: {
    name: 'Cool or warm eggs count after',
    why: 'A lid that was open for a moment is no alarm.',
    source: 'eggAlarms',
  },
  eggTooColdC: {
    name: 'Eggs are too cold below',
    why: 'Below it for hours, something has failed.',
    source: 'eggAlarms',
  },
  eggTooColdHours: {
    name: 'Too cold eggs count after',
    why: 'A short chill is usually survived.',
    source: 'eggAlarms',
  },
  eggTooHotC: {
    name: 'Eggs are too hot from',
    why: 'Heat kills faster than cold.',
    source: 'eggAlarms',
  },
  eggTooHotMinutes: {
    name: 'Too hot eggs count after',
    why: 'So long at it, and it is an alarm.',
    source: 'eggAlarms',
  },
  eggHotAtOnceC: {
    name: 'Eggs are too hot at once from',
    why: 'One reading is enough for an alarm.',
    source: 'eggAlarms',
  },
  boxHumidityShare: {
    name: 'Air round eggs is dry below',
    why: 'Relative humidity in the box; eggs dent when it stays lower.',
    source: 'eggHumidity',
  },
  incubatorLookHours: {
    name: 'Look at an incubator every',
    why: 'Somebody reads it twice a day while eggs are in it.',
    source: 'incubatorLooks',
  },
  incubatorGapHours: {
    name: 'An incubator is unread after',
    why: 'Between readings farther apart, nobody knows how warm it was.',
    source: 'household',
  },
  boxAirDays: {
    name: 'Air a closed box every',
    why: 'A closed box needs fresh air.',
    source: 'boxAir',
  },
  boxAirLateFromDays: {
    name: 'Air it more often from day',
    why: 'Near the end eggs use more air.',
    source: 'boxAir',
  },
  boxAirLateDays: {
    name: 'From then on every',
    why: 'Two or three times a week, near the end.',
    source: 'boxAir',
  },
  pipLookFromDays: {
    name: 'Look for pips from day',
    why: 'From here you look every day.',
    source: 'pipping',
  },
  pipOverdueDays: {
    name: 'Eggs are overdue from day',
    why: 'In days as at 31.5 °C: cool days count for less.',
    source: 'pipping',
  },
  unreadDriftC: {
    name: 'Heat that nobody read is off by',
    why: 'How far the eggs may be from what is taken, on days without readings and on days to come.',
    source: 'incubationModel',
  },
  clutchBalanceShare: {
    name: 'Weights round laying agree within',
    why: 'Of her weight before laying: if eggs weigh more than she lost by this much, one weight is off.',
    source: 'household',
  },
  eggsLeftCallHours: {
    name: 'Eggs left in her: call after',
    why: 'After the last egg, with one still felt in her.',
    source: 'retainedEggs',
  },
  eggsLeftUrgentHours: {
    name: 'Eggs left in her: urgent after',
    why: 'Treatment works best within this time.',
    source: 'retainedEggs',
  },
  damMealLateDays: {
    name: 'Her first meal is late from day',
    why: 'After laying, without a meal eaten.',
    source: 'recovery',
  },
  damLossFromDays: {
    name: 'Her weight should hold from day',
    why: 'After laying; a weight of about then is what later ones are held against.',
    source: 'recovery',
  },
  damLossShare: {
    name: 'Further loss that a vet should see',
    why: 'Lost after that day.',
    source: 'recovery',
  },
  offYearSlugShare: {
    name: 'Slugs that speak for an off year, over',
    why: 'Of a clutch, twice running.',
    source: 'offYear',
  },
  offYearFromMonths: {
    name: 'Age that speaks for an off year, from',
    why: 'An old female is bred for a strong reason only.',
    source: 'offYear',
  },
  establishedMeals: {
    name: 'Established after unaided meals',
    why: 'Eaten without help, in a row, before a young one may leave.',
    source: 'established',
  },
};
