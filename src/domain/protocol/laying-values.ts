import type { ProtocolValue } from './protocol-value.ts';

/** From ovulation to the first meal after laying: what to put in, when to look, and when to call. */
export const layingValues = {
  ovulationToShedFromDays: {
    name: 'Pre-lay shed at the earliest after',
    value: 10,
    unit: 'days',
    from: 8,
    to: 14,
  },
  ovulationToShedUntilDays: {
    name: 'Pre-lay shed at the latest after',
    value: 30,
    unit: 'days',
    from: 25,
    to: 40,
  },
  nestBoxFromOvulationDays: {
    name: 'Nest box in after ovulation by',
    value: 30,
    unit: 'days',
    from: 20,
    to: 35,
  },
  eggLookFromShedDays: {
    name: 'Look for eggs after the shed from',
    value: 20,
    unit: 'days',
    from: 14,
    to: 25,
  },
  eggLookFromOvulationDays: {
    name: 'Look for eggs after ovulation from',
    value: 40,
    unit: 'days',
    from: 35,
    to: 45,
  },
  layLateFromShedDays: {
    name: 'Eggs are late after the shed by',
    value: 40,
    unit: 'days',
    from: 36,
    to: 45,
  },
  layUrgentFromShedDays: {
    name: 'Eggs are urgent after the shed by',
    value: 50,
    unit: 'days',
    from: 45,
    to: 55,
  },
  layLateFromOvulationDays: {
    name: 'Eggs are late after ovulation by',
    value: 60,
    unit: 'days',
    from: 55,
    to: 65,
  },
  layUrgentFromOvulationDays: {
    name: 'Eggs are urgent after ovulation by',
    value: 70,
    unit: 'days',
    from: 65,
    to: 80,
  },
} as const satisfies Record<string, ProtocolValue>;
