import { copiesIn, type Copies } from '../../../src/domain/genes-book/copies.ts';
import { genesBook, type GenesBook } from '../../../src/domain/genes-book/genes-book.ts';
import { locusOf } from '../../../src/domain/genes/catalogue.ts';
import { alleleIndex } from '../../../src/domain/genes/genotype.ts';
import type { RackEvent } from '../../../src/domain/events/event.ts';
import { anEvent, aPicture, day, nightsAgo } from '../../make.ts';
import { animalId, clutchId } from '../../make-ids.ts';

/** A snake of known sex, with its genes as stated; without any where the text is empty. */
export const snake = (
  n: number,
  sex: 'female' | 'male',
  traits = '',
  hatched?: string,
): RackEvent =>
  anEvent('arrived', {
    animal: animalId(n),
    name: `snake ${n}`,
    sex,
    at: nightsAgo(1_000),
    ...(traits === '' ? {} : { traits }),
    ...(hatched === undefined ? {} : { hatchedDay: day(hatched) }),
  });

export const bredFrom = (n: number, dam: number | undefined, ...sires: number[]): RackEvent =>
  anEvent('parents-stated', {
    animal: animalId(n),
    ...(dam === undefined ? {} : { dam: animalId(dam) }),
    sires: sires.map(animalId),
  });

/** Hatched young of a dam that are counted by how they look. */
export const counted = (
  clutch: number,
  dam: number,
  sires: readonly number[],
  looks: Readonly<Record<string, number>>,
  at = nightsAgo(30),
): RackEvent =>
  anEvent('young-counted', {
    animal: animalId(dam),
    clutch: clutchId(clutch),
    sires: sires.map((sire) => ({ male: animalId(sire) })),
    counts: Object.entries(looks).map(([words, count]) => ({ looks: words, count })),
    at,
  });

export const bookOf = (events: readonly RackEvent[]): GenesBook => genesBook(aPicture(events));

/** How likely the nth snake has an allele of the locus of the same name; by all records. */
export function copies(book: GenesBook, n: number, locus: string): Copies {
  const chances = book.chances(animalId(n), locus);
  if (!chances) throw new Error(`Nothing is told of snake ${n} at ${locus}.`);
  const at = locusOf(book.catalogue, locus);
  return copiesIn(chances, at, alleleIndex(at, locus));
}
