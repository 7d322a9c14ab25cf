import fc from 'fast-check';
import { expect, test } from 'vitest';
import { minorDigits, plainAmount, readMoney, showMoney } from '../../../src/domain/sale/money.ts';
import { runs } from '../../arbitrary.ts';

// Independent oracle: the platform's own table, from Unicode CLDR. It agrees with ISO 4217 but where no
// small coin is left in use, which it rounds to whole ones: there it says 0.
test('each currency has the digits that ISO 4217 gives it', () => {
  const wrong = Intl.supportedValuesOf('currency').flatMap((currency) => {
    const format = new Intl.NumberFormat('en', { style: 'currency', currency });
    const { maximumFractionDigits = 2 } = format.resolvedOptions();
    const own = minorDigits(currency);
    const isRight = own === maximumFractionDigits || (own > 0 && maximumFractionDigits === 0);
    return isRight ? [] : [`${currency} ${own} ${maximumFractionDigits}`];
  });
  expect(wrong).toEqual([]);
  expect(['EUR', 'JPY', 'KWD', 'IQD', 'HUF'].map(minorDigits)).toEqual([2, 0, 3, 3, 2]);
});

test.each([
  ['450', 'EUR', 45_000],
  ['450.5', 'eur', 45_050],
  ['450,50', 'EUR', 45_050],
  [' 0.05 ', 'USD', 5],
  ['1200', 'JPY', 1_200],
  ['1,250', 'KWD', 1_250],
])('“%s” %s is %i of its smallest unit', (text, currency, minor) => {
  expect(readMoney(text, currency)).toEqual({
    ok: true,
    value: { minor, currency: currency.toUpperCase() },
  });
});

test.each([
  ['1,250', 'EUR'], // Thousands or thousandths: it cannot be told.
  ['1.250,00', 'EUR'],
  ['12.5', 'JPY'],
  ['-5', 'EUR'],
  ['', 'EUR'],
  ['4e3', 'EUR'],
  ['٤٥٠', 'EUR'],
  ['450', 'EURO'],
  ['9999999999', 'EUR'],
])('“%s” %s is turned away', (text, currency) => {
  expect(readMoney(text, currency)).toMatchObject({ ok: false });
});

test('what is shown for a cell is read back the same', () => {
  const money = fc.record({
    minor: fc.integer({ min: 0, max: 90_000_000_000 }),
    currency: fc.constantFrom('EUR', 'USD', 'JPY', 'KWD'),
  });
  fc.assert(
    fc.property(money, (each) => {
      expect(readMoney(plainAmount(each), each.currency)).toEqual({ ok: true, value: each });
    }),
    runs(300),
  );
});

test('an amount is shown with its thousands and its currency', () => {
  expect(showMoney({ minor: 125_000, currency: 'EUR' })).toBe('1,250.00\u00a0EUR');
  expect(showMoney({ minor: 7, currency: 'EUR' })).toBe('0.07\u00a0EUR');
  expect(showMoney({ minor: 45_000, currency: 'JPY' })).toBe('45,000\u00a0JPY');
  expect(showMoney({ minor: 1_234_567, currency: 'KWD' })).toBe('1,234.567\u00a0KWD');
});
