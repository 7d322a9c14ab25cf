import type { Descent, Lineage } from './lineage.ts';

/** Which chromosomes: the paired ones, or the X, of which males have one. */
export type Chromosomes = 'autosomes' | 'x';

/** What an animal has of each parent: a half of each, or all of its mother. */
export interface Shares {
  readonly dam: number;
  readonly sire: number;
}

/**
 * Shares by place. Throws a RangeError for an X where the sex is not known: a son has his only one
 * from his mother.
 */
export function sharesOf({ animals }: Lineage, chromosomes: Chromosomes): readonly Shares[] {
  return animals.map(({ id, sex, dam, sire, apart }) => {
    if (chromosomes === 'x' && sex === undefined) {
      throw new RangeError(`The sex of ${id} is not known.`);
    }
    const onlyDam = apart !== undefined || (chromosomes === 'x' && sex === 'male');
    if (onlyDam) return { dam: dam === undefined ? 0 : 1, sire: 0 };
    return { dam: dam === undefined ? 0 : 0.5, sire: sire === undefined ? 0 : 0.5 };
  });
}

/** What relationship of itself an animal would have that is not inbred: 1 for two copies, 2 for one. */
export const outbredSelf = ({ sex }: Descent, chromosomes: Chromosomes): number =>
  chromosomes === 'x' && sex === 'male' ? 2 : 1;
