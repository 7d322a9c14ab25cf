import { agoWords } from '../../room/words.ts';
import { newestReading } from './egg-readings.ts';
import type { HatcheryRule, IncubatorFacts } from './hatchery-rule.ts';

export const incubatorLook: HatcheryRule<IncubatorFacts> = {
  id: 'I3',
  says: 'An incubator with eggs in it is looked at and written down twice a day.',
  source: 'incubatorLooks',
  check({ incubator, clutches, protocol, nowMs }) {
    if (clutches === 0) return undefined;
    const newest = newestReading(incubator);
    const ageMin = newest && nowMs / 60_000 - newest.minute;
    const every = protocol.incubatorLookHours;
    // An hour early counts as well: mornings and evenings are not twelve hours apart.
    if (ageMin !== undefined && ageMin < (every - 1) * 60) return undefined;
    return {
      asks: `Read ${incubator.name}`,
      state: ageMin === undefined || ageMin > 2 * every * 60 ? 'overdue' : 'due',
      alarm: false,
      because: [
        ageMin === undefined
          ? 'It has not been read yet, and eggs are in it.'
          : `Last read ${agoWords(ageMin)}; every ${every} hours while eggs are in it.`,
      ],
      records: [],
    };
  },
};
