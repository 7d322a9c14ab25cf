import { piecesWords } from '../../views/prey-words.ts';
import type { StockRule } from './stock-rule.ts';

export const stockPast: StockRule = {
  id: 'K3',
  says: 'Prey past its date is thrown away and not fed.',
  source: 'preyStock',
  check({ kind, size, batches }, { night }) {
    const past = batches.filter(({ useBy }) => useBy !== undefined && useBy < night);
    const pieces = past.reduce((sum, each) => sum + each.pieces, 0);
    if (pieces === 0) return undefined;
    return {
      asks: `${piecesWords({ kind, size, pieces })} past the date: throw away`,
      because: past.map((each) => `${each.pieces} were to be used by ${each.useBy ?? ''}.`),
    };
  },
};
