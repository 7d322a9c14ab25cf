import { ok, refuse, type Result } from '../../domain/core/result.ts';
import type { Money } from '../../domain/events/sales.ts';
import { plainAmount, readMoney } from '../../domain/sale/money.ts';
import { remember, remembered } from '../remember.ts';

/** An amount as it is being typed. */
export interface PriceText {
  readonly amount: string;
  readonly currency: string;
}

const LAST_CURRENCY = 'currency';

/** A price on record, to be changed; without one, an empty amount in the currency used last. */
export const priceText = (money?: Money): PriceText =>
  money
    ? { amount: plainAmount(money), currency: money.currency }
    : { amount: '', currency: remembered(LAST_CURRENCY) ?? '' };

/** Undefined where no amount was typed. */
export function readPrice({ amount, currency }: PriceText): Result<Money | undefined> {
  if (amount.trim() === '') return ok(undefined);
  const read = readMoney(amount, currency);
  if (!read.ok) return read;
  if (!Intl.supportedValuesOf('currency').includes(read.value.currency)) {
    return refuse('no-currency', `“${currency}” is no currency of ISO 4217. EUR, USD or GBP are.`);
  }
  remember(LAST_CURRENCY, read.value.currency);
  return read;
}
