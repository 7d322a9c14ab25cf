import type { ReasonsFor } from './protocol-value.ts';
import type { layingValues } from './laying-values.ts';

export const layingReasons: ReasonsFor<typeof layingValues> = {
  ovulationToShedFromDays: {
    why: 'A shed so long after ovulation, or longer, is taken to be the pre-lay shed.',
    source: 'preLayShed',
  },
  ovulationToShedUntilDays: {
    why: 'A shed later than this after ovulation is not taken to be the pre-lay shed.',
    source: 'preLayShed',
  },
  nestBoxFromOvulationDays: {
    why: 'The nest box goes in after the pre-lay shed, or by now if no shed was seen.',
    source: 'nestBox',
  },
  eggLookFromShedDays: {
    why: 'From this day after the pre-lay shed, look for eggs every day.',
    source: 'eggLook',
  },
  eggLookFromOvulationDays: {
    why: 'The same from ovulation, where no shed was seen.',
    source: 'eggLook',
  },
  layLateFromShedDays: {
    why: 'No eggs so long after the pre-lay shed: book a reptile vet.',
    source: 'layLate',
  },
  layUrgentFromShedDays: {
    why: 'No eggs so long after the pre-lay shed: urgent.',
    source: 'layLate',
  },
  layLateFromOvulationDays: {
    why: 'The same from ovulation, where no shed was seen: book a reptile vet.',
    source: 'layLate',
  },
  layUrgentFromOvulationDays: {
    why: 'The same from ovulation: urgent.',
    source: 'layLate',
  },
};
