import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { suggestResorbing, type Resorbing } from '../../../src/domain/follicles/resorbing.ts';
import { defaultProtocol } from '../../../src/domain/protocol/values.ts';
import { readings, type Found } from './make-scan.ts';

const suggestedBy = (...scans: readonly (readonly [number, Found])[]): Resorbing | undefined =>
  suggestResorbing(readings(...scans), defaultProtocol);

// Two falling values at least 14 days apart, never one: common practice, no source.

test('two falls 14 days apart, together beyond error, suggest resorbing and say why', () => {
  const found = suggestedBy([0, 18], [20, 28], [40, 24], [54, 18]);
  expect(found).toMatchObject({ dropMm: 10, apartDays: 14, atLeast: false });
  // By hand, with 8 % of each size.
  expect(found?.errorMm).toBeCloseTo(2 * Math.hypot(2.24, 1.44), 10);
  expect(found?.readings.map((each) => each.kind === 'size' && each.mm)).toEqual([28, 24, 18]);
});

test.each<[string, ...(readonly [number, Found])[]]>([
  ['one fall, however large', [0, 20], [20, 30], [40, 11]],
  ['one night with two scans', [0, 30], [20, 20], [20, 11]],
  ['falls 13 days apart', [0, 28], [20, 24], [33, 18]],
  ['falls within error', [0, 28], [20, 26], [40, 24]],
  ['a second scan no smaller than the first fall', [0, 28], [20, 20], [40, 21]],
  ['growing again', [0, 28], [20, 22], [40, 14], [60, 20]],
  ['follicles at rest all along', [0, 9.5], [20, 6], [40, 4.5]],
  ['nothing ever found', [0, 'none'], [20, 'none'], [40, 'nothing']],
  ['felt classes one step apart', [0, 'large lumps'], [20, 'round lumps']],
])('not for %s', (_, ...scans) => {
  expect(suggestedBy(...scans)).toBeUndefined();
});

test('nothing seen is a fall to what can be seen, and nothing again is the second', () => {
  expect(suggestedBy([0, 25], [20, 'none'])).toBeUndefined();
  expect(suggestedBy([0, 25], [20, 'none'], [40, 'none'])).toMatchObject({
    dropMm: 17,
    atLeast: true,
  });
  expect(suggestedBy([0, 25], [20, 16], [40, 'none'])).toMatchObject({ dropMm: 17, atLeast: true });
});

test('weekly scans count by the days between the falls, not by their number', () => {
  expect(suggestedBy([0, 30], [7, 27], [14, 24])).toBeUndefined();
  expect(suggestedBy([0, 30], [7, 27], [14, 24], [21, 20])).toMatchObject({ apartDays: 14 });
});

test('a wobble at the bottom does not take it back', () => {
  expect(suggestedBy([0, 30], [20, 22], [40, 15], [60, 15.5])).toBeDefined();
});

test('felt classes suggest it only over two steps', () => {
  expect(suggestedBy([0, 'large lumps'], [20, 'round lumps'], [40, 'small bumps'])).toBeDefined();
  expect(suggestedBy([0, 'round lumps'], [20, 'small bumps'], [40, 'nothing'])).toBeUndefined();
});

test('it is never suggested while only one look has followed the largest size', () => {
  const size = fc.double({ min: 10, max: 50, noNaN: true });
  fc.assert(
    fc.property(fc.array(size, { maxLength: 6 }), size, (earlier, last) => {
      const largest = Math.max(last, ...earlier) + 0.5;
      const sizes = [...earlier, largest, last];
      expect(suggestedBy(...sizes.map((mm, i) => [20 * i, mm] as const))).toBeUndefined();
    }),
  );
});

test('the order the records came in does not matter', () => {
  const scans = [
    [0, 18],
    [20, 28],
    [40, 24],
    [60, 18],
  ] as const;
  const { readings: _, ...because } = suggestedBy(...scans) ?? { readings: [] };
  expect(suggestedBy(...scans.toReversed())).toMatchObject(because);
});
