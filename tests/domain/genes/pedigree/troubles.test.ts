import { describe, expect, test } from 'vitest';
import { carrierPosteriors } from '../../../../src/domain/genes/pedigree/carrier-posteriors.ts';
import { jointPosterior } from '../../../../src/domain/genes/pedigree/joint-posterior.ts';
import type { PedigreeClutch } from '../../../../src/domain/genes/pedigree/pedigree.ts';
import { whatMovedIt } from '../../../../src/domain/genes/pedigree/what-moved-it.ts';
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

describe('records that contradict each other', () => {
  const family = pedigreeOf(
    ['dam', 'sire', { id: 'x', clutch: 'c' }, { id: 'y', clutch: 'c' }, 'other dam', 'other sire'],
    { c: ['dam', 'sire'], o: ['other dam', 'other sire'] },
  );
  const known = evidence(
    { dam: het, 'other dam': possible(2 / 3), 'other sire': visual },
    looks('x', visual),
    looks('y', nonVisual),
    young('o', 3),
  );

  test('a visual young of a male taken for wild type: his prior and its look are named', () => {
    const [trouble, ...more] = answers(family, known).troubles;
    expect(more).toEqual([]);
    expect(trouble).toMatchObject({
      kind: 'contradiction',
      findings: ['look of x'],
      priors: ['sire'],
    });
    expect(trouble?.animals).toEqual(expect.arrayContaining(['x', 'dam', 'sire']));
  });

  test('nothing is said of those it touches, and the rest is told as ever', () => {
    const found = answers(family, known);
    for (const id of ['x', 'dam', 'sire']) expect(found.of.has(id)).toBe(false);
    // 2/3 with three that do not show from a visual mate: 1/5.
    expect(hetChance(found, 'other dam')).toBeCloseTo(1 / 5, 14);
  });

  test('a pair of whom one is touched gets the reason', () => {
    expect(jointPosterior(family, recessiveModel, known, 'dam', 'other sire')).toMatchObject({
      kind: 'contradiction',
      findings: ['look of x'],
    });
    expect(whatMovedIt(family, recessiveModel, known, 'x').kind).toBe('contradiction');
  });

  test('two that clash only together are both named', () => {
    const two = pedigreeOf(['dam', 'sire', 'mate'], { c: ['dam', 'sire'], m: ['mate', 'sire'] });
    // A visual sire cannot have a young that carries nothing.
    const clash = evidence(
      { dam: het, mate: possible(1 / 2), sire: either(1, 1, 1) },
      looks('sire', visual),
      young('m', 2),
      {
        kind: 'young',
        id: 'bare',
        clutch: 'c',
        young: [{ count: 1, likelihood: either(1, 0, 0) }],
      },
    );
    const [trouble] = answers(two, clash).troubles;
    expect(trouble).toMatchObject({ kind: 'contradiction', priors: [] });
    expect(trouble?.kind === 'contradiction' && trouble.findings.toSorted()).toEqual([
      'bare',
      'look of sire',
    ]);
  });
});

describe('what is too interwoven', () => {
  // Every one of ten males with every one of ten females, all possible hets, and nothing to tell.
  const ids = (prefix: string): readonly string[] =>
    Array.from({ length: 10 }, (_, n) => `${prefix}${n}`);
  const clutches = ids('f').flatMap((dam) =>
    ids('m').map((sire): PedigreeClutch => ({
      id: `${dam}${sire}`,
      dam,
      fathers: [{ sire, weight: 1 }],
    })),
  );
  const mesh = pedigreeOf([...ids('f'), ...ids('m'), 'alone'], clutches);
  const priors = Object.fromEntries(
    [...ids('f'), ...ids('m'), 'alone'].map((id) => [id, possible(2 / 3)]),
  );
  const known = evidence(priors, ...clutches.map(({ id }) => young(id, 2)));

  test('is said, with how wide and who, before anything is computed', () => {
    const found = carrierPosteriors(mesh, recessiveModel, known, { mostCells: 1_000 });
    const [trouble] = found.troubles;
    expect(trouble).toMatchObject({ kind: 'too-large', width: 11 });
    expect(trouble?.animals.toSorted()).toEqual([...ids('f'), ...ids('m')].toSorted());
    expect(hetChance(found, 'alone')).toBeCloseTo(2 / 3, 14);
    expect(jointPosterior(mesh, recessiveModel, known, 'f0', 'm0', { mostCells: 1_000 }).kind).toBe(
      'too-large',
    );
  });

  // By hand: all hidden from a pair has (9/16) if both carry, else 1. Of k females and l males that
  // carry, binomial with 2/3: sum of C(10,k) C(10,l) 2^(k+l) (9/16)^(kl), with k/10 for one of them.
  test('with room for it, it is exact', () => {
    const choose = (k: number): number =>
      Array.from({ length: k }, (_, n) => (10 - n) / (n + 1)).reduce((a, b) => a * b, 1);
    let [all, carries] = [0, 0];
    for (let k = 0; k <= 10; k += 1) {
      for (let l = 0; l <= 10; l += 1) {
        const weight = choose(k) * choose(l) * 2 ** (k + l) * (9 / 16) ** (k * l);
        all += weight;
        carries += (weight * k) / 10;
      }
    }
    const found = answers(mesh, known);
    expect(found.troubles).toEqual([]);
    for (const id of ['f0', 'f9', 'm4'])
      expect(hetChance(found, id)).toBeCloseTo(carries / all, 12);
  });
});

describe('evidence that does not fit is an error', () => {
  const one = pedigreeOf(['dam', 'sire', { id: 'x', clutch: 'c' }], { c: ['dam', 'sire'] });
  test.each([
    ['a prior of one with parents', evidence({ x: het })],
    ['a prior of nobody', evidence({ z: het })],
    ['a look of nobody', evidence({}, looks('z', visual))],
    ['young of no clutch', evidence({}, young('z', 1))],
    ['half a young', evidence({}, young('c', 0.5))],
    ['too few genotypes', evidence({ dam: either(1, 0) })],
    ['less than no chance', evidence({ dam: either(1, -1, 0) })],
  ])('%s', (_, known) => {
    expect(() => answers(one, known)).toThrow(RangeError);
  });
});
