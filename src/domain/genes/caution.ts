import type { Evidence } from './locus.ts';
import type { Want } from './target.ts';

/**
 * How much a caution weighs. grave: young that cannot live, or a mother at risk: the pair is not
 * suggested. serious: young that may be impaired. worth knowing: less, or less sure.
 */
export type Weight = 'grave' | 'serious' | 'worth knowing';

/** One thing to know before two animals are put together. */
export interface Caution {
  readonly id: string;
  /** Whom it concerns: young that may come of it, or the mother herself. */
  readonly concerns: 'young' | 'dam';
  /** What that animal must carry or look like, all of it. */
  readonly wants: readonly Want[];
  readonly weight: Weight;
  readonly message: string;
  readonly evidence: Evidence;
}
