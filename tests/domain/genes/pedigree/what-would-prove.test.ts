import { describe, expect, test } from 'vitest';
import type { TogetherState } from '../../../../src/domain/genes/pedigree/joint-posterior.ts';
import { whatWouldProve } from '../../../../src/domain/genes/pedigree/what-would-prove.ts';
import { recessiveModel, visual } from './make-pedigree.ts';

/** A tested male, het with a chance, and a dam of given chances for wild type, het and visual. */
const pairOf = (prior: number, dam: readonly number[]): readonly TogetherState[] =>
  [1 - prior, prior].flatMap((chance, genotype) =>
    dam.map((share, ofDam) => ({
      chance: chance * share,
      a: { sex: 'male', genotype } as const,
      b: { sex: 'female', genotype: ofDam } as const,
    })),
  );
const proofOf = (prior: number, dam: readonly number[], below: number) =>
  whatWouldProve(recessiveModel, {
    pair: pairOf(prior, dam),
    carries: (_, genotype) => genotype > 0,
    shows: visual,
    below,
  });

// First n at which p (1/2)^n or p (3/4)^n over itself and 1 − p is at most 10, 5 and 1 %: counted
// from the closed forms 1/(1 + 2^(n−1)) and so on. None of them meets its bound exactly.
describe('young that do not show until it is no carrier', () => {
  test.each([
    ['a visual', [0, 0, 1], 2 / 3, [5, 6, 8]],
    ['a visual', [0, 0, 1], 1 / 2, [4, 5, 7]],
    ['a visual', [0, 0, 1], 1 / 3, [3, 4, 6]],
    ['a visual', [0, 0, 1], 1 / 4, [2, 3, 6]],
    ['a het', [0, 1, 0], 2 / 3, [11, 13, 19]],
    ['a het', [0, 1, 0], 1 / 2, [8, 11, 16]],
    ['a het', [0, 1, 0], 1 / 3, [6, 8, 14]],
    ['a het', [0, 1, 0], 1 / 4, [4, 7, 13]],
  ] as const)('with %s (%j), prior %d', (_, dam, prior, counts) => {
    [0.1, 0.05, 0.01].forEach((below, n) => {
      expect(proofOf(prior, dam, below).youngUntilBelow).toEqual({
        kind: 'young',
        count: counts[n],
      });
    });
  });
});

// 2/3, 1/2, 1/3, 1/5, 1/9 with a visual; see known-answers.test.ts.
test('the way there, young by young', () => {
  const { ifNoneShow } = proofOf(2 / 3, [0, 0, 1], 0.15);
  expect(ifNoneShow).toHaveLength(5);
  [2 / 3, 1 / 2, 1 / 3, 1 / 5, 1 / 9].forEach((chance, n) => {
    expect(ifNoneShow[n]).toBeCloseTo(chance, 14);
  });
});

// A young shows with 1/2 from a visual and 1/4 from a het; the first after 2 and 4, as 1/p.
test('proof by one that shows', () => {
  expect(proofOf(2 / 3, [0, 0, 1], 0.05)).toMatchObject({
    chanceIfCarrier: 0.5,
    canShow: 1,
    youngToProof: 2,
    ifOneShows: 1,
  });
  expect(proofOf(2 / 3, [0, 1, 0], 0.05)).toMatchObject({ chanceIfCarrier: 0.25, youngToProof: 4 });
});

// (one of two)/(not both) = (2/9)/(5/9): a mate who may not carry leaves 2/5.
test('with a mate who may not carry it, no number of young rules it out', () => {
  const proof = proofOf(2 / 3, [1 / 3, 2 / 3, 0], 0.05);
  expect(proof.youngUntilBelow.kind).toBe('never');
  expect(proof.youngUntilBelow).toHaveProperty('floor', expect.closeTo(2 / 5, 14));
  expect(proof.canShow).toBeCloseTo(2 / 3, 14);
  expect(proof.youngToProof).toBeCloseTo(4, 14);
});

test('a wild-type mate shows nothing', () => {
  expect(proofOf(2 / 3, [1, 0, 0], 0.05)).toMatchObject({
    youngUntilBelow: { kind: 'never', floor: expect.closeTo(2 / 3, 14) },
    chanceIfCarrier: 0,
    youngToProof: undefined,
    ifOneShows: undefined,
  });
});

test('what cannot carry needs no young', () => {
  const proof = proofOf(0, [0, 0, 1], 0.05);
  expect(proof.youngUntilBelow).toEqual({ kind: 'young', count: 0 });
  expect(proof.ifNoneShow).toEqual([0]);
});

test('two males are no pair', () => {
  const male = { sex: 'male', genotype: 1 } as const;
  const breeding = { carries: () => true, shows: visual, below: 0.05 };
  expect(() =>
    whatWouldProve(recessiveModel, { ...breeding, pair: [{ chance: 1, a: male, b: male }] }),
  ).toThrow('A pair is a female and a male.');
});
