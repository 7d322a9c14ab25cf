import {
  add,
  nearestFraction,
  ONE,
  over,
  same,
  sum,
  times,
  ZERO,
  type Fraction,
} from './fraction.ts';

/** Genotype numbers, and the chance of each that has one. They sum to 1. */
export type Chances = ReadonlyMap<number, Fraction>;

export const certainly = (genotype: number): Chances => new Map([[genotype, ONE]]);

/** Chances in so many parts, summed by genotype; parts of no chance are left out. */
export function gathered(parts: Iterable<readonly [number, Fraction]>): Map<number, Fraction> {
  const chances = new Map<number, Fraction>();
  for (const [genotype, chance] of parts) {
    if (chance.n > 0n) chances.set(genotype, add(chances.get(genotype) ?? ZERO, chance));
  }
  return chances;
}

/** Chances scaled to sum to 1. Throws a RangeError when all are zero. */
export function normalised(parts: Iterable<readonly [number, Fraction]>): Chances {
  const chances = gathered(parts);
  const total = sum(chances.values());
  if (same(total, ONE)) return chances;
  return new Map([...chances].map(([genotype, chance]) => [genotype, over(chance, total)]));
}

/** Weights as a pedigree's reckoning gives them, by genotype number, as the fractions they are. */
export const chancesFrom = (weights: readonly number[]): Chances =>
  normalised(weights.map((weight, genotype) => [genotype, nearestFraction(weight)] as const));

/** The chance that a genotype of some kind is drawn. */
export function shareWhere(chances: Chances, is: (genotype: number) => boolean): Fraction {
  return sum([...chances].filter(([genotype]) => is(genotype)).map(([, chance]) => chance));
}

/** One of several chances, each with its weight. */
export const blended = (parts: readonly (readonly [Fraction, Chances])[]): Map<number, Fraction> =>
  gathered(
    parts.flatMap(([weight, chances]) =>
      [...chances].map(([genotype, chance]) => [genotype, times(weight, chance)] as const),
    ),
  );
