import type { ProtocolValue } from './protocol-value.ts';

const value = (
  unit: ProtocolValue['unit'],
  usual: number,
  from: number,
  to: number,
): ProtocolValue => ({ value: usual, unit, from, to });

/** Eggs, what keeps them warm, what comes out, and the dam meanwhile. */
export const clutchValues = {
  incubatorTargetC: value('°C', 31.5, 30, 32.5),
  eggLowC: value('°C', 30, 29, 31),
  eggHighC: value('°C', 32.8, 32, 33),
  eggAmberMinutes: value('minutes', 30, 10, 120),
  eggTooColdC: value('°C', 27, 25, 29),
  eggTooColdHours: value('hours', 3, 1, 12),
  eggTooHotC: value('°C', 33.5, 33, 34.5),
  eggTooHotMinutes: value('minutes', 15, 5, 60),
  eggHotAtOnceC: value('°C', 35, 34, 36),
  boxHumidityShare: value('share', 0.75, 0.7, 0.9),
  incubatorLookHours: value('hours', 12, 6, 24),
  incubatorGapHours: value('hours', 26, 6, 48),
  boxAirDays: value('days', 7, 1, 10),
  boxAirLateFromDays: value('days', 40, 35, 50),
  boxAirLateDays: value('days', 3, 1, 4),
  pipLookFromDays: value('days', 52, 50, 55),
  pipOverdueDays: value('days', 65, 62, 75),
  unreadDriftC: value('°C', 0.3, 0.1, 1),
  clutchBalanceShare: value('share', 0.03, 0.01, 0.06),
  eggsLeftCallHours: value('hours', 24, 12, 24),
  eggsLeftUrgentHours: value('hours', 48, 24, 48),
  damMealLateDays: value('days', 21, 14, 30),
  damLossFromDays: value('days', 14, 10, 21),
  damLossShare: value('share', 0.05, 0.03, 0.08),
  offYearSlugShare: value('share', 0.5, 0.3, 0.7),
  offYearFromMonths: value('months', 144, 120, 180),
  establishedMeals: value('meals', 3, 3, 10),
} as const satisfies Record<string, ProtocolValue>;
