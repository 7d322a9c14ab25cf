import { locusOf, type Catalogue } from './catalogue.ts';
import type { Chances } from './chances.ts';
import type { BySex, GeneSex } from './locus.ts';
import { settleLocus } from './settle-locus.ts';
import { readStatements, type UnknownWords } from './trait-grammar.ts';
import type { Remark } from './trait-statement.ts';
import { LONGEST_TEXT } from './trait-text.ts';

/** What a text says of an animal's genes. */
export interface TraitReading {
  /** By locus, for either sex; they differ only where a gene is sex-linked. Else wild type. */
  readonly loci: ReadonlyMap<string, BySex<Chances>>;
  /** Taken as said, with something to know about it. */
  readonly notes: readonly Remark[];
  /** Cannot be so. The locus is left out: stated, not modelled. */
  readonly contradictions: readonly Remark[];
  /** Stated, not modelled, with the nearest names known. */
  readonly unknown: readonly UnknownWords[];
}

/**
 * Reads what keepers write: "Pastel, 100% het Clown, 66% het Pied, super Enchi". Never throws.
 * With the sex, what cannot be said of that sex is a contradiction.
 */
export function readTraits(text: string, catalogue: Catalogue, sex?: GeneSex): TraitReading {
  const { statements, notes, contradictions, unknown, normal } = readStatements(text, catalogue);
  const loci = new Map<string, BySex<Chances>>();
  const said = [...notes];
  const against = [...contradictions];
  if (text.length > LONGEST_TEXT) {
    const message = `Only the first ${LONGEST_TEXT} letters are read.`;
    against.push({ at: LONGEST_TEXT, length: text.length - LONGEST_TEXT, message });
  }
  for (const id of new Set(statements.map(({ locus }) => locus.id))) {
    const locus = locusOf(catalogue, id);
    const of = statements.filter((each) => each.locus.id === id);
    const settled = settleLocus(locus, of, sex);
    said.push(...settled.notes);
    against.push(...settled.contradictions);
    if (settled.chances) loci.set(id, settled.chances);
  }
  const shows = statements.find(({ claim }) => claim.kind === 'shows' || claim.kind === 'pair');
  if (normal && shows) {
    against.push({ ...normal, message: 'A normal shows no trait, but one is named.' });
  }
  return {
    loci,
    notes: said.toSorted(byPlace),
    contradictions: against.toSorted(byPlace),
    unknown,
  };
}

const byPlace = (a: Remark, b: Remark): number => a.at - b.at;

/** A reading as one sex's genotypes, for a parent in a pairing. */
export const genotypesOf = (reading: TraitReading, sex: GeneSex): ReadonlyMap<string, Chances> =>
  new Map([...reading.loci].map(([id, chances]) => [id, chances[sex]]));
