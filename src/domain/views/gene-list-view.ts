import { genesBook } from '../genes-book/genes-book.ts';
import type { EventOf } from '../events/event.ts';
import type { Picture } from '../picture/picture.ts';

export interface LocusChoice {
  readonly id: string;
  readonly name: string;
  readonly alleles: readonly { readonly id: string; readonly name: string }[];
}

export interface GeneListView {
  /** By name, the keeper's own among them. */
  readonly loci: readonly LocusChoice[];
  readonly own: readonly Pick<
    EventOf<'gene-made'>,
    'locus' | 'allele' | 'name' | 'aliases' | 'mode' | 'two' | 'twoNeverHatch' | 'remark'
  >[];
  readonly leftOut: readonly { readonly name: string; readonly because: string }[];
}

/** Every gene that can be named, and which of them the keeper made. */
export function geneListView(picture: Picture): GeneListView {
  const { catalogue, leftOut } = genesBook(picture);
  return {
    loci: catalogue.loci
      .map(({ id, name, alleles }) => ({
        id,
        name,
        alleles: alleles
          .filter((allele) => allele.id !== '+')
          .map(({ id: of, name: called }) => ({ id: of, name: called })),
      }))
      .toSorted((a, b) => (a.name < b.name ? -1 : 1)),
    own: picture.house()?.genes ?? [],
    leftOut,
  };
}
