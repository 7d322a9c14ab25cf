import { dateWords } from '../../core/day-words.ts';
import { piecesWords, sizeName } from '../../views/prey-words.ts';
import type { StockRule } from './stock-rule.ts';

export const stockNegative: StockRule = {
  id: 'K1',
  says: 'More cannot come out of a freezer than went in: one record is missing, so count.',
  source: 'preyStock',
  check({ kind, size, short, batches, countedAt }, { nightOf }) {
    if (short === 0) return undefined;
    const there = batches.reduce((sum, { pieces }) => sum + pieces, 0);
    return {
      asks: `${sizeName({ kind, size })}: ${short} more were taken out than were there. Count them`,
      because: [
        `By the records ${piecesWords({ kind, size, pieces: short })} came out that never went in.`,
        ...(there > 0 ? [`${there} came in since.`] : []),
        countedAt === undefined
          ? 'Never counted yet.'
          : `Last counted on ${dateWords(nightOf(countedAt))}.`,
      ],
    };
  },
};
