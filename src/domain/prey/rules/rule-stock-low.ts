import { daysBetween } from '../../core/calendar.ts';
import { dateWords, daysWords } from '../../core/day-words.ts';
import { sizeName } from '../../views/prey-words.ts';
import type { StockRule } from './stock-rule.ts';

export const stockLow: StockRule = {
  id: 'K2',
  says: 'Order before the freezer is empty: deliveries take their time.',
  source: 'preyStock',
  check(drawer, { night, lastsUntil, orderDays }) {
    if (lastsUntil === undefined) return undefined;
    const left = daysBetween(night, lastsUntil);
    if (left > orderDays) return undefined;
    const there = drawer.batches.reduce((sum, { pieces }) => sum + pieces, 0);
    return {
      asks:
        left <= 0
          ? `No ${sizeName(drawer)} left for what is due`
          : `${sizeName(drawer)}: enough for ${daysWords(left)}`,
      because: [
        `${there} in the freezer; at what is expected to be eaten they last until ${dateWords(lastsUntil)}.`,
        `You want to know ${daysWords(orderDays)} before.`,
      ],
    };
  },
};
