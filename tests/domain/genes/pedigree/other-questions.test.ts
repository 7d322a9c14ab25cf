import { describe, expect, test } from 'vitest';
import {
  agreed,
  dominant,
  group,
  alone,
} from '../../../../src/domain/genes/catalogue/make-locus.ts';
import { fraction, HALF } from '../../../../src/domain/genes/fraction.ts';
import type { GeneSex } from '../../../../src/domain/genes/locus.ts';
import { carrierPosteriors } from '../../../../src/domain/genes/pedigree/carrier-posteriors.ts';
import type { Finding } from '../../../../src/domain/genes/pedigree/evidence.ts';
import { pedigreeModel } from '../../../../src/domain/genes/pedigree/pedigree-model.ts';
import type { ByGenotype, PedigreeModel } from '../../../../src/domain/genes/pedigree/states.ts';
import { either, evidence, pedigreeOf } from './make-pedigree.ts';

const pair = pedigreeOf(['dam', 'sire'], { c: ['dam', 'sire'] });

const counted = (...young: readonly (readonly [number, ByGenotype])[]): Finding => ({
  kind: 'young',
  id: 'young',
  clutch: 'c',
  young: young.map(([count, likelihood]) => ({ count, likelihood })),
});

// Of visible young of two hets of a dominant 1/3 are homozygous. Bred to wild type, all visible:
// 2^n/(2^n + 2).
test('a dominant that only throws visibles is likely homozygous', () => {
  const model = pedigreeModel(alone(dominant('d', 'D')), HALF);
  [1 / 3, 1 / 2, 2 / 3, 4 / 5, 8 / 9, 16 / 17].forEach((expected, n) => {
    const known = evidence({ sire: either(0, 2 / 3, 1 / 3) }, counted([n, either(0, 1, 1)]));
    expect(carrierPosteriors(pair, model, known).of.get('sire')?.male[2]).toBeCloseTo(expected, 14);
  });
});

// A banana male, as likely a male maker (YB) as a female maker (XB), with k banana sons and m banana
// daughters of wild mates: (1−r)^k r^m / ((1−r)^k r^m + r^k (1−r)^m).
describe('on which chromosome a male has his banana', () => {
  const makerAt = (r: number) =>
    pedigreeModel(
      group('bn', 'Banana', [dominant('b', 'B')], {
        linkage: { kind: 'sex-linked', recombination: fraction(1, r), evidence: agreed },
      }),
      HALF,
    );
  const shown = (sex: GeneSex): ByGenotype => ({
    female: sex === 'female' ? [0, 1, 1] : [0, 0, 0],
    male: sex === 'male' ? [0, 1, 1, 1] : [0, 0, 0, 0],
  });
  // Male genotypes by (X, Y) allele: 0 wild type, 1 and 2 one of each, 3 both; see genotype.ts.
  test.each([
    [10, 1, 0, 9 / 10],
    [10, 2, 0, 81 / 82],
    [10, 3, 0, 729 / 730],
    [10, 2, 1, 9 / 10],
    [20, 1, 0, 19 / 20],
    [20, 2, 0, 361 / 362],
    [20, 3, 0, 6859 / 6860],
  ])(
    'one in %d crosses over; %d sons, %d daughters: %d male maker',
    (r, sons, daughters, maker) => {
      const model = makerAt(r);
      const onY = [1, 2].find((male) => (model.child('male', 0, male)[male] ?? 0) > 0.5) ?? 0;
      const priors = { sire: { female: [1, 0, 0], male: [0, 1 / 2, 1 / 2, 0] } };
      const seen = counted([sons, shown('male')], [daughters, shown('female')]);
      const found = carrierPosteriors(pair, model, evidence(priors, seen));
      expect(found.of.get('sire')?.male[onY]).toBeCloseTo(maker, 12);
    },
  );
});

// X-linked, males with one copy. Ogino S. & Wilson R.B. 2004, J Mol Diagn 6:1–9: a consultand whose
// mother must carry, three healthy sons: 1/16 against 1/2, so 1/9. One son 1/3, two 1/5. A negative
// assay of 95 % on top (secondary teaching text): 1/161.
describe('a recessive on the X', () => {
  const model: PedigreeModel = {
    genotypes: { female: 3, male: 2 },
    child(sex, dam, sire) {
      const [wild, carried] = [1 - dam / 2, dam / 2];
      if (sex === 'male') return [wild, carried];
      return sire === 0 ? [wild, carried, 0] : [0, wild, carried];
    },
    survival: () => 1,
  };
  const healthySon: ByGenotype = { female: [0, 0, 0], male: [1, 0] };
  const family = pedigreeOf(['mother', 'father', { id: 'dam', clutch: 'm' }, 'sire'], {
    m: ['mother', 'father'],
    c: ['dam', 'sire'],
  });
  const mother = { female: [0, 1, 0], male: [1, 0] };
  const carrier = (sons: number, ...more: readonly Finding[]): number | undefined =>
    carrierPosteriors(
      family,
      model,
      evidence({ mother }, counted([sons, healthySon]), ...more),
    ).of.get('dam')?.female[1];

  test.each([
    [0, 1 / 2],
    [1, 1 / 3],
    [2, 1 / 5],
    [3, 1 / 9],
  ])('%d healthy sons: %d', (sons, expected) => {
    expect(carrier(sons)).toBeCloseTo(expected, 14);
  });

  test('three healthy sons and a negative test of 95 %: 1/161', () => {
    const likelihood = { female: [1, 0.05, 0.05], male: [1, 0.05] };
    const assay = { kind: 'test', id: 't', animal: 'dam', likelihood } as const;
    expect(carrier(3, assay)).toBeCloseTo(1 / 161, 12);
  });
});

