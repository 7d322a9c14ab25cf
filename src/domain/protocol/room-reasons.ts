import type { ReasonsFor } from './protocol-value.ts';
import type { roomValues } from './room-values.ts';

export const roomReasons: ReasonsFor<typeof roomValues> = {
  roomToleranceC: {
    why: 'Air within this of the programme is in its band.',
    source: 'roomTemperatures',
  },
  hotSpotToleranceC: {
    why: 'A hot spot within this of the programme is in its band.',
    source: 'roomTemperatures',
  },
  roomSettleHours: {
    why: 'After a change of day and night, what lies between the two is in band this long.',
    source: 'household',
  },
  roomGapHours: {
    why: 'Between readings farther apart, nobody knows what the temperature was.',
    source: 'household',
  },
  roomLowC: {
    why: 'A room colder than this for hours is a fault, unless the programme wants it.',
    source: 'roomAlarms',
  },
  roomHighC: {
    why: 'A room warmer than this for hours is a fault.',
    source: 'roomAlarms',
  },
  roomSustainedHours: {
    why: 'An open door is no fault: the room has to stay outside this long.',
    source: 'roomAlarms',
  },
  hotSpotHighC: {
    why: 'A hot spot over this can burn: the thermostat or its probe is at fault.',
    source: 'roomAlarms',
  },
  roomFreshHours: {
    why: 'Older readings say nothing about tonight.',
    source: 'household',
  },
  roomHabitDays: {
    why: 'A room read by hand on so many of seven days is one that is read daily.',
    source: 'household',
  },
  roomSilentHours: {
    why: 'A room that is read daily and was not for so long is worth a word.',
    source: 'household',
  },
  roomSilentEndDays: {
    why: 'After so long without a reading the habit has ended, and nothing is said.',
    source: 'household',
  },
  thermometerErrorC: {
    why: 'What a thermometer or sensor of this kind may be off by, either way.',
    source: 'thermometers',
  },
};
