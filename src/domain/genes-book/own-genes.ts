import type { EventOf } from '../events/event.ts';
import { ballPython } from '../genes/catalogue/ball-python.ts';
import type { Catalogue } from '../genes/catalogue.ts';
import { extendCatalogue, type OwnGenes } from '../genes/extend-catalogue.ts';
import { ZERO } from '../genes/fraction.ts';
import type { Allele, Evidence, Locus, Pair } from '../genes/locus.ts';

type OwnGene = Pick<
  EventOf<'gene-made'>,
  'locus' | 'allele' | 'name' | 'aliases' | 'mode' | 'two' | 'twoNeverHatch' | 'remark'
>;

/** A gene of the keeper's own that cannot be used, and why; it stays on record. */
export interface LeftOut {
  readonly name: string;
  readonly because: string;
}

const ownWord: Evidence = {
  grade: 'disputed',
  sources: [{ kind: 'assumption', cite: 'Your own word, written into your genes.' }],
};

/** The shipped catalogue with the keeper's own genes: each is taken in, or left out with the reason. */
export function catalogueWith(genes: readonly OwnGene[]): {
  readonly catalogue: Catalogue;
  readonly leftOut: readonly LeftOut[];
} {
  let catalogue = ballPython;
  const leftOut: LeftOut[] = [];
  for (const gene of genes) {
    const extended = extendCatalogue(catalogue, ownGenes(gene, catalogue));
    if (extended.ok) catalogue = extended.value;
    else {
      const because = extended.problem.map(({ message }) => message);
      leftOut.push({ name: gene.name, because: [...new Set(because)].join(' ') });
    }
  }
  return { catalogue, leftOut };
}

/** One more allele of a locus that is there, else a locus of its own. */
function ownGenes(gene: OwnGene, { loci }: Catalogue): OwnGenes {
  const { locus, allele: id, name, aliases, mode, remark } = gene;
  const allele: Allele = {
    id,
    name,
    aliases,
    mode,
    evidence: ownWord,
    ...(remark === undefined ? {} : { remark }),
  };
  const pairs = pairOf(gene);
  if (loci.some((each) => each.id === locus)) {
    return { changes: [{ locus, alleles: [allele], pairs }] };
  }
  const wild: Allele = { ...allele, id: '+', name: 'Normal', aliases: [], mode: 'recessive' };
  const made: Locus = {
    id: locus,
    name,
    linkage: { kind: 'autosomal' },
    alleles: [wild, allele],
    pairs,
    evidence: ownWord,
  };
  return { loci: [made] };
}

function pairOf({ allele, two, twoNeverHatch = false }: OwnGene): readonly Pair[] {
  if (two === undefined && !twoNeverHatch) return [];
  return [
    {
      alleles: [allele, allele],
      evidence: ownWord,
      ...(two === undefined ? {} : { name: two }),
      ...(twoNeverHatch ? { survival: { share: ZERO, evidence: ownWord } } : {}),
    },
  ];
}
