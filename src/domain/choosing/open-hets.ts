import type { AnimalId } from '../core/ids.ts';
import type { GenesBook } from '../genes-book/genes-book.ts';
import { locusOf } from '../genes/catalogue.ts';
import { genotypeOf } from '../genes/genotype.ts';
import type { GeneSex, Locus } from '../genes/locus.ts';
import type { Picture } from '../picture/picture.ts';

export interface OpenHet {
  readonly locus: Locus;
  /** By its id. */
  readonly allele: string;
  /** The chance to carry it, by all records. */
  readonly chance: number;
}

/** What rounding leaves of a certainty. */
const NEARLY = 1e-6;

/** The hidden genes that an animal may carry and may not. */
export function openHets(animal: AnimalId, picture: Picture, book: GenesBook): readonly OpenHet[] {
  return book.loci
    .map((id) => locusOf(book.catalogue, id))
    .flatMap((locus) =>
      locus.alleles
        .filter(({ id, mode }) => id !== '+' && mode === 'recessive')
        .map(({ id }) => ({
          locus,
          allele: id,
          chance: carryingChance(animal, locus, id, picture, book),
        })),
    )
    .filter(({ chance }) => chance > NEARLY && chance < 1 - NEARLY);
}

/** The chance that an animal carries an allele at all; 0 where its sex is not known. */
export function carryingChance(
  animal: AnimalId,
  locus: Locus,
  allele: string,
  picture: Picture,
  book: GenesBook,
): number {
  const sex = picture.animal(animal)?.sex;
  if (sex !== 'female' && sex !== 'male') return 0;
  const chances = book.chances(animal, locus.id)?.[sex as GeneSex] ?? [];
  const all = chances.reduce((total, chance) => total + chance, 0);
  const carrying = chances.reduce((total, chance, genotype) => {
    const alleles = genotypeOf(locus, sex, genotype).map((index) => locus.alleles[index]?.id);
    return alleles.includes(allele) ? total + chance : total;
  }, 0);
  return all > 0 ? carrying / all : 0;
}
