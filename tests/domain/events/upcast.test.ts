import { expect, test } from 'vitest';
import { upcast, type Steps } from '../../../src/domain/events/upcast.ts';

// A history that has not happened: two earlier shapes of a weight.
const steps: Steps = {
  'weighed@1': ({ grams, ...rest }) => ({ ...rest, v: 2, mass: grams }),
  'weighed@2': ({ mass, ...rest }) => ({ ...rest, v: 3, massG: mass }),
};

test('a record of any earlier shape takes every step up to today’s', () => {
  const today = { type: 'weighed', v: 3, massG: 1_500 };
  expect(upcast({ type: 'weighed', v: 1, grams: 1_500 }, steps)).toEqual(today);
  expect(upcast({ type: 'weighed', v: 2, mass: 1_500 }, steps)).toEqual(today);
  expect(upcast(today, steps)).toEqual(today);
});

test('a record of another kind, a newer one, or none at all is left as it is', () => {
  for (const raw of [{ type: 'shed', v: 1 }, { type: 'weighed', v: 9 }, {}]) {
    expect(upcast(raw, steps)).toBe(raw);
  }
});
