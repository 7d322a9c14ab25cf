import { locusOf, type Catalogue } from './catalogue.ts';
import type { Caution, Weight } from './caution.ts';
import { certainly, shareWhere } from './chances.ts';
import { clutchOdds, type ClutchOdds, type Parent } from './clutch-odds.ts';
import { compare, ONE, times, type Fraction } from './fraction.ts';
import { WILD } from './genotype.ts';
import { meets, type Want } from './target.ts';
import { chanceOf, targetCases } from './target-odds.ts';

/** A caution that this pair gives cause for. */
export interface PairCaution {
  readonly caution: Caution;
  /** Of a young at conception to be concerned, or of the mother to be; above zero. */
  readonly chance: Fraction;
}

/** Stands beside every list of cautions. */
export const deference =
  'Rules on such crosses differ between countries and shows: check yours. For an animal that is not well, ask a reptile vet.';

const weights: readonly Weight[] = ['grave', 'serious', 'worth knowing'];

/**
 * What is worth knowing before two animals are put together: the heaviest first, then the likeliest.
 * Throws a RangeError as `clutchOdds` does.
 */
export function pairCautions(
  dam: Parent,
  sire: Parent,
  catalogue: Catalogue,
): readonly PairCaution[] {
  return clutchCautions(dam, clutchOdds(dam, [{ sire, weight: ONE }], catalogue));
}

/** The same of a clutch as it is reckoned: with several possible sires, or none. */
export function clutchCautions(dam: Parent, odds: ClutchOdds): readonly PairCaution[] {
  const { catalogue } = odds;
  return catalogue.cautions
    .map((caution): PairCaution => {
      const chance =
        caution.concerns === 'dam'
          ? damChance(dam, caution.wants, catalogue)
          : chanceOf(targetCases(odds, { wants: caution.wants }, { of: 'conceptions' }));
      return { caution, chance };
    })
    .filter(({ chance }) => chance.n > 0n)
    .toSorted(
      (a, b) =>
        weights.indexOf(a.caution.weight) - weights.indexOf(b.caution.weight) ||
        compare(b.chance, a.chance),
    );
}

/** Wants at different loci: what is known of one says nothing of another. */
function damChance(dam: Parent, wants: readonly Want[], catalogue: Catalogue): Fraction {
  const ids = [...new Set(wants.map(({ locus }) => locus))];
  return ids.reduce((product, id) => {
    const locus = locusOf(catalogue, id);
    const here = wants.filter((want) => want.locus === id);
    const chances = dam.get(id) ?? certainly(WILD);
    const share = shareWhere(chances, (genotype) =>
      here.every((want) => meets(want, locus, 'female', genotype)),
    );
    return times(product, share);
  }, ONE);
}
