import { toNumber } from './fraction.ts';
import { genotypeCount } from './genotype.ts';
import { childChances, everyGenotype, survivalOf } from './inheritance.ts';
import type { GeneSex, Locus } from './locus.ts';

/** One locus as inheritance sees it: genotypes are numbered, for each sex. */
export interface GeneModel {
  /** How many genotypes a female and a male can have. */
  readonly genotypes: { readonly female: number; readonly male: number };
  /** Chance of each genotype of a daughter or a son at conception, by the parents' genotypes; sums to 1. */
  child(sex: 'female' | 'male', dam: number, sire: number): readonly number[];
  /** Chance to hatch, relative to the fittest (1 = full, 0 = never seen hatched). */
  survival(sex: 'female' | 'male', genotype: number): number;
}

/**
 * A locus of the catalogue, numbered as in `genotype.ts`: the wild type is genotype 0 of both sexes.
 * Rows are worked out once and handed out again. Throws a RangeError for a genotype there is not.
 */
export function geneModel(locus: Locus): GeneModel {
  const genotypes = { female: genotypeCount(locus, 'female'), male: genotypeCount(locus, 'male') };
  const survival = { female: survivals(locus, 'female'), male: survivals(locus, 'male') };
  const rows = { female: new Map<number, number[]>(), male: new Map<number, number[]>() };
  return {
    genotypes,
    child(sex, dam, sire) {
      const key = dam * genotypes.male + sire;
      const known = sire < genotypes.male ? rows[sex].get(key) : undefined;
      if (known) return known;
      const row = Array.from({ length: genotypes[sex] }, () => 0);
      for (const [genotype, chance] of childChances(locus, sex, dam, sire)) {
        row[genotype] = toNumber(chance);
      }
      rows[sex].set(key, row);
      return row;
    },
    survival: (sex, genotype) =>
      survival[sex][genotype] ?? toNumber(survivalOf(locus, sex, genotype)),
  };
}

const survivals = (locus: Locus, sex: GeneSex): readonly number[] =>
  everyGenotype(locus, sex).map((genotype) => toNumber(survivalOf(locus, sex, genotype)));
