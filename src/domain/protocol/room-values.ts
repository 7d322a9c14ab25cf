import type { ProtocolValue } from './protocol-value.ts';

/** What the air of a room is held against. */
export const roomValues = {
  roomToleranceC: {
    value: 1,
    unit: '°C',
    from: 0.5,
    to: 3,
  },
  hotSpotToleranceC: {
    value: 1,
    unit: '°C',
    from: 0.5,
    to: 3,
  },
  roomSettleHours: {
    value: 2,
    unit: 'hours',
    from: 0,
    to: 6,
  },
  roomGapHours: {
    value: 2,
    unit: 'hours',
    from: 0.5,
    to: 6,
  },
  roomLowC: {
    value: 22,
    unit: '°C',
    from: 20,
    to: 24,
  },
  roomHighC: {
    value: 32,
    unit: '°C',
    from: 30,
    to: 34,
  },
  roomSustainedHours: {
    value: 2,
    unit: 'hours',
    from: 0.5,
    to: 6,
  },
  hotSpotHighC: {
    value: 36,
    unit: '°C',
    from: 34,
    to: 38,
  },
  roomFreshHours: {
    value: 24,
    unit: 'hours',
    from: 6,
    to: 72,
  },
  roomHabitDays: {
    value: 6,
    unit: 'days',
    from: 5,
    to: 7,
  },
  roomSilentHours: {
    value: 36,
    unit: 'hours',
    from: 24,
    to: 72,
  },
  roomSilentEndDays: {
    value: 4,
    unit: 'days',
    from: 2,
    to: 14,
  },
  thermometerErrorC: {
    value: 0.5,
    unit: '°C',
    from: 0.1,
    to: 2,
  },
} as const satisfies Record<string, ProtocolValue>;
