/** One locus as inheritance sees it: genotypes are numbered, for each sex. */
export interface GeneModel {
  /** How many genotypes a female and a male can have. */
  readonly genotypes: { readonly female: number; readonly male: number };
  /** Chance of each genotype of a daughter or a son at conception, by the parents' genotypes; sums to 1. */
  child(sex: 'female' | 'male', dam: number, sire: number): readonly number[];
  /** Chance to hatch, relative to the fittest (1 = full, 0 = never seen hatched). */
  survival(sex: 'female' | 'male', genotype: number): number;
}
