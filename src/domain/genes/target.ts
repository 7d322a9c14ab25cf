import { alleleIndex, genotypeOf } from './genotype.ts';
import type { GeneSex, Locus } from './locus.ts';
import { lookOf } from './look.ts';

/** What one locus of a wanted animal must be: a look, or so many copies of an allele at least. */
export type Want =
  | { readonly locus: string; readonly look: string }
  | { readonly locus: string; readonly carries: string; readonly copies?: 1 | 2 };

/** An animal that meets every want, and is of the sex if one is named. */
export interface Target {
  readonly sex?: GeneSex;
  readonly wants: readonly Want[];
}

/** Throws a RangeError for an allele the locus does not have. A look it does not have is never met. */
export function meets(want: Want, locus: Locus, sex: GeneSex, genotype: number): boolean {
  if ('look' in want) return lookOf(locus, sex, genotype).name === want.look;
  const index = alleleIndex(locus, want.carries);
  if (index < 0) throw new RangeError(`${locus.name} has no allele ${want.carries}.`);
  const copies = genotypeOf(locus, sex, genotype).filter((allele) => allele === index).length;
  return copies >= (want.copies ?? 1);
}
