import { daysBetween } from '../../core/calendar.ts';
import { agoWords, daysWords } from '../../core/day-words.ts';
import type { ClutchFacts, HatcheryRule } from './hatchery-rule.ts';

export const boxAir: HatcheryRule<ClutchFacts> = {
  id: 'C2',
  says: 'A closed egg box is opened for air once a week, and more often near the end.',
  source: 'boxAir',
  check({ clutch, day, counts, protocol, night, nightOf }) {
    const set = clutch.stands.at(-1);
    // Once they are looked at every day, the box is opened every day.
    if (!set || counts.pipped > 0 || day >= protocol.pipLookFromDays) return undefined;
    const isLate = day >= protocol.boxAirLateFromDays;
    const every = isLate ? protocol.boxAirLateDays : protocol.boxAirDays;
    const last = clutch.aired ?? set;
    const since = nightOf(last.at);
    const late = daysBetween(since, night) - every;
    if (late < 0) return undefined;
    return {
      asks: 'Air the box',
      state: late > every ? 'overdue' : 'due',
      alarm: false,
      because: [
        `${clutch.aired ? 'Aired' : 'Closed'} ${agoWords(since, night)}; every ${daysWords(every)}${isLate ? ` from day ${protocol.boxAirLateFromDays} on` : ''}.`,
      ],
      records: [last.id],
    };
  },
};
