import { piecesWords } from '../../views/prey-words.ts';
import type { StockRule } from './stock-rule.ts';

export const fedUnthawed: StockRule = {
  id: 'K4',
  says: 'What was fed came out of the freezer: the stock is right only if that is written down.',
  source: 'preyStock',
  check(drawer, facts) {
    if (facts.fedUnthawed <= 0) return undefined;
    const words = piecesWords({ ...drawer, pieces: facts.fedUnthawed });
    return {
      asks: `${words} fed and not taken out: take off the stock?`,
      because: [`Since last night ${words} more were eaten or left in tubs than were thawed.`],
    };
  },
};
