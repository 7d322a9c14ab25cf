import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LABEL_CODES, labelCode, readScannedText } from '../../../src/domain/core/code.ts';
import { fitQr, payloadOf, quietSide } from '../../../src/domain/labels/qr.ts';
import { errorLevel, modulesOf } from './read-format.ts';

const A_DOT = 25.4 / 300;
const code = labelCode(123_456_789);
const link = (length: number) =>
  payloadOf(code, `https://${'x'.repeat(length - 'https:///#/'.length - code.length)}/`);

// Source: ISO/IEC 18004:2015, tables 1 and 7: a symbol of version v has 17 + 4 v modules a side;
// at level Q version 1 holds 16 alphanumeric signs, version 2 20 bytes, 3 32 bytes, 4 46 bytes.
describe('the size of a code follows its text', () => {
  test.each([
    ['seven symbols alone on a roll: version 1', code, true, 21],
    ['seven symbols on a sheet: version 2, with an alignment pattern', code, false, 25],
    ['32 bytes: the most that version 3 holds', link(32), true, 29],
    ['33 bytes: version 4', link(33), true, 33],
    ['46 bytes: the most that version 4 holds', link(46), true, 33],
    ['47 bytes: version 5', link(47), true, 37],
  ])('%s', (_, text, alone, modules) => {
    expect(fitQr(text, 60, A_DOT, alone)?.modules).toBe(modules);
  });
});

// Source: ISO/IEC 18004:2015, 7.9: the level is in the first two format bits: Q is 11, H is 10.
test('a plain code can lose a quarter of its marks to dirt, and a link too', () => {
  expect(['Q', 'H']).toContain(errorLevel(fitQr(code, 60, A_DOT, true)!));
  expect(['Q', 'H']).toContain(errorLevel(fitQr(link(40), 60, A_DOT, true)!));
});

test('the path draws exactly the three finder patterns where the standard has them', () => {
  const square = fitQr(code, 60, A_DOT, false)!;
  const dark = modulesOf(square);
  const far = square.modules - 7;
  for (const [left, top] of [
    [0, 0],
    [far, 0],
    [0, far],
  ] as const) {
    const ring = Array.from({ length: 7 }, (_, i) => dark.has(`${left + i} ${top}`));
    expect(ring).toEqual(Array(7).fill(true));
    expect(dark.has(`${left + 1} ${top + 1}`)).toBe(false);
    expect(dark.has(`${left + 3} ${top + 3}`)).toBe(true);
  }
});

test('modules are whole dots, at least 0.4 mm, and fill the room but never more', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 10, max: 60, noNaN: true }),
      fc.constantFrom(A_DOT, 0.125),
      fc.boolean(),
      (roomMm, dotMm, alone) => {
        const square = fitQr(code, roomMm, dotMm, alone);
        if (!square) return;
        expect(square.moduleMm).toBeGreaterThanOrEqual(0.4);
        expect(quietSide(square)).toBeLessThanOrEqual(roomMm + 1e-3);
        expect(square.moduleMm / dotMm).toBeCloseTo(Math.round(square.moduleMm / dotMm), 9);
      },
    ),
  );
});

test('a room under 29 modules of 0.4 mm holds no code', () => {
  expect(fitQr(code, 29 * 0.4 - 0.1, A_DOT, true)).toBeUndefined();
});

test('what a label says is read back as its code, from any host', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: LABEL_CODES - 1 }),
      fc.option(fc.webUrl(), { nil: undefined }),
      (serial, base) => {
        const own = labelCode(serial);
        expect(readScannedText(payloadOf(own, base))).toEqual({ ok: true, value: own });
      },
    ),
  );
});
