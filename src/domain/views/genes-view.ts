import type { AnimalId } from '../core/ids.ts';
import { copiesIn, NEARLY, type Copies } from '../genes-book/copies.ts';
import { genesBook, type GenesBook } from '../genes-book/genes-book.ts';
import { locusOf } from '../genes/catalogue.ts';
import { nearestFraction } from '../genes/fraction.ts';
import type { Allele, Locus } from '../genes/locus.ts';
import { chanceWords } from '../genes/trait-text.ts';
import type { Picture } from '../picture/picture.ts';
import type { Animal } from '../state/animal.ts';
import { percent } from './chance-words.ts';
import { troubleLine, type TroubleLine } from './gene-findings.ts';
import { namedKin, type NamedKin } from './lineage-view.ts';
import { readingOf, type Reading } from './reading-view.ts';

/** One allele an animal has or may have. */
export interface GeneLine {
  readonly locus: string;
  readonly allele: string;
  readonly name: string;
  /** The chance to carry it by all records, 0 to 1, for the bar. */
  readonly chance: number;
  /** "75 %", "one copy", "two copies" */
  readonly now: string;
  /** "66 % (2/3)" */
  readonly before: string;
  /** What `before` is: what it hatched with, or what was stated of it. */
  readonly since: 'at hatching' | 'as stated';
  readonly hasMoved: boolean;
  /** Hidden in one copy and not settled: more young can tell. */
  readonly isOpen: boolean;
}

export interface GenesView {
  readonly self: NamedKin;
  readonly stated: string | undefined;
  readonly reading: Reading | undefined;
  readonly lines: readonly GeneLine[];
  readonly troubles: readonly TroubleLine[];
  /** Parents as stated that cannot be so, which are left out here. */
  readonly faults: readonly string[];
  /** Genes of the keeper's own that cannot be used, and why. */
  readonly leftOut: readonly { readonly name: string; readonly because: string }[];
  /** Clutches of hers on record, counted or not. */
  readonly clutches: number;
}

/** What an animal carries by the records; undefined when nothing is known of it. */
export function genesView(id: AnimalId, picture: Picture): GenesView | undefined {
  const animal = picture.animal(id);
  if (!animal) return undefined;
  const book = genesBook(picture);
  const troubles = book.loci.flatMap((locus) =>
    book
      .posteriors(locus)
      .troubles.filter(({ animals }) => animals.includes(id))
      .map((trouble) => troubleLine(trouble, locus, book, picture)),
  );
  return {
    self: namedKin(id, picture),
    stated: animal.traits,
    reading: animal.traits === undefined ? undefined : readingOf(animal.traits, book.catalogue),
    lines: book.loci.flatMap((locus) => linesAt(locusOf(book.catalogue, locus), animal, book)),
    troubles,
    faults: book.family.faults
      .filter(({ about }) => about.includes(id))
      .map(({ message }) => message),
    leftOut: book.leftOut,
    clutches: [animal.season, ...animal.pastSeasons].filter((each) => each?.laid).length,
  };
}

function linesAt(locus: Locus, animal: Animal, book: GenesBook): readonly GeneLine[] {
  const now = book.chances(animal.id, locus.id);
  if (!now) return [];
  const before = book.atHatching(animal.id, locus.id) ?? now;
  return locus.alleles.flatMap((allele, index) => {
    if (allele.id === '+') return [];
    const [has, had] = [copiesIn(now, locus, index), copiesIn(before, locus, index)];
    if (has.any < NEARLY && had.any < NEARLY) return [];
    return [
      {
        locus: locus.id,
        allele: allele.id,
        name: allele.name,
        chance: has.any,
        now: copiesWords(has, allele),
        before: birthWords(had, allele),
        since: book.family.ownBred.has(animal.id) ? 'at hatching' : 'as stated',
        hasMoved: Math.abs(has.any - had.any) > NEARLY || Math.abs(has.two - had.two) > NEARLY,
        isOpen: allele.mode === 'recessive' && has.any > 0 && has.any < 1,
      } as const,
    ];
  });
}

/** @example copiesWords({ any: 0.5, two: 0 }, clown) //=> '50 %' */
export function copiesWords({ any, two }: Copies, { mode }: Pick<Allele, 'mode'>): string {
  if (any === 0) return 'no copy';
  if (two === 1) return 'two copies';
  if (any < 1) return two > 0 ? `${percent(any)}, two copies ${percent(two)}` : percent(any);
  if (two > 0) return `one copy sure, two ${percent(two)}`;
  return mode === 'recessive' ? 'one copy, hidden' : 'one copy';
}

/** In the trade's words, with the share they stand for: "66 % (2/3)". */
export function birthWords(had: Copies, allele: Allele): string {
  if (had.any === 0 || had.any === 1 || had.two > 0) return copiesWords(had, allele);
  const share = nearestFraction(had.any);
  const words = share.d <= 64n ? chanceWords(share) : undefined;
  if (words === undefined || words.includes('/')) return percent(had.any);
  return `${words.replace('%', ' %')} (${share.n}/${share.d})`;
}
