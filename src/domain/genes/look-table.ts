import { blended, type Chances } from './chances.ts';
import type { ClutchOdds } from './clutch-odds.ts';
import { add, compare, minus, ONE, over, sum, times, ZERO, type Fraction } from './fraction.ts';
import type { BySex, GeneSex } from './locus.ts';
import { largestProducts } from './largest-products.ts';
import { lookTerms, type LookTerm, type TermLocus } from './look-terms.ts';

/** Young that look alike. */
export interface LookRow {
  /** The looks that show, with the locus's id; empty for a normal. */
  readonly looks: readonly { readonly locus: string; readonly name: string }[];
  /** Chance of a hatchling, and of a hatchling of each sex, to look so. */
  readonly perHatchling: Fraction;
  readonly bySex: BySex<Fraction>;
  /** Chance of an egg to become one, as far as its genes go. */
  readonly perEgg: Fraction;
  /** Genotypes behind the look, by locus, given the row and the sex: 2/3 het and so on. */
  readonly genotypes: BySex<ReadonlyMap<string, Chances>>;
}

export interface LookTable {
  /** The likeliest first. */
  readonly rows: readonly LookRow[];
  /** How many rarer looks there are, and their chance together. */
  readonly rarer: { readonly looks: number; readonly perHatchling: Fraction };
  /** Share of eggs whose genotype does not live, and the ids of the loci that are why. */
  readonly lost: { readonly perEgg: Fraction; readonly loci: readonly string[] };
}

/** What the young of a pair look like, the likeliest `most` looks. Exact. */
export function lookTable(odds: ClutchOdds, most = 24): LookTable {
  const { loci, terms, hatch, whole } = lookTerms(odds);
  const picked = largestProducts(
    terms.flatMap((term) => [vectorsOf(term, 'female'), vectorsOf(term, 'male')]),
    loci.map(({ looks }) => looks.length),
    most,
  );
  const rows = picked.best
    .map((picks) => rowOf(loci, terms, picks))
    .toSorted((a, b) => compare(b.perHatchling, a.perHatchling));
  const shown = sum(rows.map(({ perHatchling }) => perHatchling));
  return {
    rows,
    rarer: { looks: picked.count - rows.length, perHatchling: minus(whole, shown) },
    lost: {
      perEgg: minus(ONE, hatch),
      loci: loci.filter(({ loses }) => loses).map(({ locus }) => locus.id),
    },
  };
}

const vectorsOf = (term: LookTerm, sex: GeneSex) => ({
  weight: term.weight[sex],
  factors: term.loci.map((each) => each.map(({ share }) => share[sex])),
});

function rowOf(
  loci: readonly TermLocus[],
  terms: readonly LookTerm[],
  picks: readonly number[],
): LookRow {
  const chosen = terms.map((term) => ({
    term,
    entries: term.loci.map((looks, n) => looks[picks[n] ?? 0]),
  }));
  const chance = (sex: GeneSex, weight: (term: LookTerm) => BySex<Fraction>): Fraction =>
    sum(
      chosen.map(({ term, entries }) =>
        entries.reduce(
          (product, entry) => times(product, entry?.share[sex] ?? ZERO),
          weight(term)[sex],
        ),
      ),
    );
  const ofHatchlings = {
    female: chance('female', ({ weight }) => weight),
    male: chance('male', ({ weight }) => weight),
  };
  const genotypesOf = (sex: GeneSex): ReadonlyMap<string, Chances> => {
    if (ofHatchlings[sex].n === 0n) return new Map();
    return new Map(
      loci.map(({ locus }, at) => {
        const parts = chosen.map(({ term, entries }) => {
          const elsewhere = entries.reduce(
            (product, entry, n) => (n === at ? product : times(product, entry?.share[sex] ?? ZERO)),
            term.weight[sex],
          );
          const share = over(elsewhere, ofHatchlings[sex]);
          return [share, entries[at]?.genotypes[sex] ?? new Map<number, Fraction>()] as const;
        });
        return [locus.id, blended(parts)] as const;
      }),
    );
  };
  return {
    looks: loci.flatMap(({ locus, looks }, n) => {
      const name = looks[picks[n] ?? 0] ?? '';
      return name === '' ? [] : [{ locus: locus.id, name }];
    }),
    perHatchling: add(ofHatchlings.female, ofHatchlings.male),
    bySex: ofHatchlings,
    perEgg: add(
      chance('female', ({ eggWeight }) => eggWeight),
      chance('male', ({ eggWeight }) => eggWeight),
    ),
    genotypes: { female: genotypesOf('female'), male: genotypesOf('male') },
  };
}
