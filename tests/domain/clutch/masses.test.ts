import { describe, expect, test } from 'vitest';
import { massBalance, relativeMasses } from '../../../src/domain/clutch/masses.ts';

// Snake 06: Laarhoven B. & Kooijman S.A.L.M. 2010, Add-my-Pet collection, entry Python_regius. Four
// eggs of 472 g; last weighed gravid 1,645 g, eight days before she was found with them, then 1,247 g.
const snake06 = { before: { massG: 1_645, days: 8 }, afterG: 1_247, clutchG: 472 };

describe('the clutch of snake 06', () => {
  test('is two shares, each of a weight that is named', () => {
    const [before, after] = relativeMasses(snake06);
    expect(before?.of).toBe('her weight before laying');
    expect(100 * (before?.share ?? 0)).toBeCloseTo(28.69, 2);
    expect(after?.of).toBe('her weight after laying');
    expect(100 * (after?.share ?? 0)).toBeCloseTo(37.85, 2);
  });

  test('weighs 74 g more than she lost, which does not agree', () => {
    expect(massBalance(snake06, 0.03)).toMatchObject({ overG: 74, agrees: false });
    expect(massBalance({ ...snake06, clutchG: 400 }, 0.03)).toMatchObject({ agrees: true });
  });

  test('has no balance where a weight is missing', () => {
    expect(massBalance({ ...snake06, before: undefined }, 0.03)).toBeUndefined();
    expect(relativeMasses({ clutchG: 472 })).toEqual([]);
  });
});

test('32 % of the weight before is 47 % of the weight after', () => {
  // Ellis T.M. & Chappell M.A. 1987, J Comp Physiol B 157:393–402; the second by 0.32 / (1 − 0.32).
  const [before, after] = relativeMasses({
    before: { massG: 1_000, days: 0 },
    afterG: 680,
    clutchG: 320,
  });
  expect(before?.share).toBeCloseTo(0.32, 3);
  expect(after?.share).toBeCloseTo(0.471, 3);
});
