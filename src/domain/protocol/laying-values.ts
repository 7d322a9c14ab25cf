import type { ProtocolValue } from './protocol-value.ts';

/** From ovulation to the first meal after laying: what to put in, when to look, and when to call. */
export const layingValues = {
  ovulationToShedFromDays: {
    value: 10,
    unit: 'days',
    from: 8,
    to: 14,
  },
  ovulationToShedUntilDays: {
    value: 30,
    unit: 'days',
    from: 25,
    to: 40,
  },
  nestBoxFromOvulationDays: {
    value: 30,
    unit: 'days',
    from: 20,
    to: 35,
  },
  eggLookFromShedDays: {
    value: 20,
    unit: 'days',
    from: 14,
    to: 25,
  },
  eggLookFromOvulationDays: {
    value: 40,
    unit: 'days',
    from: 35,
    to: 45,
  },
  layLateFromShedDays: {
    value: 40,
    unit: 'days',
    from: 36,
    to: 45,
  },
  layUrgentFromShedDays: {
    value: 50,
    unit: 'days',
    from: 45,
    to: 55,
  },
  layLateFromOvulationDays: {
    value: 60,
    unit: 'days',
    from: 55,
    to: 65,
  },
  layUrgentFromOvulationDays: {
    value: 70,
    unit: 'days',
    from: 65,
    to: 80,
  },
} as const satisfies Record<string, ProtocolValue>;
