import { genotypeOf } from '../genes/genotype.ts';
import type { Locus } from '../genes/locus.ts';
import type { ByGenotype } from '../genes/pedigree/states.ts';

/** How likely an animal has an allele. */
export interface Copies {
  /** At least one copy. */
  readonly any: number;
  readonly two: number;
}

/** What rounding leaves of a certainty. */
export const NEARLY = 1e-6;

/** Of chances of either sex, which together need not sum to 1: an animal of known sex has one. */
export function copiesIn({ female, male }: ByGenotype, locus: Locus, allele: number): Copies {
  let [all, any, two] = [0, 0, 0];
  for (const [sex, chances] of [
    ['female', female],
    ['male', male],
  ] as const) {
    chances.forEach((chance, number) => {
      const has = genotypeOf(locus, sex, number).filter((each) => each === allele).length;
      all += chance;
      if (has > 0) any += chance;
      if (has === 2) two += chance;
    });
  }
  const share = (part: number): number => {
    const chance = all > 0 ? part / all : 0;
    if (chance < NEARLY) return 0;
    return chance > 1 - NEARLY ? 1 : chance;
  };
  return { any: share(any), two: share(two) };
}
