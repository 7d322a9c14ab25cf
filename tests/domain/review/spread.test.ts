import fc from 'fast-check';
import { expect, test } from 'vitest';
import { spreadOf } from '../../../src/domain/review/spread.ts';

test('the quartiles of 1 to 10 are 3.25, 5.5 and 7.75, as R gives them by default', () => {
  // Hyndman R.J. & Fan Y. 1996, Am Stat 50:361–365, type 7: 1 + 9 p.
  expect(spreadOf([10, 1, 2, 9, 3, 8, 4, 7, 5, 6])).toEqual({
    n: 10,
    median: 5.5,
    quartiles: [3.25, 7.75],
    least: 1,
    most: 10,
  });
});

test('of three there is a middle and no middle half; of none there is nothing', () => {
  expect(spreadOf([6, 2, 3])).toEqual({ n: 3, median: 3, quartiles: undefined, least: 2, most: 6 });
  expect(spreadOf([])).toBeUndefined();
});

test('all stand in order, and in whatever order they came', () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 0, max: 90 }), { minLength: 4 }), (numbers) => {
      const spread = spreadOf(numbers);
      const [low = NaN, high = NaN] = spread?.quartiles ?? [];
      const steps = [spread?.least, low, spread?.median, high, spread?.most];
      expect(steps.map(Number).toSorted((a, b) => a - b)).toEqual(steps);
      expect(spreadOf(numbers.toReversed())).toEqual(spread);
    }),
  );
});
