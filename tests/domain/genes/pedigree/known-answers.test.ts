import { describe, expect, test } from 'vitest';
import { testLikelihood } from '../../../../src/domain/genes/pedigree/evidence.ts';
import { jointPosterior } from '../../../../src/domain/genes/pedigree/joint-posterior.ts';
import {
  answers,
  either,
  evidence,
  het,
  hetChance,
  looks,
  nonVisual,
  pedigreeOf,
  possible,
  recessiveModel,
  visual,
  young,
} from './make-pedigree.ts';

// Bayes by the table method (Young I.D., Introduction to Risk Calculation in Genetic Counseling,
// section 1.4): prior times conditional, divided by the sum. Fractions worked by hand unless named.

const pair = pedigreeOf(['dam', 'sire'], { c: ['dam', 'sire'] });

describe('a possible het, bred to a visual: p (1/2)^n / (p (1/2)^n + 1 − p)', () => {
  test.each([
    [2 / 3, [2 / 3, 1 / 2, 1 / 3, 1 / 5, 1 / 9, 1 / 17, 1 / 33, 1 / 65, 1 / 129]],
    [1 / 2, [1 / 2, 1 / 3, 1 / 5, 1 / 9, 1 / 17, 1 / 33, 1 / 65, 1 / 129, 1 / 257]],
    [1 / 3, [1 / 3, 1 / 5, 1 / 9, 1 / 17, 1 / 33, 1 / 65, 1 / 129, 1 / 257, 1 / 513]],
    [1 / 4, [1 / 4, 1 / 7, 1 / 13, 1 / 25, 1 / 49, 1 / 97, 1 / 193, 1 / 385, 1 / 769]],
  ])('prior %d', (prior, expected) => {
    expected.forEach((chance, n) => {
      const found = answers(pair, evidence({ dam: visual, sire: possible(prior) }, young('c', n)));
      expect(hetChance(found, 'sire')).toBeCloseTo(chance, 14);
    });
  });
});

describe('a possible het, bred to a known het: p (3/4)^n / (p (3/4)^n + 1 − p)', () => {
  test.each([
    [2 / 3, [2 / 3, 3 / 5, 9 / 17, 27 / 59, 81 / 209, 243 / 755, 729 / 2777]],
    [1 / 2, [1 / 2, 3 / 7, 9 / 25, 27 / 91, 81 / 337, 243 / 1267, 729 / 4825]],
    [1 / 3, [1 / 3, 3 / 11, 9 / 41, 27 / 155, 81 / 593, 243 / 2291, 729 / 8921]],
    [1 / 4, [1 / 4, 1 / 5, 3 / 19, 9 / 73, 27 / 283, 81 / 1105, 243 / 4339]],
  ])('prior %d', (prior, expected) => {
    expected.forEach((chance, n) => {
      const found = answers(pair, evidence({ dam: het, sire: possible(prior) }, young('c', n)));
      expect(hetChance(found, 'sire')).toBeCloseTo(chance, 14);
    });
  });

  // Textbook: sib of an affected, three unaffected children by a known carrier: 54/118 = 27/59.
  test('and the same young one by one as animals', () => {
    const kids = ['x', 'y', 'z'].map((id) => ({ id, clutch: 'c' }));
    const family = pedigreeOf(['dam', 'sire', ...kids], { c: ['dam', 'sire'] });
    const seen = kids.map(({ id }) => looks(id, nonVisual));
    const found = answers(family, evidence({ dam: het, sire: possible(2 / 3) }, ...seen));
    expect(hetChance(found, 'sire')).toBeCloseTo(27 / 59, 14);
  });

  // Prior 2/3, two from a visual and three from a het: (2/3)(1/4)(27/64) over that and 1/3.
  test('after two from a visual mate: 27/155', () => {
    const twoMates = pedigreeOf(['v', 'h', 'sire'], { cv: ['v', 'sire'], ch: ['h', 'sire'] });
    const priors = { v: visual, h: het, sire: possible(2 / 3) };
    const found = answers(twoMates, evidence(priors, young('cv', 2), young('ch', 3)));
    expect(hetChance(found, 'sire')).toBeCloseTo(27 / 155, 14);
  });
});

// The trade's percentages: non-visual young of two hets are 2/3 het, of a het and a wild type 1/2.
// Ones of possible hets: het and visual parts worked by hand, e.g. (1/2)/(5/6) = 3/5.
describe('a young that does not show, before its siblings are looked at', () => {
  test.each([
    [1, 1, 2 / 3],
    [1, 0, 1 / 2],
    [2 / 3, 1, 3 / 5],
    [2 / 3, 2 / 3, 1 / 2],
    [1 / 2, 1, 4 / 7],
    [1 / 2, 1 / 2, 2 / 5],
    [2 / 3, 1 / 2, 5 / 11],
    [2 / 3, 0, 1 / 3],
    [1 / 2, 0, 1 / 4],
  ])('of parents het with %d and %d: %d', (dam, sire, expected) => {
    const family = pedigreeOf(['dam', 'sire', { id: 'x', clutch: 'c' }], { c: ['dam', 'sire'] });
    const priors = { dam: possible(dam), sire: possible(sire) };
    const found = answers(family, evidence(priors, looks('x', nonVisual)));
    expect(hetChance(found, 'x')).toBeCloseTo(expected, 14);
  });
});

