import { toNumber, type Fraction } from '../fraction.ts';
import { geneModel } from '../gene-model.ts';
import { genotypeCount } from '../genotype.ts';
import { fatherlessChances } from '../inheritance.ts';
import type { Locus } from '../locus.ts';
import type { PedigreeModel } from './states.ts';

/** A locus of the catalogue, fatherless young included; for `apart` see `fatherlessChances`. */
export function pedigreeModel(locus: Locus, apart: Fraction): PedigreeModel {
  return {
    ...geneModel(locus),
    alone(dam) {
      const row = Array.from({ length: genotypeCount(locus, 'female') }, () => 0);
      for (const [genotype, chance] of fatherlessChances(locus, dam, apart)) {
        row[genotype] = toNumber(chance);
      }
      return row;
    },
  };
}
