import type { GeneSex, Locus } from './locus.ts';

/**
 * Two alleles by their place in the locus's list. Where both sexes are alike they are sorted; of a
 * male's sex-linked locus the first lies on his X, the second on his Y.
 */
export type Genotype = readonly [number, number];

/** A male's X and Y differ, so which allele lies where is part of his genotype. */
export const isOrdered = (locus: Locus, sex: GeneSex): boolean =>
  locus.linkage.kind === 'sex-linked' && sex === 'male';

export function genotypeCount(locus: Locus, sex: GeneSex): number {
  const k = locus.alleles.length;
  return isOrdered(locus, sex) ? k * k : (k * (k + 1)) / 2;
}

/** The genotype's number. Numbers of old alleles stay when alleles are added at the end of the list. */
export function numberOf(locus: Locus, sex: GeneSex, [a, b]: Genotype): number {
  const [low, high] = a < b ? [a, b] : [b, a];
  if (!isOrdered(locus, sex)) return (high * (high + 1)) / 2 + low;
  return a < b ? b * b + a : a * a + a + b;
}

/** Throws a RangeError for a number the locus does not have. */
export function genotypeOf(locus: Locus, sex: GeneSex, number: number): Genotype {
  if (!Number.isInteger(number) || number < 0 || number >= genotypeCount(locus, sex)) {
    throw new RangeError(`${locus.name} has no genotype ${number} in a ${sex}.`);
  }
  if (!isOrdered(locus, sex)) {
    const high = Math.floor((Math.sqrt(8 * number + 1) - 1) / 2);
    return [number - (high * (high + 1)) / 2, high];
  }
  const high = Math.floor(Math.sqrt(number));
  const rest = number - high * high;
  return rest < high ? [rest, high] : [high, rest - high];
}

export const WILD = 0;

export const alleleIndex = (locus: Locus, id: string): number =>
  locus.alleles.findIndex((allele) => allele.id === id);
