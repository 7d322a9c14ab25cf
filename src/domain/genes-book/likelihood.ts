import type { Locus, GeneSex } from '../genes/locus.ts';
import { alleleIndex, genotypeCount, genotypeOf, WILD } from '../genes/genotype.ts';
import { lookOf } from '../genes/look.ts';
import { toNumber } from '../genes/fraction.ts';
import type { ByGenotype } from '../genes/pedigree/states.ts';
import type { TraitReading } from '../genes/read-traits.ts';

// What words say of each genotype of one locus.

const each = (locus: Locus, of: (sex: GeneSex, genotype: number) => number): ByGenotype => ({
  female: Array.from({ length: genotypeCount(locus, 'female') }, (_, g) => of('female', g)),
  male: Array.from({ length: genotypeCount(locus, 'male') }, (_, g) => of('male', g)),
});

export const anything = (locus: Locus): ByGenotype => each(locus, () => 1);

/** A founder's chances, as its seller or its keeper states them. */
export function statedPrior(reading: TraitReading, locus: Locus): ByGenotype | undefined {
  const chances = reading.loci.get(locus.id);
  return (
    chances &&
    each(locus, (sex, genotype) => {
      const chance = chances[sex].get(genotype);
      return chance ? toNumber(chance) : 0;
    })
  );
}

/** One in a billion: so rare that it is wild type, unless its young prove otherwise. */
const HARDLY_EVER = 1e-9;

/** Of whom nobody said anything: wild type, but open to be proven wrong by an allele that is about. */
export const nothingSaid = (locus: Locus, about: ReadonlySet<number>): ByGenotype =>
  each(locus, (sex, genotype) =>
    genotypeOf(locus, sex, genotype).reduce((chance, allele) => {
      if (allele === WILD) return chance;
      return about.has(allele) ? chance * HARDLY_EVER : 0;
    }, 1),
  );

/** Words that are not all understood may hide any trait, so what they leave out is not denied. */
export const saysAll = ({ unknown, contradictions }: TraitReading): boolean =>
  unknown.length === 0 && contradictions.length === 0;

/**
 * How the animal looks: 1 for each genotype of a look that the words allow. Where they name nothing
 * of the locus it looks wild. Undefined where the words say nothing.
 */
export function lookLikelihood(reading: TraitReading, locus: Locus): ByGenotype | undefined {
  const chances = reading.loci.get(locus.id);
  if (!chances && !saysAll(reading)) return undefined;
  const looks = (sex: GeneSex): ReadonlySet<string> =>
    new Set(
      chances
        ? [...chances[sex].keys()].map((genotype) => lookOf(locus, sex, genotype).name)
        : [''],
    );
  const allowed = { female: looks('female'), male: looks('male') };
  return each(locus, (sex, genotype) =>
    allowed[sex].has(lookOf(locus, sex, genotype).name) ? 1 : 0,
  );
}

/** Of whom only one parent is known: every genotype that the statement leaves open. */
export function openTo(reading: TraitReading, locus: Locus): ByGenotype | undefined {
  const chances = reading.loci.get(locus.id);
  if (!chances) return lookLikelihood(reading, locus);
  return each(locus, (sex, genotype) => (chances[sex].has(genotype) ? 1 : 0));
}

export const ofSex = ({ female, male }: ByGenotype, sex: GeneSex): ByGenotype =>
  sex === 'female' ? { female, male: male.map(() => 0) } : { female: female.map(() => 0), male };

/** 1 for each genotype that carries the allele; undefined for one the locus does not have. */
export function carrying(locus: Locus, allele: string): ByGenotype | undefined {
  const index = alleleIndex(locus, allele);
  if (index <= WILD) return undefined;
  return each(locus, (sex, genotype) => (genotypeOf(locus, sex, genotype).includes(index) ? 1 : 0));
}

export const saysNothing = ({ female, male }: ByGenotype): boolean => {
  const [first] = female;
  return [...female, ...male].every((value) => value === first);
};
