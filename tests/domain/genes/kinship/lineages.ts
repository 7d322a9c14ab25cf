import {
  readLineage,
  type Kin,
  type Lineage,
} from '../../../../src/domain/genes/kinship/lineage.ts';

export function lineageOf(kin: readonly Kin[]): Lineage {
  const read = readLineage(kin);
  if (!read.ok) throw new Error(`${read.problem.message} ${read.problem.about.join()}`);
  return read.value;
}

export type Row = readonly [id: string, sire?: string | undefined, dam?: string | undefined];

/** Rows of id, sire and dam; a parent that has no row is a founder. `-` is not known. */
export function kinOf(rows: readonly Row[]): readonly Kin[] {
  const own = new Set(rows.map(([id]) => id));
  const parents = rows.flatMap(([, sire = '-', dam = '-']) => [sire, dam]);
  const founders = new Set(parents.filter((id) => id !== '-' && !own.has(id)));
  return [
    ...rows.map(([id, sire = '-', dam = '-']) => ({
      id,
      ...(sire === '-' ? {} : { sire }),
      ...(dam === '-' ? {} : { dam }),
    })),
    ...[...founders].map((id) => ({ id })),
  ];
}

export const pedigree = (...rows: readonly Row[]): Lineage => lineageOf(kinOf(rows));

/** Wright 1922, Am Nat 56:330–338, by Lynch & Walsh 1998, Genetics and Analysis of Quantitative Traits, ch. 7. */
export const roanGauntlet = kinOf([
  ['Champion', 'Lancaster Comet', 'Virtue'],
  ['Duchess 9th', 'Lord Raglan', 'Duchess 6th'],
  ['Mistletoe', 'Lord Raglan', 'Maidstone'],
  ['The Czar', 'Lord Raglan', 'Corianda'],
  ['Cressida', 'John Bull', 'Clipper'],
  ['Grand Duke', 'Champion', 'Duchess 9th'],
  ['Mimulus', 'Champion', 'Mistletoe'],
  ['Carmine', 'The Czar', 'Cressida'],
  ['Royal Duke', 'Grand Duke', 'Mimulus'],
  ['Princess Royal', 'Champion', 'Carmine'],
  ['Roan Gauntlet', 'Royal Duke', 'Princess Royal'],
]);
