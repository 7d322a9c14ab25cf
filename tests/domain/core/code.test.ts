import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  labelCode,
  LABEL_CODES,
  readScannedText,
  readTypedCode,
} from '../../../src/domain/core/code.ts';
import { runs } from '../../arbitrary.ts';

// Crockford, D.: Base 32. The alphabet, quoted from memory: no I, L, O or U.
const ALPHABET = Array.from('0123456789ABCDEFGHJKMNPQRSTVWXYZ');

const anySerial = fc.integer({ min: 0, max: LABEL_CODES - 1 });
const anyCode = anySerial.map(labelCode);

const withSymbol = (code: string, i: number, symbol: string): string =>
  code.slice(0, i) + symbol + code.slice(i + 1);

const swapped = (code: string, i: number, j: number): string =>
  withSymbol(withSymbol(code, i, code.charAt(j)), j, code.charAt(i));

const isRead = (text: string): boolean => readTypedCode(text).ok;

describe('the check symbol', () => {
  test('catches every single wrong symbol, at every place', () => {
    fc.assert(
      fc.property(anyCode, (code) => {
        for (let i = 0; i < code.length; i += 1) {
          for (const symbol of ALPHABET) {
            expect(isRead(withSymbol(code, i, symbol))).toBe(symbol === code.charAt(i));
          }
        }
      }),
      runs(60),
    );
  });

  test('catches every swap of two unequal symbols, neighbours or not', () => {
    fc.assert(
      fc.property(anyCode, (code) => {
        for (let i = 0; i < code.length; i += 1) {
          for (let j = i + 1; j < code.length; j += 1) {
            expect(isRead(swapped(code, i, j))).toBe(code.charAt(i) === code.charAt(j));
          }
        }
      }),
      runs(300),
    );
  });

  test('is there for the first code and the last, and tells all serials apart', () => {
    expect(labelCode(0)).toBe('0000000');
    expect(labelCode(LABEL_CODES - 1).slice(0, 6)).toBe('ZZZZZZ');
    fc.assert(
      fc.property(anySerial, anySerial, (one, other) => {
        expect(labelCode(one) === labelCode(other)).toBe(one === other);
      }),
      runs(200),
    );
  });
});

describe('a code typed by hand', () => {
  const slips = fc.record({
    lower: fc.boolean(),
    cut: fc.nat(6),
    gap: fc.constantFrom('', ' ', '-'),
  });

  test('is read in any case, with spaces and hyphens', () => {
    fc.assert(
      fc.property(anyCode, slips, (code, { lower, cut, gap }) => {
        const typed = `${code.slice(0, cut)}${gap}${code.slice(cut)} `;
        const read = readTypedCode(lower ? typed.toLowerCase() : typed);
        expect(read).toEqual({ ok: true, value: code });
      }),
      runs(200),
    );
  });

  test('may have O for 0, and I or L for 1', () => {
    fc.assert(
      fc.property(anyCode, fc.constantFrom('I', 'i', 'L', 'l'), (code, one) => {
        const typed = code.replaceAll('0', 'O').replaceAll('1', one);
        expect(readTypedCode(typed)).toEqual({ ok: true, value: code });
      }),
      runs(200),
    );
  });

  test.each([
    ['', 'nothing'],
    ['000000', 'too short'],
    ['00000000', 'too long'],
    ['U000000', 'no symbol of the alphabet'],
    ['Sorrel', 'a name'],
  ])('%j is not a code: %s', (typed) => {
    expect(readTypedCode(typed)).toMatchObject({ ok: false, problem: { code: 'not-a-code' } });
  });

  test('that is off by one symbol says so, in words for the person at the tub', () => {
    const read = readTypedCode(withSymbol(labelCode(1_000), 2, 'Z'));
    expect(read).toMatchObject({ ok: false, problem: { code: 'mistyped-code' } });
  });
});

describe('what a camera read', () => {
  const links = fc.constantFrom(
    'https://example.org/#/',
    'http://10.0.0.7:4173/#/',
    'https://someone.example/snakes/room/#/',
    'HTTPS://EXAMPLE.ORG/SUB/#/',
    'https://example.org/?from=label#/',
    '',
  );

  test('is the plain code, or a link from any host and any sub-path', () => {
    fc.assert(
      fc.property(anyCode, links, (code, link) => {
        expect(readScannedText(`${link}${code}`)).toEqual({ ok: true, value: code });
        expect(readScannedText(` ${link}${code.toLowerCase()}\n`)).toEqual({
          ok: true,
          value: code,
        });
      }),
      runs(200),
    );
  });

  test.each([
    ['', 'nothing'],
    ['4006381333931', 'the bar code of a pencil'],
    ['https://example.org/', 'a link without a code'],
    ['https://example.org/#/racks', 'a page of the app that is no label'],
    ['https://example.org/0000000', 'a code where no label has one'],
    ['javascript:alert(1)//#/0000000', 'not a web address'],
    ['WIFI:S:snakes;T:WPA;P:0000000;;', 'the password of a network'],
    ['0000000 0000000', 'two codes'],
  ])('%j is refused: %s', (text) => {
    expect(readScannedText(text)).toMatchObject({ ok: false, problem: { code: 'not-our-label' } });
  });

  test('is never a code when it is something else', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 40 }), (text) => {
        const read = readScannedText(text);
        expect(text.trim().toUpperCase()).toContain(read.ok ? read.value : '');
      }),
      runs(500),
    );
  });
});
