import type { ReasonsFor } from './protocol-value.ts';
import type { layingValues } from './laying-values.ts';

export const layingReasons: ReasonsFor<typeof layingValues> = {
  ovulationToShedFromDays: {
    name: 'Pre-lay shed at the earliest after',
    why: 'A shed so long after ovulation, or longer, is taken to be the pre-lay shed.',
    source: 'preLayShed',
  },
  ovulationToShedUntilDays: {
    name: 'Pre-lay shed at the latest after',
    why: 'A shed later than this after ovulation is not taken to be the pre-lay shed.',
    source: 'preLayShed',
  },
  nestBoxFromOvulationDays: {
    name: 'Nest box in after ovulation by',
    why: 'The nest box goes in after the pre-lay shed, or by now if no shed was seen.',
    source: 'nestBox',
  },
  eggLookFromShedDays: {
    name: 'Look for eggs after the shed from',
    why: 'From this day after the pre-lay shed, look for eggs every day.',
    source: 'eggLook',
  },
  eggLookFromOvulationDays: {
    name: 'Look for eggs after ovulation from',
    why: 'The same from ovulation, where no shed was seen.',
    source: 'eggLook',
  },
  layLateFromShedDays: {
    name: 'Eggs are late after the shed by',
    why: 'No eggs so long after the pre-lay shed: book a reptile vet.',
    source: 'layLate',
  },
  layUrgentFromShedDays: {
    name: 'Eggs are urgent after the shed by',
    why: 'No eggs so long after the pre-lay shed: urgent.',
    source: 'layLate',
  },
  layLateFromOvulationDays: {
    name: 'Eggs are late after ovulation by',
    why: 'The same from ovulation, where no shed was seen: book a reptile vet.',
    source: 'layLate',
  },
  layUrgentFromOvulationDays: {
    name: 'Eggs are urgent after ovulation by',
    why: 'The same from ovulation: urgent.',
    source: 'layLate',
  },
};
