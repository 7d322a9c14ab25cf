import type { ByGenotype } from './states.ts';

/** Something seen. Likelihood: how likely just this would be seen, for each genotype; any scale. */
export type Finding =
  /** How an animal looks: for a look of the locus 1 where a genotype has it, else 0. */
  | {
      readonly kind: 'look' | 'test';
      readonly id: string;
      readonly animal: string;
      readonly likelihood: ByGenotype;
    }
  /** Young of a clutch that are only counted. An animal of the pedigree is not counted here again. */
  | {
      readonly kind: 'young';
      readonly id: string;
      readonly clutch: string;
      readonly young: readonly CountedYoung[];
    };

/** So many hatched young that look alike. What did not hatch, or was not looked at, is no young here. */
export interface CountedYoung {
  readonly count: number;
  readonly likelihood: ByGenotype;
}

/** What is known at one locus. */
export interface Evidence {
  /**
   * Of animals without parents in the pedigree, by their id: how likely each genotype is, for each
   * sex on its own scale. Those not named are taken for wild type, genotype 0.
   */
  readonly priors: ReadonlyMap<string, ByGenotype>;
  readonly findings: readonly Finding[];
}

/**
 * What a test says of each genotype. `finds` holds 1 where the genotype carries what is tested for,
 * else 0. sensitivity: how often it is found in those that carry it; specificity: how often not in
 * those that do not.
 */
export function testLikelihood(
  result: 'found' | 'not found',
  finds: ByGenotype,
  { sensitivity, specificity }: { readonly sensitivity: number; readonly specificity: number },
): ByGenotype {
  const likely = (carries: number): number => {
    const found = carries * sensitivity + (1 - carries) * (1 - specificity);
    return result === 'found' ? found : 1 - found;
  };
  return { female: finds.female.map(likely), male: finds.male.map(likely) };
}
