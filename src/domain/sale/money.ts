import { ok, refuse, type Result } from '../core/result.ts';
import type { Money } from '../events/sales.ts';

const inZero = 'BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF XOF XPF';
const inThree = 'BHD IQD JOD KWD LYD OMR TND';

/** Currencies that are not counted in hundredths. Source: ISO 4217, list one, minor unit. */
const digits: ReadonlyMap<string, number> = new Map([
  ...inZero.split(' ').map((code) => [code, 0] as const),
  ...inThree.split(' ').map((code) => [code, 3] as const),
]);

/** Digits after the point. */
export const minorDigits = (currency: string): number => digits.get(currency) ?? 2;

const MOST_MINOR = 100_000_000_000;

/** With a no-break space. @example showMoney({ minor: 125_000, currency: 'EUR' }) //=> '1,250.00 EUR' */
export const showMoney = (money: Money): string => {
  const [whole = '', ...rest] = plainAmount(money).split('.');
  return `${[whole.replace(/\B(?=(?:\d{3})+$)/g, ','), ...rest].join('.')}\u{a0}${money.currency}`;
};

/** For a cell of a table. @example plainAmount({ minor: 125_000, currency: 'EUR' }) //=> '1250.00' */
export function plainAmount({ minor, currency }: Money): string {
  const after = minorDigits(currency);
  const text = String(minor).padStart(after + 1, '0');
  return after === 0 ? text : `${text.slice(0, -after)}.${text.slice(-after)}`;
}

/**
 * Reads an amount as it is typed: `450`, `450.5` or `450,50`. With one mark and three digits after
 * it, as in `1,250`, it cannot be told whether thousands are meant, so it is turned away.
 */
export function readMoney(text: string, currency: string): Result<Money> {
  const code = currency.trim().toUpperCase();
  if (!/^[A-Z]{3}$/.test(code)) {
    return refuse('no-currency', 'Write the currency in three letters, as EUR or USD.');
  }
  const after = minorDigits(code);
  const [, whole, part = ''] = /^(\d{1,12})(?:[.,](\d+))?$/.exec(text.trim()) ?? [];
  if (whole === undefined || part.length > after) {
    const example = after === 0 ? '450' : `450.${'5'.padEnd(after, '0')}`;
    return refuse('no-amount', `“${text.trim()}” is no amount of ${code}. Write it as ${example}.`);
  }
  const minor = Number(whole + part.padEnd(after, '0'));
  return minor > MOST_MINOR
    ? refuse('too-much', `“${text.trim()}” is more than can be written down.`)
    : ok({ minor, currency: code });
}
