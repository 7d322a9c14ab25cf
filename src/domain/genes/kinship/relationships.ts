import type { Descent, Lineage } from './lineage.ts';
import { outbredSelf, sharesOf, type Chromosomes, type Shares } from './shares.ts';

/** How a whole lineage is related: twice the kinship, as animal breeders write it. By place. */
export interface Relationships {
  /** Of each animal to itself: 1 + F, on the X of a male 2. */
  readonly self: Float64Array;
  /** The part of that which came through no ancestor: Mendelian sampling, Henderson's D. */
  readonly own: Float64Array;
  /** Of one animal to all. Takes two passes over the lineage. */
  readonly to: (animal: number) => Float64Array;
}

/**
 * The part of an animal's relationship to itself that does not come through its parents: Mendelian
 * sampling. With T what each has of each, and D this, all relationships are T D T′ (Henderson C.R.
 * 1976, Biometrics 32:69–83).
 */
function ownPart(
  animal: Descent,
  shares: Shares,
  chromosomes: Chromosomes,
  self: Float64Array,
): number {
  const ofDam = animal.dam === undefined ? 0 : (self[animal.dam] ?? 0);
  const ofSire = animal.sire === undefined ? 0 : (self[animal.sire] ?? 0);
  // Two alleles of hers meet again with chance 1 − apart, else she passes both on.
  if (animal.apart !== undefined) return (1 - animal.apart) * (2 - ofDam);
  return outbredSelf(animal, chromosomes) - shares.dam ** 2 * ofDam - shares.sire ** 2 * ofSire;
}

/** Told of each ancestor, the animal itself first, then the youngest; and what share of it is in the animal. */
type Visit = (ancestor: number, share: number) => void;

/** Walks up from one animal after another. */
export function climber(
  lineage: Lineage,
  shares: readonly Shares[],
): (from: number, visit: Visit) => void {
  // Flat arrays: this visits every ancestor of every animal.
  const damOf = Int32Array.from(lineage.animals, ({ dam }) => dam ?? -1);
  const sireOf = Int32Array.from(lineage.animals, ({ sire }) => sire ?? -1);
  const fromDam = Float64Array.from(shares, ({ dam }) => dam);
  const fromSire = Float64Array.from(shares, ({ sire }) => sire);
  const given = new Float64Array(damOf.length);
  let waiting = 0;
  const give = (parent: number, share: number): void => {
    if (parent < 0 || share === 0) return;
    const before = given[parent] ?? 0;
    if (before === 0) waiting += 1;
    given[parent] = before + share;
  };
  return (from, visit) => {
    give(from, 1);
    for (let at = from; waiting > 0; at -= 1) {
      const share = given[at] ?? 0;
      if (share === 0) continue;
      visit(at, share);
      given[at] = 0;
      waiting -= 1;
      give(damOf[at] ?? -1, share * (fromDam[at] ?? 0));
      give(sireOf[at] ?? -1, share * (fromSire[at] ?? 0));
    }
  };
}

/**
 * Relationships within a lineage. Each animal's to itself is summed over its ancestors (Meuwissen
 * T.H.E. & Luo Z. 1992, Genet Sel Evol 24:305–313); one animal's to all others is the product of the
 * three factors of the matrix with a unit vector, without the matrix (Colleau J.-J. 2002, Genet Sel
 * Evol 34:409–421). Throws a RangeError for the X where a sex is not known.
 */
export function relationshipsIn(
  lineage: Lineage,
  chromosomes: Chromosomes = 'autosomes',
): Relationships {
  const { animals } = lineage;
  const shares = sharesOf(lineage, chromosomes);
  const self = new Float64Array(animals.length);
  const own = new Float64Array(animals.length);
  const climb = climber(lineage, shares);
  const known = new Map<string, number>();
  animals.forEach((animal, index) => {
    own[index] = ownPart(animal, shares[index] ?? { dam: 0, sire: 0 }, chromosomes, self);
    const { dam, sire, sex, apart } = animal;
    // Litter mates are inbred alike.
    const parents = `${dam} ${sire} ${apart} ${chromosomes === 'x' ? sex : ''}`;
    let sum = known.get(parents);
    if (sum === undefined) {
      sum = 0;
      climb(index, (ancestor, share) => (sum = (sum ?? 0) + share * share * (own[ancestor] ?? 0)));
      known.set(parents, sum);
    }
    self[index] = sum;
  });
  return { self, own, to: (animal) => column(lineage, shares, own, animal) };
}

/** T D T′ e: down to the ancestors, each one's own part, and up again to all who have of them. */
function column(
  { animals }: Lineage,
  shares: readonly Shares[],
  own: Float64Array,
  animal: number,
): Float64Array {
  const values = new Float64Array(animals.length);
  values[animal] = 1;
  for (let at = animal; at >= 0; at -= 1) {
    const value = values[at] ?? 0;
    if (value === 0) continue;
    const { dam, sire } = animals[at] ?? {};
    if (dam !== undefined) values[dam] = (values[dam] ?? 0) + value * (shares[at]?.dam ?? 0);
    if (sire !== undefined) values[sire] = (values[sire] ?? 0) + value * (shares[at]?.sire ?? 0);
  }
  animals.forEach(({ dam, sire }, at) => {
    const ofDam = dam === undefined ? 0 : (values[dam] ?? 0) * (shares[at]?.dam ?? 0);
    const ofSire = sire === undefined ? 0 : (values[sire] ?? 0) * (shares[at]?.sire ?? 0);
    values[at] = (values[at] ?? 0) * (own[at] ?? 0) + ofDam + ofSire;
  });
  return values;
}
