import type { Chances } from './chances.ts';
import { add, fraction, HALF, oneMinus, times, ZERO, type Fraction } from './fraction.ts';
import { genotypeCount, genotypeOf, numberOf, type Genotype } from './genotype.ts';
import type { GeneSex, Locus } from './locus.ts';

/** Allele and chance. The same allele may stand twice. */
type Gametes = readonly (readonly [number, Fraction])[];

const either = ([a, b]: Genotype): Gametes => [
  [a, HALF],
  [b, HALF],
];

/**
 * What a father gives to a daughter, with his X, or to a son, with his Y. Where the copies cross over
 * between his X and Y at rate r, a daughter gets what lies on his Y with chance r.
 */
function sireGametes(locus: Locus, sex: GeneSex, [onX, onY]: Genotype): Gametes {
  if (locus.linkage.kind === 'autosomal') return either([onX, onY]);
  const r = locus.linkage.recombination;
  const [usual, crossed] = sex === 'female' ? [onX, onY] : [onY, onX];
  return [
    [usual, oneMinus(r)],
    [crossed, r],
  ];
}

/** Chance of each genotype of a daughter or a son at conception, exactly. */
export function childChances(locus: Locus, sex: GeneSex, dam: number, sire: number): Chances {
  const chances = new Map<number, Fraction>();
  const fromSire = sireGametes(locus, sex, genotypeOf(locus, 'male', sire));
  for (const [ofDam, damChance] of either(genotypeOf(locus, 'female', dam))) {
    for (const [ofSire, sireChance] of fromSire) {
      const chance = times(damChance, sireChance);
      if (chance.n === 0n) continue;
      // A son has his mother's allele on his X, his father's on his Y.
      const number = numberOf(locus, sex, [ofDam, ofSire]);
      chances.set(number, add(chances.get(number) ?? ZERO, chance));
    }
  }
  return chances;
}

/**
 * Chance of each genotype of a daughter without a sire: two products of the same egg's division
 * fuse again (terminal-fusion automixis). `apart` is how often the two alleles part only at the
 * second division, which grows with the distance of the locus from its centromere: 0 never, and then
 * every daughter is homozygous; 2/3 far out; 1 always.
 * Mechanism in P. regius: Booth W. et al. 2014, Biol J Linn Soc 112:461–468.
 */
export function fatherlessChances(locus: Locus, dam: number, apart: Fraction): Chances {
  const [a, b] = genotypeOf(locus, 'female', dam);
  if (a === b) return new Map([[dam, fraction(1)]]);
  const each = times(HALF, oneMinus(apart));
  const daughters = [
    [dam, apart],
    [numberOf(locus, 'female', [a, a]), each],
    [numberOf(locus, 'female', [b, b]), each],
  ] as const;
  return new Map(daughters.filter(([, chance]) => chance.n > 0n));
}

/** Share of a genotype that lives to hatch, relative to the fittest. */
export function survivalOf(locus: Locus, sex: GeneSex, number: number): Fraction {
  const [a, b] = genotypeOf(locus, sex, number);
  return pairOf(locus, a, b)?.survival?.share ?? fraction(1);
}

/** What the catalogue says of two alleles together, if anything. */
export function pairOf(locus: Locus, a: number, b: number) {
  const [first, second] = [locus.alleles[a]?.id, locus.alleles[b]?.id];
  return locus.pairs.find(
    ({ alleles: [x, y] }) => (x === first && y === second) || (x === second && y === first),
  );
}

/** All genotype numbers of a sex. */
export const everyGenotype = (locus: Locus, sex: GeneSex): readonly number[] =>
  Array.from({ length: genotypeCount(locus, sex) }, (_, number) => number);
