import type { Catalogue } from './catalogue.ts';
import { alleleIndex } from './genotype.ts';
import type { Locus } from './locus.ts';
import { spoken } from './trait-text.ts';

/** What a name stands for. */
export type Meaning =
  | { readonly kind: 'allele'; readonly locus: Locus; readonly allele: number }
  | { readonly kind: 'pair'; readonly locus: Locus; readonly alleles: readonly [number, number] }
  | { readonly kind: 'unclear'; readonly message: string };

export interface Dictionary {
  /** By the name as spoken. */
  readonly meanings: ReadonlyMap<string, Meaning>;
  /** Names as written in the catalogue, by the name as spoken. */
  readonly names: ReadonlyMap<string, string>;
  readonly longest: number;
}

interface Entry {
  readonly name: string;
  readonly meaning: Meaning;
}

/** Every name and alias of a catalogue; of two that sound alike the first counts. */
export function dictionaryOf(catalogue: Catalogue): Dictionary {
  const known = made.get(catalogue);
  if (known) return known;
  const meanings = new Map<string, Meaning>();
  const names = new Map<string, string>();
  const unclear = catalogue.unclear.flatMap(({ names: all, message }) =>
    all.map((each): Entry => ({ name: each, meaning: { kind: 'unclear', message } })),
  );
  for (const { name, meaning } of [...catalogue.loci.flatMap(namesOf), ...unclear]) {
    const sound = spoken(name);
    if (!meanings.has(sound)) {
      meanings.set(sound, meaning);
      names.set(sound, name);
    }
  }
  const longest = Math.max(0, ...[...names.keys()].map((each) => each.split(' ').length));
  const dictionary = { meanings, names, longest };
  made.set(catalogue, dictionary);
  return dictionary;
}
const made = new WeakMap<Catalogue, Dictionary>();

/** The names by which a locus's alleles and pairs go. */
export function namesOf(locus: Locus): readonly Entry[] {
  const alleles = locus.alleles.flatMap(({ id, name, aliases }, allele): readonly Entry[] =>
    id === '+'
      ? []
      : [name, ...aliases].map((each) => ({
          name: each,
          meaning: { kind: 'allele', locus, allele },
        })),
  );
  const pairs = locus.pairs.flatMap(({ alleles: [first, second], name, aliases = [] }) => {
    const both = [alleleIndex(locus, first), alleleIndex(locus, second)] as const;
    return [...(name === undefined ? [] : [name]), ...aliases].map((each): Entry => ({
      name: each,
      meaning: { kind: 'pair', locus, alleles: both },
    }));
  });
  return [...alleles, ...pairs];
}
