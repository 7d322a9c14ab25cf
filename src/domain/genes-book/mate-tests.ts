import type { AnimalId } from '../core/ids.ts';
import { genotypeOf, numberOf } from '../genes/genotype.ts';
import type { GeneSex, Locus } from '../genes/locus.ts';
import { lookOf } from '../genes/look.ts';
import type { TogetherState } from '../genes/pedigree/joint-posterior.ts';
import type { ByGenotype } from '../genes/pedigree/states.ts';
import { whatWouldProve, type Proof } from '../genes/pedigree/what-would-prove.ts';
import { copiesIn, type Copies } from './copies.ts';
import type { GenesBook } from './genes-book.ts';

/** What more young with one mate would tell of an animal. */
export interface MateTest {
  /** Undefined: any that shows the trait. */
  readonly mate: AnimalId | undefined;
  readonly mateHas: Copies;
  readonly proof: Proof;
}

export interface MateQuestion {
  readonly animal: AnimalId;
  readonly sex: GeneSex;
  readonly locus: Locus;
  /** Hidden in one copy; by its place in the locus's list. */
  readonly allele: number;
  readonly mates: readonly AnimalId[];
  readonly book: GenesBook;
  /** The chance to carry below which it counts as no carrier. */
  readonly below: number;
}

const MOST_MATES = 3;

/** A mate that shows it, as all have heard of, then the best of those there are. */
export function mateTests(question: MateQuestion): readonly MateTest[] {
  const { animal, locus, allele, book } = question;
  const shows: MateTest = {
    mate: undefined,
    mateHas: { any: 1, two: 1 },
    proof: proofWith(question, besideVisual(question)),
  };
  const own = question.mates
    .map((mate) => {
      const chances = book.chances(mate, locus.id);
      return { mate, has: chances ? copiesIn(chances, locus, allele) : { any: 0, two: 0 } };
    })
    .filter(({ has }) => has.any > 0)
    .toSorted((a, b) => b.has.any + b.has.two - (a.has.any + a.has.two))
    .slice(0, MOST_MATES)
    .flatMap(({ mate, has }): readonly MateTest[] => {
      const both = book.together(animal, mate, locus.id);
      if (both.kind !== 'together') return [];
      return [{ mate, mateHas: has, proof: proofWith(question, both.chances) }];
    });
  return [...own, shows];
}

function proofWith(
  { locus, allele, book, below }: MateQuestion,
  pair: readonly TogetherState[],
): Proof {
  const has = (sex: GeneSex, genotype: number): boolean =>
    genotypeOf(locus, sex, genotype).includes(allele);
  const wanted = lookOf(locus, 'female', numberOf(locus, 'female', [allele, allele])).name;
  const model = book.model(locus.id);
  const showing = (sex: GeneSex): readonly number[] =>
    Array.from({ length: model.genotypes[sex] }, (_, genotype) =>
      lookOf(locus, sex, genotype).name === wanted ? 1 : 0,
    );
  const shows: ByGenotype = { female: showing('female'), male: showing('male') };
  return whatWouldProve(model, { pair, carries: has, shows, below });
}

/** Beside a mate with two copies, of whom nothing else is known. */
function besideVisual({ animal, sex, locus, allele, book }: MateQuestion): TogetherState[] {
  const mateSex: GeneSex = sex === 'female' ? 'male' : 'female';
  const mate = { sex: mateSex, genotype: numberOf(locus, mateSex, [allele, allele]) };
  const own = book.chances(animal, locus.id)?.[sex] ?? [];
  const all = own.reduce((sum, chance) => sum + chance, 0) || 1;
  return own.flatMap((chance, genotype) =>
    chance > 0 ? [{ chance: chance / all, a: { sex, genotype }, b: mate }] : [],
  );
}
