import { dayAndMonthWords } from '../core/day-words.ts';
import type { EventOf } from '../events/event.ts';
import { showMoney } from '../sale/money.ts';

type SaleRecord = EventOf<
  | 'put-up-for-sale'
  | 'taken-off-sale'
  | 'reserved'
  | 'sold'
  | 'handed-over'
  | 'sale-ended'
  | 'source-stated'
>;

/** A record of a sale in a few words. Whom it went to is not in it. */
export function saleWords(event: SaleRecord): string {
  switch (event.type) {
    case 'put-up-for-sale':
      return `up for sale${priceWords(event)}`;
    case 'taken-off-sale':
      return 'no longer for sale';
    case 'reserved':
      return `reserved${event.until ? ` until ${dayAndMonthWords(event.until)}` : ''}${priceWords(event)}${depositWords(event)}`;
    case 'sold':
      return `sale agreed${priceWords(event)}`;
    case 'handed-over':
      return event.how === 'collected' ? 'handed over here' : `handed over: ${event.how}`;
    case 'sale-ended':
      return event.why === 'brought back' ? 'brought back by the buyer' : 'sale fell through';
    case 'source-stated':
      return `CITES source ${event.code}${event.permit === undefined ? '' : `, ${event.permit}`}`;
  }
}

const priceWords = ({ price }: Pick<EventOf<'sold'>, 'price'>): string =>
  price === undefined ? '' : `, ${showMoney(price)}`;

function depositWords({ deposit }: EventOf<'reserved'>): string {
  if (deposit === undefined) return '';
  return `, deposit ${typeof deposit === 'string' ? deposit : showMoney(deposit)}`;
}
