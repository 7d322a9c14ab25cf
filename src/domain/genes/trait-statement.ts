import type { Fraction } from './fraction.ts';
import type { Locus } from './locus.ts';

/** A stretch of the original text. */
export interface Place {
  readonly at: number;
  readonly length: number;
}

/** Something said of a place in the text. */
export interface Remark extends Place {
  readonly message: string;
}

/** What one phrase says of one locus. Alleles by their place in the locus's list. */
export type Claim =
  /** A visible trait without further words; of a recessive, both copies or half of a pair. */
  | { readonly kind: 'shows'; readonly allele: number }
  | { readonly kind: 'carries'; readonly allele: number }
  | { readonly kind: 'pair'; readonly alleles: readonly [number, number] }
  | { readonly kind: 'may carry'; readonly allele: number; readonly chance: Fraction }
  | { readonly kind: 'may have two'; readonly allele: number; readonly chance: Fraction }
  /** Of a male: the chance that his one copy lies on his Y. */
  | { readonly kind: 'on Y'; readonly chance: Fraction };

export interface Statement extends Place {
  readonly locus: Locus;
  readonly claim: Claim;
}
