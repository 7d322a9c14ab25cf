import type { clutchValues } from './clutch-values.ts';
import type { ReasonsFor } from './protocol-value.ts';

export const clutchReasons: ReasonsFor<typeof clutchValues> = {
  incubatorTargetC: {
    why: 'What an incubator is taken to be set to, where you have not said it.',
    source: 'incubation',
  },
  eggLowC: { why: 'Between the eggs; below it they are looked after.', source: 'eggAlarms' },
  eggHighC: { why: 'Between the eggs; above it they are looked after.', source: 'eggAlarms' },
  eggAmberMinutes: {
    why: 'A lid that was open for a moment is no alarm.',
    source: 'eggAlarms',
  },
  eggTooColdC: { why: 'Below it for hours, something has failed.', source: 'eggAlarms' },
  eggTooColdHours: { why: 'A short chill is usually survived.', source: 'eggAlarms' },
  eggTooHotC: { why: 'Heat kills faster than cold.', source: 'eggAlarms' },
  eggTooHotMinutes: { why: 'So long at it, and it is an alarm.', source: 'eggAlarms' },
  eggHotAtOnceC: { why: 'One reading is enough for an alarm.', source: 'eggAlarms' },
  boxHumidityShare: {
    why: 'Relative humidity in the box; eggs dent when it stays lower.',
    source: 'eggHumidity',
  },
  incubatorLookHours: {
    why: 'Somebody reads it twice a day while eggs are in it.',
    source: 'incubatorLooks',
  },
  incubatorGapHours: {
    why: 'Between readings farther apart, nobody knows how warm it was.',
    source: 'household',
  },
  boxAirDays: { why: 'A closed box needs fresh air.', source: 'boxAir' },
  boxAirLateFromDays: { why: 'Near the end eggs use more air.', source: 'boxAir' },
  boxAirLateDays: { why: 'Two or three times a week, near the end.', source: 'boxAir' },
  pipLookFromDays: { why: 'From here you look every day.', source: 'pipping' },
  pipOverdueDays: {
    why: 'In days as at 31.5 °C: cool days count for less.',
    source: 'pipping',
  },
  unreadDriftC: {
    why: 'How far the eggs may be from what is taken, on days without readings and on days to come.',
    source: 'incubationModel',
  },
  clutchBalanceShare: {
    why: 'Of her weight before laying: if eggs weigh more than she lost by this much, one weight is off.',
    source: 'household',
  },
  eggsLeftCallHours: {
    why: 'After the last egg, with one still felt in her.',
    source: 'retainedEggs',
  },
  eggsLeftUrgentHours: {
    why: 'Treatment works best within this time.',
    source: 'retainedEggs',
  },
  damMealLateDays: { why: 'After laying, without a meal eaten.', source: 'recovery' },
  damLossFromDays: {
    why: 'After laying; a weight of about then is what later ones are held against.',
    source: 'recovery',
  },
  damLossShare: { why: 'Lost after that day.', source: 'recovery' },
  establishedMeals: {
    why: 'Eaten without help, in a row, before a young one may leave.',
    source: 'established',
  },
};
