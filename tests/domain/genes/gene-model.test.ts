import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ballPython } from '../../../src/domain/genes/catalogue/ball-python.ts';
import { geneModel } from '../../../src/domain/genes/gene-model.ts';
import { genotypeCount, genotypeOf, numberOf } from '../../../src/domain/genes/genotype.ts';
import { locusNamed } from './pairs.ts';

const anyLocus = fc.constantFrom(...ballPython.loci);
const sexes = ['female', 'male'] as const;

describe('genotype numbers', () => {
  test('go there and back, the wild type being 0', () => {
    for (const locus of ballPython.loci) {
      for (const sex of sexes) {
        const all = Array.from({ length: genotypeCount(locus, sex) }, (_, n) => n);
        expect(all.map((n) => numberOf(locus, sex, genotypeOf(locus, sex, n)))).toEqual(all);
        expect(genotypeOf(locus, sex, 0)).toEqual([0, 0]);
      }
    }
  });

  test('k alleles make k(k + 1)/2 pairs, and k squared on an X and a Y', () => {
    // Eleven alleles with the wild type: 66 pairs.
    expect(geneModel(locusNamed('bel')).genotypes).toEqual({ female: 66, male: 66 });
    expect(geneModel(locusNamed('banana')).genotypes).toEqual({ female: 3, male: 4 });
  });
});

describe('a locus as inheritance sees it', () => {
  test('rows of chances sum to 1', () => {
    fc.assert(
      fc.property(anyLocus, fc.nat(), fc.nat(), (locus, a, b) => {
        const model = geneModel(locus);
        const [dam, sire] = [a % model.genotypes.female, b % model.genotypes.male];
        for (const sex of sexes) {
          const row = model.child(sex, dam, sire);
          expect(row).toHaveLength(model.genotypes[sex]);
          expect(row.reduce((sum, chance) => sum + chance, 0)).toBeCloseTo(1, 12);
          expect(model.child(sex, dam, sire)).toBe(row);
        }
      }),
    );
  });

  test('het x het is 1/4, 1/2, 1/4 (Mendel 1866)', () => {
    expect(geneModel(locusNamed('pied')).child('female', 1, 1)).toEqual([0.25, 0.5, 0.25]);
  });

  test('survival is 0 where two copies were never seen', () => {
    const model = geneModel(locusNamed('champagne'));
    expect([0, 1, 2].map((genotype) => model.survival('male', genotype))).toEqual([1, 1, 0]);
  });

  test('a genotype there is not is refused', () => {
    const model = geneModel(locusNamed('pied'));
    model.child('female', 1, 0);
    expect(() => model.child('female', 0, 3)).toThrow(RangeError);
    expect(() => model.child('female', -1, 0)).toThrow(RangeError);
    expect(() => model.survival('male', 3)).toThrow(RangeError);
  });
});
