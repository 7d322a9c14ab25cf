import type { Lineage } from './lineage.ts';

/**
 * How many generations back all ancestors are known, by place: complete generation equivalents, the
 * sum of (1/2)^n over known ancestors n generations back (Maignel L., Boichard D. & Verrier E. 1996,
 * Interbull Bulletin 14:49–54). 0: no parent is known. A daughter without a father has one whole parent.
 */
export function generationsKnown({ animals }: Lineage): Float64Array {
  const known = new Float64Array(animals.length);
  animals.forEach(({ dam, sire, apart }, index) => {
    const through = (parent: number | undefined): number =>
      parent === undefined ? 0 : 1 + (known[parent] ?? 0);
    known[index] = apart === undefined ? (through(dam) + through(sire)) / 2 : through(dam);
  });
  return known;
}