// Two visible traits in one animal: one locus, or two unlinked ones? Prior 1/2; n young of a wild
// mate that each show exactly one: 2^n/(2^n + 1). The hypotheses are genotypes of a made-up locus.
describe('allelic, or at two loci', () => {
  // 0 wild type; 1 both traits, allelic; 2 both traits, unlinked; 3 shows one; 4 shows both or none.
  const model: PedigreeModel = {
    genotypes: { female: 5, male: 5 },
    child: (_, __, sire) => (sire === 1 ? [0, 0, 0, 1, 0] : [0, 0, 0, 1 / 2, 1 / 2]),
    survival: () => 1,
  };
  const prior = { sire: either(0, 1 / 2, 1 / 2, 0, 0) };
  const allelic = (one: number, other: number): number | undefined => {
    const seen = counted([one, either(0, 0, 0, 1, 0)], [other, either(0, 0, 0, 0, 1)]);
    return carrierPosteriors(pair, model, evidence(prior, seen)).of.get('sire')?.male[1];
  };

  test.each([1 / 2, 2 / 3, 4 / 5, 8 / 9, 16 / 17].map((expected, n) => [n, expected] as const))(
    '%d young with one trait each: %d',
    (n, expected) => expect(allelic(n, 0)).toBeCloseTo(expected, 14),
  );

  test('one with both or neither: not allelic', () => expect(allelic(7, 1)).toBe(0));
});

// Dam +/a, terminal fusion: het y, a/a and +/+ (1 − y)/2 each, all daughters.
describe('young without a father', () => {
  const locus = alone(dominant('d', 'D'));
  test.each([
    [0, [1 / 2, 0, 1 / 2]],
    [2 / 3, [1 / 6, 2 / 3, 1 / 6]],
    [1, [0, 1, 0]],
  ])('apart in %d', (apart, expected) => {
    const family = pedigreeOf(
      ['dam', { id: 'x', clutch: 'c' }],
      [{ id: 'c', dam: 'dam', fathers: [{ fatherless: true, weight: 1 }] }],
    );
    const model = pedigreeModel(locus, fraction(Math.round(3 * apart), 3));
    const { female, male } = carrierPosteriors(
      family,
      model,
      evidence({ dam: either(0, 1, 0) }),
    ).of.get('x') ?? { female: [], male: [] };
    expected.forEach((chance, genotype) => expect(female[genotype]).toBeCloseTo(chance, 14));
    expect(male).toEqual([0, 0, 0]);
  });

  // Half and half before; a daughter is sure without a father and 1/2 with one: 2/3.
  test('a daughter makes it likelier that there was none, a son rules it out', () => {
    const fathers = [
      { sire: 'sire', weight: 1 },
      { fatherless: true, weight: 1 },
    ] as const;
    const chances = (sex: GeneSex): readonly number[] | undefined => {
      const clutches = [{ id: 'c', dam: 'dam', fathers }];
      const family = pedigreeOf(['dam', 'sire', { id: 'x', sex, clutch: 'c' }], clutches);
      return carrierPosteriors(family, pedigreeModel(locus, HALF), evidence({})).fathers.get('c');
    };
    expect(chances('female')?.[1]).toBeCloseTo(2 / 3, 14);
    expect(chances('male')).toEqual([1, 0]);
  });
});

// S/+ × S/+ where two copies hatch with chance w: of hatched young w/(3 + w) are S/S.
test('what does not hatch is no observation', () => {
  const survival = { share: HALF, evidence: agreed };
  const model = pedigreeModel(
    alone(dominant('s', 'S'), { pairs: [{ alleles: ['s', 's'], survival, evidence: agreed }] }),
    HALF,
  );
  const family = pedigreeOf(['dam', 'sire', { id: 'x', sex: 'male', clutch: 'c' }], {
    c: ['dam', 'sire'],
  });
  const one = either(0, 1, 0);
  const found = carrierPosteriors(family, model, evidence({ dam: one, sire: one })).of.get('x');
  [2 / 7, 4 / 7, 1 / 7].forEach((chance, genotype) => {
    expect(found?.male[genotype]).toBeCloseTo(chance, 14);
  });
});