// A 2/3; A × wild type gives B; B × visual gives n that do not show.
// P(A) = (2^n + 1)/(2^(n+1) + 1), P(B) = 1/(1 + 2^(n+1)).
test('two generations on, a tested daughter tells less of her father than of herself', () => {
  const chain = pedigreeOf(['A', 'wild', { id: 'B', clutch: 'b' }, 'v'], {
    b: ['wild', 'A'],
    t: ['B', 'v'],
  });
  for (let n = 0; n <= 6; n += 1) {
    const priors = { A: possible(2 / 3), v: visual };
    const found = answers(chain, evidence(priors, looks('B', nonVisual), young('t', n)));
    expect(hetChance(found, 'A')).toBeCloseTo((2 ** n + 1) / (2 ** (n + 1) + 1), 14);
    expect(hetChance(found, 'B')).toBeCloseTo(1 / (1 + 2 ** (n + 1)), 14);
  }
});

describe('two possible hets bred together', () => {
  const both = { dam: possible(2 / 3), sire: possible(2 / 3) };

  test.each([
    [0, 4 / 9, 2 / 3, 1 / 9],
    [1, 3 / 8, 5 / 8, 1 / 8],
    [2, 9 / 29, 17 / 29, 4 / 29],
  ])('%d that do not show tie them together', (n, bothHet, one, neither) => {
    const known = evidence(both, young('c', n));
    const found = answers(pair, known);
    expect(hetChance(found, 'dam')).toBeCloseTo(one, 14);
    expect(hetChance(found, 'sire')).toBeCloseTo(one, 14);
    const together = jointPosterior(pair, recessiveModel, known, 'dam', 'sire');
    if (together.kind !== 'together') throw new Error(together.kind);
    const chanceOf = (dam: number, sire: number): number | undefined =>
      together.chances.find(({ a, b }) => a.genotype === dam && b.genotype === sire)?.chance;
    expect(chanceOf(1, 1)).toBeCloseTo(bothHet, 14);
    expect(chanceOf(0, 0)).toBeCloseTo(neither, 14);
  });

  test('each alone cannot fall below 2/5, however many there are', () => {
    const found = answers(pair, evidence(both, young('c', 3_000)));
    expect(hetChance(found, 'sire')).toBeCloseTo(2 / 5, 12);
  });

  test('one that shows proves both', () => {
    const found = answers(pair, evidence(both, young('c', 5, 1)));
    expect([hetChance(found, 'dam'), hetChance(found, 'sire')]).toEqual([1, 1]);
  });
});

describe('DNA tests', () => {
  const one = pedigreeOf(['x'], {});
  // p(1 − s)/(1 − p s). 1/6 a textbook's (0.167); 1/241 the usual cystic fibrosis figure; 1/491 and
  // 1/981 published for a carrier rate of 1 in 50.
  test.each([
    [2 / 3, 0.9, 1 / 6],
    [1 / 25, 0.9, 1 / 241],
    [1 / 50, 0.9, 1 / 491],
    [1 / 50, 0.95, 1 / 981],
    [2 / 3, 0.95, 1 / 11],
    [2 / 3, 0.99, 1 / 51],
    [1 / 2, 0.95, 1 / 21],
  ])('prior %d, not found by a test that finds %d: %d', (prior, sensitivity, expected) => {
    const likelihood = testLikelihood('not found', either(0, 1, 1), {
      sensitivity,
      specificity: 1,
    });
    const test_ = { kind: 'test', id: 't', animal: 'x', likelihood } as const;
    expect(hetChance(answers(one, evidence({ x: possible(prior) }, test_)), 'x')).toBeCloseTo(
      expected,
      12,
    );
  });

  // 0.5 × 0.9 / (0.5 × 0.9 + 0.5 × 0.02) = 45/46.
  test('one that errs both ways proves nothing for sure', () => {
    const errs = { sensitivity: 0.9, specificity: 0.98 };
    const likelihood = testLikelihood('found', either(0, 1, 1), errs);
    const found = { kind: 'test', id: 't', animal: 'x', likelihood } as const;
    expect(hetChance(answers(one, evidence({ x: possible(1 / 2) }, found)), 'x')).toBeCloseTo(
      45 / 46,
      14,
    );
  });
});

// Both parents het 4/9: hidden 3/4 each, het 1/2. One of them 4/9: all hidden, het 1/2. Neither 1/9.
test('what siblings show changes what one is', () => {
  const family = pedigreeOf(['dam', 'sire', { id: 'x', clutch: 'c' }], { c: ['dam', 'sire'] });
  const both = { dam: possible(2 / 3), sire: possible(2 / 3) };
  for (const n of [0, 1, 2, 5]) {
    const found = answers(family, evidence(both, looks('x', nonVisual), young('c', n)));
    const isHet = (2 / 9) * 0.75 ** n + 2 / 9;
    const all = (4 / 9) * 0.75 ** (n + 1) + 4 / 9 + 1 / 9;
    expect(hetChance(found, 'x')).toBeCloseTo(isHet / all, 14);
  }
});
