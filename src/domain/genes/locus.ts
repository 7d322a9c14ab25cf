import type { Source } from '../sources.ts';
import type { Fraction } from './fraction.ts';

/** Pythons are XX and XY: a daughter has two X, a son one. */
export type GeneSex = 'female' | 'male';
export type BySex<Value> = Readonly<Record<GeneSex, Value>>;

/** How well a statement is known. What is disputed is shown as such and never asserted. */
export type Grade = 'published' | 'trade consensus' | 'disputed';

export interface Evidence {
  readonly grade: Grade;
  readonly sources: readonly Source[];
}

/**
 * What an allele does beside the wild type.
 * recessive: one copy is hidden. incomplete dominant: one copy shows, two look different (the trade
 * says "co-dom"). dominant: one copy shows, two look the same or were never told apart.
 */
export type Mode = 'recessive' | 'incomplete dominant' | 'dominant';

/** Where a genotype is known not to hatch, or to hatch less, and how well that is known. */
export interface Survival {
  /** Relative to the fittest: 0 was never seen to live, 1 is full. */
  readonly share: Fraction;
  readonly evidence: Evidence;
}

export interface Allele {
  /** Never changes: records hold it. Wild type is `+`. */
  readonly id: string;
  /** What one copy is called where it shows, and the trait itself where it does not. */
  readonly name: string;
  readonly aliases: readonly string[];
  readonly mode: Mode;
  readonly evidence: Evidence;
  /** What is worth knowing of it, as a sentence. */
  readonly remark?: string;
}

/** Two alleles that meet, where that pair has a name, a look or a fate of its own. Unordered. */
export interface Pair {
  readonly alleles: readonly [string, string];
  readonly name?: string;
  readonly aliases?: readonly string[];
  /** What it looks like, in a few words. */
  readonly appearance?: string;
  readonly survival?: Survival;
  readonly evidence: Evidence;
}

export type Linkage =
  | { readonly kind: 'autosomal' }
  /** On the X and on the Y, between which a male's copies cross over at this rate. */
  | { readonly kind: 'sex-linked'; readonly recombination: Fraction; readonly evidence: Evidence };

/** A place where one of several alleles lies. An animal carries two, so never three of them. */
export interface Locus {
  /** Never changes: records hold it. */
  readonly id: string;
  readonly name: string;
  readonly linkage: Linkage;
  /** The wild type first; a later version only adds at the end. */
  readonly alleles: readonly Allele[];
  readonly pairs: readonly Pair[];
  /** That these alleles share a locus, and what it is. */
  readonly evidence: Evidence;
  readonly gene?: string;
}
