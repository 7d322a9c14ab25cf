import fc from 'fast-check';
import { normalised, type Chances } from '../../../src/domain/genes/chances.ts';
import type { Parent } from '../../../src/domain/genes/clutch-odds.ts';
import { fraction } from '../../../src/domain/genes/fraction.ts';
import {
  alleleIndex,
  genotypeCount,
  genotypeOf,
  numberOf,
} from '../../../src/domain/genes/genotype.ts';
import type { GeneSex, Locus } from '../../../src/domain/genes/locus.ts';
import type { AnimalIds, PairOfIds } from './brute-force.ts';
import { locusNamed } from './pairs.ts';

// Hidden, visible, dominant, lethal, sex-linked, of two alleles and of many.
const loci = [
  'pied',
  'pastel',
  'pinstripe',
  'champagne',
  'spider',
  'banana',
  'tyr',
  'clown',
  'bel',
].map(locusNamed);

const anyGenotypes = (locus: Locus, sex: GeneSex) =>
  fc
    .uniqueArray(fc.integer({ min: 0, max: genotypeCount(locus, sex) - 1 }), {
      minLength: 1,
      maxLength: 2,
    })
    .chain((numbers) =>
      fc.tuple(
        ...numbers.map((number) =>
          fc.integer({ min: 1, max: 3 }).map((parts): readonly [number, PairOfIds] => {
            const [a, b] = genotypeOf(locus, sex, number).map((n) => locus.alleles[n]?.id ?? '+');
            return [parts, [a ?? '+', b ?? '+']];
          }),
        ),
      ),
    );

/** Two animals of whom little is certain, at one to three loci. */
export const anyPair = fc
  .uniqueArray(fc.constantFrom(...loci), { minLength: 1, maxLength: 3, selector: ({ id }) => id })
  .chain((some) => {
    const anyAnimal = (sex: GeneSex) =>
      fc
        .tuple(...some.map((locus) => anyGenotypes(locus, sex)))
        .map((all): AnimalIds => new Map(some.map(({ id }, n) => [id, all[n] ?? []])));
    return fc.record({
      some: fc.constant(some),
      dam: anyAnimal('female'),
      sire: anyAnimal('male'),
      target: fc.integer({ min: 0, max: 1_000 }),
      n: fc.integer({ min: 1, max: 12 }),
    });
  });

export const parent = (animal: AnimalIds, some: readonly Locus[], sex: GeneSex): Parent =>
  new Map(
    some.map((locus): [string, Chances] => [
      locus.id,
      normalised(
        (animal.get(locus.id) ?? []).map(([parts, [a, b]]) => [
          numberOf(locus, sex, [alleleIndex(locus, a), alleleIndex(locus, b)]),
          fraction(parts),
        ]),
      ),
    ]),
  );
