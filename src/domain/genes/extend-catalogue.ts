import { ok, type Result } from '../core/result.ts';
import type { Catalogue } from './catalogue.ts';
import { catalogueFaults, type CatalogueFault } from './catalogue-faults.ts';
import type { Caution } from './caution.ts';
import type { Fraction } from './fraction.ts';
import type { Allele, Locus, Pair } from './locus.ts';

/** What a keeper adds to a locus of the catalogue, or knows better. */
export interface LocusChange {
  readonly locus: string;
  readonly alleles?: readonly Allele[];
  /** A pair that is there already is replaced. */
  readonly pairs?: readonly Pair[];
  /** Of a sex-linked locus. */
  readonly recombination?: Fraction;
}

export interface OwnGenes {
  readonly loci?: readonly Locus[];
  readonly changes?: readonly LocusChange[];
  readonly cautions?: readonly Caution[];
}

/**
 * A catalogue with a keeper's own genes in it, the base unchanged. Genotype numbers of the base stay,
 * as alleles are added at the end. Refused with every fault found.
 */
export function extendCatalogue(
  base: Catalogue,
  { loci = [], changes = [], cautions = [] }: OwnGenes,
): Result<Catalogue, readonly CatalogueFault[]> {
  const lost = changes
    .filter(({ locus }) => !base.loci.some(({ id }) => id === locus))
    .map(({ locus }) => ({ where: locus, message: 'There is no such locus to change.' }));
  const misplaced = base.loci
    .filter(({ linkage }) => linkage.kind === 'autosomal')
    .filter(({ id }) => changes.some((each) => each.locus === id && each.recombination))
    .map(({ id }) => ({ where: id, message: 'Only a sex-linked locus has a recombination rate.' }));
  const extended: Catalogue = {
    ...base,
    loci: [...base.loci.map((locus) => changes.reduce(changed, locus)), ...loci],
    cautions: [...base.cautions, ...cautions],
  };
  const problem = [...lost, ...misplaced, ...catalogueFaults(extended)];
  return problem.length === 0 ? ok(extended) : { ok: false, problem };
}

function changed(locus: Locus, change: LocusChange): Locus {
  if (change.locus !== locus.id) return locus;
  const { alleles = [], pairs = [], recombination } = change;
  const isReplaced = ({ alleles: [a, b] }: Pair) =>
    pairs.some(({ alleles: [x, y] }) => (x === a && y === b) || (x === b && y === a));
  const { linkage } = locus;
  return {
    ...locus,
    alleles: [...locus.alleles, ...alleles],
    pairs: [...locus.pairs.filter((each) => !isReplaced(each)), ...pairs],
    linkage:
      recombination && linkage.kind === 'sex-linked' ? { ...linkage, recombination } : linkage,
  };
}
