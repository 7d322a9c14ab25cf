import type { ReasonsFor } from './protocol-value.ts';
import type { roomValues } from './room-values.ts';

export const roomReasons: ReasonsFor<typeof roomValues> = {
  roomToleranceC: {
    name: 'Room band',
    why: 'Air within this of the programme is in its band.',
    source: 'roomTemperatures',
  },
  hotSpotToleranceC: {
    name: 'Hot spot band',
    why: 'A hot spot within this of the programme is in its band.',
    source: 'roomTemperatures',
  },
  roomSettleHours: {
    name: 'Settling after day or night begins',
    why: 'After a change of day and night, what lies between the two is in band this long.',
    source: 'household',
  },
  roomGapHours: {
    name: 'Longest time between readings',
    why: 'Between readings farther apart, nobody knows what the temperature was.',
    source: 'household',
  },
  roomLowC: {
    name: 'Room too cold',
    why: 'A room colder than this for hours is a fault, unless the programme wants it.',
    source: 'roomAlarms',
  },
  roomHighC: {
    name: 'Room too warm',
    why: 'A room warmer than this for hours is a fault.',
    source: 'roomAlarms',
  },
  roomSustainedHours: {
    name: 'Too cold or warm for',
    why: 'An open door is no fault: the room has to stay outside this long.',
    source: 'roomAlarms',
  },
  hotSpotHighC: {
    name: 'Hot spot too hot',
    why: 'A hot spot over this can burn: the thermostat or its probe is at fault.',
    source: 'roomAlarms',
  },
  roomFreshHours: {
    name: 'Readings count for',
    why: 'Older readings say nothing about tonight.',
    source: 'household',
  },
  roomHabitDays: {
    name: 'Days of seven that make a habit',
    why: 'A room read by hand on so many of seven days is one that is read daily.',
    source: 'household',
  },
  roomSilentHours: {
    name: 'Room not read for',
    why: 'A room that is read daily and was not for so long is worth a word.',
    source: 'household',
  },
  roomSilentEndDays: {
    name: 'Habit over after',
    why: 'After so long without a reading the habit has ended, and nothing is said.',
    source: 'household',
  },
  thermometerErrorC: {
    name: 'Error of a thermometer',
    why: 'What a thermometer or sensor of this kind may be off by, either way.',
    source: 'thermometers',
  },
};
