import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { look, OUT_OF_VIEW_MS, type InView } from '../../src/scan/repeats.ts';

/** What is told of, for pictures taken at given times. */
function told(pictures: readonly (readonly [ms: number, ...texts: string[]])[]): string[] {
  let inView: InView = new Map();
  return pictures.flatMap(([ms, ...texts]) => {
    const seen = look(inView, texts, ms);
    ({ inView } = seen);
    return seen.fresh;
  });
}

describe('a text before the camera', () => {
  test('is told of at once', () => {
    expect(told([[0, 'A']])).toEqual(['A']);
  });

  test('is told of once, however long it is held there', () => {
    const held = fc.array(fc.record({ afterMs: fc.nat(OUT_OF_VIEW_MS - 1) }), { minLength: 1 });
    fc.assert(
      fc.property(held, (steps) => {
        let ms = 0;
        const pictures = steps.map(({ afterMs }) => [(ms += afterMs), 'A'] as const);
        expect(told(pictures)).toEqual(['A']);
      }),
    );
  });

  test('stays in view through pictures in which it could not be read', () => {
    expect(told([[0, 'A'], [100], [200], [300], [1400], [1499, 'A']])).toEqual(['A']);
  });

  test('is told of again after it was out of view', () => {
    expect(told([[0, 'A'], [500], [1000], [1500], [1600, 'A']])).toEqual(['A', 'A']);
  });

  test('is not told of again by the very picture that ends a long gap', () => {
    // The page was hidden, or the phone is slow: nothing was looked at in between.
    expect(
      told([
        [0, 'A'],
        [60_000, 'A'],
      ]),
    ).toEqual(['A']);
    expect(told([[0, 'A'], [1000], [2000, 'A']])).toEqual(['A']);
  });

  test('is not in the way of another', () => {
    expect(
      told([
        [0, 'A'],
        [100, 'B'],
        [200, 'A', 'B'],
        [300, 'A', 'C'],
      ]),
    ).toEqual(['A', 'B', 'C']);
  });

  test('counts once when one picture shows it twice', () => {
    expect(told([[0, 'A', 'A']])).toEqual(['A']);
  });

  test('is forgotten when it is gone, so that a long night costs no memory', () => {
    let { inView } = look(new Map(), ['A'], 0);
    for (const ms of [1000, 2000, 3000]) ({ inView } = look(inView, [], ms));
    expect(inView.size).toBe(0);
  });
});
