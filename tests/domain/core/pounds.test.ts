import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inPounds, readOunces, showPounds } from '../../../src/domain/core/pounds.ts';
import { GRAMS_PER_OUNCE, showGrams } from '../../../src/domain/core/units.ts';

// One ounce is 28.349 523 125 g, a pound sixteen of them: NIST SP 811 (2008), Appendix B.8.
describe('pounds and ounces', () => {
  test.each([
    { massG: 1_640, shown: '3 lb 9.8 oz' },
    { massG: 453.592_37, shown: '1 lb 0.0 oz' },
    { massG: 453.5, shown: '1 lb 0.0 oz' },
    { massG: 300, shown: '10.6 oz' },
    { massG: 65, shown: '2.29 oz' },
  ])('$massG g are shown as $shown', ({ massG, shown }) => {
    expect(showPounds(massG)).toBe(shown);
  });

  test('what is shown is off by half of its last figure at most, and reads back as that', () => {
    fc.assert(
      fc.property(fc.double({ min: 5, max: 8_000, noNaN: true }), (massG) => {
        const read = readOunces(showPounds(massG).replace(/ oz$/, ''));
        const half = massG / GRAMS_PER_OUNCE < 4 ? 0.005 : 0.05;
        expect(Math.abs((read?.massG ?? 0) - massG)).toBeLessThan(half * GRAMS_PER_OUNCE + 0.06);
      }),
    );
  });

  test.each([
    ['57.8', 57.8, 1_638.6],
    ['3 lb 9.8', 57.8, 1_638.6],
    ['3 lb ', 48, 1_360.8],
    ['2.', 2, 56.7],
  ])('"%s" are %d oz', (typed, ounces, massG) => {
    expect(readOunces(typed)).toEqual({ ounces, massG });
  });

  test.each(['', '0', '.', 'lb 3', '3 lb 4 lb 5'])('"%s" is no mass', (typed) => {
    expect(readOunces(typed)).toBeUndefined();
  });
});

describe('a view in pounds and ounces', () => {
  test('every mass the program wrote is said otherwise, wherever it stands', () => {
    const because = [`${showGrams(1_640)}, weighed last night; your floor is ${showGrams(1_500)}.`];
    expect(inPounds({ n: 65, chores: [{ because, blocked: undefined }] })).toEqual({
      n: 65,
      chores: [
        {
          because: ['3 lb 9.8 oz, weighed last night; your floor is 3 lb 4.9 oz.'],
          blocked: undefined,
        },
      ],
    });
  });

  test('what a keeper wrote stays as it was written', () => {
    const remark = { size: '40 g pinkie', remark: '1640 g on the other scale' };
    expect(inPounds(remark)).toEqual(remark);
  });
});
