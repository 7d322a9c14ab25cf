import type { AnimalId } from '../core/ids.ts';
import { clutchOdds, fatherlessOdds, type ClutchOdds, type Parent } from '../genes/clutch-odds.ts';
import { fraction, ZERO } from '../genes/fraction.ts';
import type { GeneSex } from '../genes/locus.ts';
import { genotypesOf, readTraits } from '../genes/read-traits.ts';
import type { GenesBook } from './genes-book.ts';
import { knownParent, tiesBetween } from './known-parent.ts';

/** One of a pair: a snake on record, or an imagined one in a keeper's words. */
export type PairSide =
  | { readonly kind: 'snake'; readonly id: AnimalId }
  | { readonly kind: 'words'; readonly text: string };

export interface AskedClutch {
  readonly dam: Parent;
  readonly sires: readonly Parent[];
  readonly odds: ClutchOdds;
}

/**
 * What a clutch can be, by all records. Of several males one fathered it, each as likely as the other;
 * without any she bred alone, reckoned as if no gene crossed over.
 */
export function clutchOf(
  female: PairSide,
  males: readonly PairSide[],
  book: GenesBook,
): AskedClutch {
  const dam = parentAs(female, 'female', book);
  const sires = males.map((male) => parentAs(male, 'male', book));
  const { catalogue } = book;
  if (sires.length === 0) return { dam, sires, odds: fatherlessOdds(dam, catalogue, ZERO) };
  const weight = fraction(1, sires.length);
  const [male] = males;
  const [sire] = sires;
  const together =
    female.kind === 'snake' && male?.kind === 'snake' && sire && males.length === 1
      ? tiesBetween(book.loci, dam, sire, { dam: female.id, sire: male.id }, book)
      : new Map<string, never>();
  const odds = clutchOdds(
    dam,
    sires.map((each) => ({ sire: each, weight })),
    catalogue,
    { together },
  );
  return { dam, sires, odds };
}

const parentAs = (side: PairSide, sex: GeneSex, book: GenesBook): Parent =>
  side.kind === 'snake'
    ? knownParent(side.id, sex, book)
    : genotypesOf(readTraits(side.text, book.catalogue, sex), sex);
