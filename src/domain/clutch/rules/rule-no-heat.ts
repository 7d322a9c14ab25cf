import { instantMs } from '../../core/calendar.ts';
import { agoWords } from '../../room/words.ts';
import type { HatcheryRule, IncubatorFacts } from './hatchery-rule.ts';

export const noHeat: HatcheryRule<IncubatorFacts> = {
  id: 'I4',
  says: 'Without heat, incubators come first, then hatchlings, gravid females and the rest. A box that stays shut keeps its warmth; a spare source of heat saves eggs.',
  source: 'eggAlarms',
  check({ incubator, clutches, nowMs }) {
    const failure = incubator.failures.findLast(({ until }) => until === undefined);
    if (!failure || clutches === 0) return undefined;
    const ageMin = (nowMs - instantMs(failure.from)) / 60_000;
    return {
      asks: `${incubator.name}: no heat`,
      state: 'overdue',
      alarm: true,
      because: [
        `No heat since ${failure.from.slice(11, 16)}, ${agoWords(ageMin)}, and eggs in it.`,
      ],
      records: [failure.id],
    };
  },
};
