import { agoWords, dayAndMonthWords } from '../../core/day-words.ts';
import type { ClutchFacts, HatcheryRule } from './hatchery-rule.ts';

export const pipLook: HatcheryRule<ClutchFacts> = {
  id: 'C1',
  says: 'Eggs are looked at every day once they may pip, and until all that will are out.',
  source: 'pipping',
  check({ clutch, day, counts, outlook, protocol, night, nightOf }) {
    const from = protocol.pipLookFromDays;
    // Warm eggs are ahead of the days.
    const isSoon = outlook !== undefined && night >= outlook.from;
    if (day < from && !isSoon && counts.pipped === 0) return undefined;
    const last = clutch.hatching.at(-1);
    const looked = last && nightOf(last.at);
    if (looked === night || counts.inShell === 0) return undefined;
    return {
      asks: counts.pipped === 0 ? 'Look for pips' : 'Look who has pipped or come out',
      state: 'due',
      alarm: false,
      because: [
        `Day ${day} since they were found; you look from day ${from}.`,
        ...(isSoon ? [`The first pip is awaited from ${dayAndMonthWords(outlook.from)}.`] : []),
        ...(counts.pipped > 0 ? [`${counts.pipped} pipped, ${counts.out} out so far.`] : []),
        looked ? `Last look ${agoWords(looked, night)}.` : 'No look on record yet.',
      ],
      records: [clutch.laid, last].flatMap((event) => (event ? [event.id] : [])),
    };
  },
};
