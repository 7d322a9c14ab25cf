import type { ProtocolValue } from './protocol-value.ts';

const value = (
  name: string,
  unit: ProtocolValue['unit'],
  usual: number,
  from: number,
  to: number,
): ProtocolValue => ({ name, value: usual, unit, from, to });

/** Eggs, what keeps them warm, what comes out, and the dam meanwhile. */
export const clutchValues = {
  incubatorTargetC: value('Eggs are kept at', '°C', 31.5, 30, 32.5),
  eggLowC: value('Eggs are cool below', '°C', 30, 29, 31),
  eggHighC: value('Eggs are warm above', '°C', 32.8, 32, 33),
  eggAmberMinutes: value('Cool or warm eggs count after', 'minutes', 30, 10, 120),
  eggTooColdC: value('Eggs are too cold below', '°C', 27, 25, 29),
  eggTooColdHours: value('Too cold eggs count after', 'hours', 3, 1, 12),
  eggTooHotC: value('Eggs are too hot from', '°C', 33.5, 33, 34.5),
  eggTooHotMinutes: value('Too hot eggs count after', 'minutes', 15, 5, 60),
  eggHotAtOnceC: value('Eggs are too hot at once from', '°C', 35, 34, 36),
  boxHumidityShare: value('Air round eggs is dry below', 'share', 0.75, 0.7, 0.9),
  incubatorLookHours: value('Look at an incubator every', 'hours', 12, 6, 24),
  incubatorGapHours: value('An incubator is unread after', 'hours', 26, 6, 48),
  boxAirDays: value('Air a closed box every', 'days', 7, 1, 10),
  boxAirLateFromDays: value('Air it more often from day', 'days', 40, 35, 50),
  boxAirLateDays: value('From then on every', 'days', 3, 1, 4),
  pipLookFromDays: value('Look for pips from day', 'days', 52, 50, 55),
  pipOverdueDays: value('Eggs are overdue from day', 'days', 65, 62, 75),
  unreadDriftC: value('Heat that nobody read is off by', '°C', 0.3, 0.1, 1),
  clutchBalanceShare: value('Weights round laying agree within', 'share', 0.03, 0.01, 0.06),
  eggsLeftCallHours: value('Eggs left in her: call after', 'hours', 24, 12, 24),
  eggsLeftUrgentHours: value('Eggs left in her: urgent after', 'hours', 48, 24, 48),
  damMealLateDays: value('Her first meal is late from day', 'days', 21, 14, 30),
  damLossFromDays: value('Her weight should hold from day', 'days', 14, 10, 21),
  damLossShare: value('Further loss that a vet should see', 'share', 0.05, 0.03, 0.08),
  establishedMeals: value('Established after unaided meals', 'meals', 3, 3, 10),
} as const satisfies Record<string, ProtocolValue>;
