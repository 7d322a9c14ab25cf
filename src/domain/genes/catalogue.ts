import type { Caution } from './caution.ts';
import type { Locus } from './locus.ts';

/** Everything the engine knows of genes: an argument of all its functions, so a keeper can add. */
export interface Catalogue {
  readonly loci: readonly Locus[];
  readonly cautions: readonly Caution[];
  /** Words of the trade that name no one genotype, and what to write instead. */
  readonly unclear: readonly UnclearName[];
}

export interface UnclearName {
  readonly names: readonly string[];
  readonly message: string;
}

/** Throws a RangeError for a locus the catalogue does not have. */
export function locusOf(catalogue: Catalogue, id: string): Locus {
  const locus = catalogue.loci.find((each) => each.id === id);
  if (!locus) throw new RangeError(`The catalogue has no locus ${id}.`);
  return locus;
}
