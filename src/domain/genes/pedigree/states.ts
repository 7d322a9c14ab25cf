import type { BySex } from '../locus.ts';
import type { GeneModel } from '../gene-model.ts';

/** A locus, and what a daughter is where no male had a part in her (see `fatherlessChances`). */
export interface PedigreeModel extends GeneModel {
  /** Chance of each female genotype, by the dam's; sums to 1. Needed where a clutch may be fatherless. */
  alone?(dam: number): readonly number[];
}

/** One number for each genotype of each sex. As chances, all of both sexes sum to 1. */
export type ByGenotype = BySex<readonly number[]>;

/**
 * What a hatched animal can be at the locus, in one list: female genotypes, then male ones. The sex
 * is part of it, so that an animal of unknown sex is one variable.
 */
export interface States {
  readonly females: number;
  readonly count: number;
  /**
   * Chance of each state of a hatched young, by genotypes; 0 throughout where none can hatch. Those
   * that do not hatch are no observations. Without a sire: `alone`.
   */
  hatched(dam: number, sire: number | undefined): Float64Array;
}

export function statesOf(model: PedigreeModel): States {
  const { female, male } = model.genotypes;
  const known = new Map<number, Float64Array>();
  const atHatching = (dam: number, sire: number | undefined): Float64Array => {
    const row = new Float64Array(female + male);
    if (sire === undefined && !model.alone) {
      throw new RangeError('The model does not say what fatherless young are.');
    }
    const daughters = sire === undefined ? model.alone?.(dam) : model.child('female', dam, sire);
    const sons = sire === undefined ? [] : model.child('male', dam, sire);
    daughters?.forEach((chance, g) => (row[g] = chance * model.survival('female', g)));
    sons.forEach((chance, g) => (row[female + g] = chance * model.survival('male', g)));
    const all = row.reduce((sum, chance) => sum + chance, 0);
    return all > 0 ? row.map((chance) => chance / all) : row;
  };
  return {
    females: female,
    count: female + male,
    hatched(dam, sire) {
      const key = dam * (male + 1) + (sire ?? male);
      const row = known.get(key) ?? atHatching(dam, sire);
      known.set(key, row);
      return row;
    },
  };
}

/** Throws a RangeError where a number is missing, too many, or below 0. */
export function flat(states: States, { female, male }: ByGenotype, what: string): Float64Array {
  const both = Float64Array.from([...female, ...male]);
  if (female.length !== states.females || both.length !== states.count) {
    throw new RangeError(`${what} does not fit the genotypes of the locus.`);
  }
  if (both.some((value) => !(value >= 0 && value < Infinity))) {
    throw new RangeError(`${what} holds what is neither a chance nor a likelihood.`);
  }
  return both;
}

export const bySex = (states: States, values: readonly number[]): ByGenotype => ({
  female: values.slice(0, states.females),
  male: values.slice(states.females),
});
