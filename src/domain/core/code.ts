import type * as z from 'zod/mini';
import { SYMBOLS } from './ids.ts';
import { ok, refuse, type Result } from './result.ts';

/** What a printed label says: six symbols of Crockford base 32 and a check symbol. */
export type LabelCode = string & z.core.$brand<'LabelCode'>;

export const CODE_PATTERN = new RegExp(`^[${SYMBOLS}]{7}$`);

const OWN_LENGTH = 6;

/** Twice a number in GF(32) with x⁵ + x² + 1, under which 2 has order 31. */
const double = (n: number): number => ((n << 1) ^ (n & 16 ? 0b100101 : 0)) & 31;

/**
 * The check symbol of six symbols: their sum in GF(32), each weighted with another power of 2.
 *
 * All weights differ and none is zero, so every single wrong symbol and every swap of two unequal
 * symbols, neighbours or not, gives another check symbol. Crockford's own check (modulo 37) catches
 * as much but needs five symbols that a QR code's dense alphabet and a keypad do not have.
 */
function checkSymbol(six: string): string {
  let weight = 1;
  let sum = 0;
  for (const symbol of six) {
    weight = double(weight);
    sum ^= times(SYMBOLS.indexOf(symbol), weight);
  }
  return SYMBOLS.charAt(sum);
}

function times(a: number, b: number): number {
  let product = 0;
  for (let power = a, rest = b; rest > 0; power = double(power), rest >>= 1) {
    if (rest & 1) product ^= power;
  }
  return product;
}

/** The code with a given serial number, 0 to 32⁶ − 1; the outer world picks the number at random. */
export function labelCode(serial: number): LabelCode {
  let six = '';
  for (let rest = serial, i = 0; i < OWN_LENGTH; i += 1, rest = Math.floor(rest / 32)) {
    six = `${SYMBOLS.charAt(rest % 32)}${six}`;
  }
  return (six + checkSymbol(six)) as LabelCode;
}

/** How many codes there are. */
export const LABEL_CODES = 32 ** OWN_LENGTH;

const READ_AS: Readonly<Record<string, string>> = { I: '1', L: '1', O: '0' };

/**
 * A code as a person types it: any case, spaces and hyphens, O for 0, I or L for 1.
 *
 * Errors: refuses what has not seven symbols, and what fails its check symbol, saying so.
 */
export function readTypedCode(typed: string): Result<LabelCode> {
  const symbols = typed
    .toUpperCase()
    .replace(/[\s-]/g, '')
    .replace(/[ILO]/g, (letter) => READ_AS[letter] ?? letter);
  if (!CODE_PATTERN.test(symbols)) {
    return refuse('not-a-code', 'A label code has seven letters and digits, like 7KQ2M9X.');
  }
  return checkSymbol(symbols.slice(0, OWN_LENGTH)) === symbols.charAt(OWN_LENGTH)
    ? ok(symbols as LabelCode)
    : refuse('mistyped-code', 'One symbol of that code is off. Look at the label again.');
}

/**
 * The code in what a camera read: the plain code, or a link from any host that ends in `#/<code>`.
 *
 * Labels outlive a change of host, so the host is not looked at.
 *
 * Errors: refuses other text as `not-our-label`, and a damaged code as `mistyped-code`.
 */
export function readScannedText(text: string): Result<LabelCode> {
  const own = /^(?:https?:\/\/\S+#\/)?([0-9A-Z]{7})$/i.exec(text.trim())?.[1];
  if (own === undefined) {
    return refuse('not-our-label', 'That code is not a Nightdrop label.');
  }
  return readTypedCode(own);
}
