import { daysBetween } from '../../core/calendar.ts';
import { agoWords } from '../../core/day-words.ts';
import { spreadOf } from '../../windows/link.ts';
import { firstPip } from '../first-pip.ts';
import type { ClutchFacts, HatcheryRule } from './hatchery-rule.ts';

export const stuckPip: HatcheryRule<ClutchFacts> = {
  id: 'C4',
  says: 'Others should follow the first pip within two days, and come out within three: later, someone experienced or a reptile vet looks at them.',
  source: 'pipping',
  vet: true,
  check({ clutch, counts, protocol, night, nightOf }) {
    const pip = firstPip(clutch);
    if (!pip || counts.inShell === 0 || counts.inShell === undefined) return undefined;
    const since = nightOf(pip.at);
    const usual = spreadOf('pip to out', protocol).late;
    if (daysBetween(since, night) <= usual) return undefined;
    return {
      asks: `${counts.inShell} still in the shell`,
      state: 'overdue',
      alarm: false,
      because: [
        `First pip ${agoWords(since, night)}; most are out ${usual} days after pipping.`,
        `${counts.pipped} pipped, ${counts.out} out.`,
      ],
      records: [pip.id],
    };
  },
};
