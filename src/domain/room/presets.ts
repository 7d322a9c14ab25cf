import type { SourceId } from '../sources.ts';
import { usualHours } from './band.ts';
import type { Programme } from '../state/room-air.ts';

/** A programme to begin from: every step of it can be changed. */
export interface Preset extends Omit<Programme, 'from'> {
  readonly says: string;
  readonly source: SourceId;
}

// Temperatures stand with their sources. The days of the year are common practice, no source: the
// drop begins in October and ends in March. Day and night are 12 hours each, as in a laboratory
// colony (Bertocchi 2018, thesis); keepers set them to their lamps.

/** The three schools of the trade, the strongest drop first. */
export const presets: readonly Preset[] = [
  {
    name: 'Strong night drop',
    says: 'Nights go down to 21 °C through October and come up in March. The hot spot is never lowered.',
    source: 'strongDrop',
    ...usualHours,
    steps: [
      { month: 4, day: 1, dayC: 26, nightC: 24.5, hotSpotC: 32 },
      { month: 10, day: 1, dayC: 26, nightC: 24.5, hotSpotC: 32 },
      { month: 11, day: 1, dayC: 25.5, nightC: 21, hotSpotC: 32 },
      { month: 3, day: 1, dayC: 25.5, nightC: 21, hotSpotC: 32 },
    ],
  },
  {
    name: 'Mild night drop',
    says: 'Nights are a degree cooler from November to February, and the hot spot is reduced then by night.',
    source: 'mildDrop',
    ...usualHours,
    steps: [
      { month: 3, day: 15, dayC: 28, nightC: 25, hotSpotC: 31.5 },
      { month: 10, day: 15, dayC: 28, nightC: 25, hotSpotC: 31.5 },
      { month: 11, day: 1, dayC: 28, nightC: 24, hotSpotC: 31.5, hotSpotNightC: 28 },
      { month: 3, day: 1, dayC: 28, nightC: 24, hotSpotC: 31.5, hotSpotNightC: 28 },
    ],
  },
  {
    name: 'No drop',
    says: 'The same all year; nights fall by a degree of themselves.',
    source: 'noDrop',
    ...usualHours,
    steps: [{ month: 1, day: 1, dayC: 27, nightC: 26, hotSpotC: 32 }],
  },
];
