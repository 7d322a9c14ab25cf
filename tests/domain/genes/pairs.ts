import { expect } from 'vitest';
import { ballPython } from '../../../src/domain/genes/catalogue/ball-python.ts';
import { clutchOdds, eggChances, type Parent } from '../../../src/domain/genes/clutch-odds.ts';
import { add, keyOf, ONE, sum, ZERO, type Fraction } from '../../../src/domain/genes/fraction.ts';
import { genotypeOf } from '../../../src/domain/genes/genotype.ts';
import type { GeneSex, Locus } from '../../../src/domain/genes/locus.ts';
import { lookTable, type LookRow } from '../../../src/domain/genes/look-table.ts';
import { genotypesOf, readTraits } from '../../../src/domain/genes/read-traits.ts';
import { writeTraits } from '../../../src/domain/genes/write-traits.ts';

/** An animal in trade words, all of which must be understood. */
export function animal(text: string, sex: GeneSex, catalogue = ballPython): Parent {
  const reading = readTraits(text, catalogue, sex);
  expect([reading.unknown, reading.contradictions]).toEqual([[], []]);
  return genotypesOf(reading, sex);
}

export const pair = (dam: string, sire: string, catalogue = ballPython) =>
  clutchOdds(
    animal(dam, 'female', catalogue),
    [{ sire: animal(sire, 'male', catalogue), weight: ONE }],
    catalogue,
  );

/** `{ 'Clown': '1/4', 'Normal': '3/4' }`: looks of hatchlings, all of them. */
export function looks(odds: ReturnType<typeof pair>): Record<string, string> {
  const { rows, rarer } = lookTable(odds, 5_000);
  expect([rarer.looks, keyOf(rarer.perHatchling)]).toEqual([0, '0/1']);
  return Object.fromEntries(rows.map((row) => [nameOf(row), short(row.perHatchling)]));
}

export const nameOf = (row: LookRow): string =>
  row.looks.map(({ name }) => name).join(' ') || 'Normal';

/** What is behind a look, in trade words. */
export function behind(odds: ReturnType<typeof pair>, look: string, sex: GeneSex = 'female') {
  const row = lookTable(odds, 5_000).rows.find((each) => nameOf(each) === look);
  expect(row).toBeDefined();
  return row ? writeTraits(row.genotypes[sex], sex, odds.catalogue).text : '';
}

export const short = (value: Fraction): string => (value.d === 1n ? String(value.n) : keyOf(value));

/** `{ '+/+': '1/4', … }` of both sexes together, at conception; of a male's X and Y without order. */
export function genotypes(odds: ReturnType<typeof pair>, locus: Locus): Record<string, string> {
  const found = new Map<string, Fraction>();
  for (const sex of ['female', 'male'] as const) {
    for (const [number, chance] of eggChances(odds, locus.id)[sex]) {
      const name = genotypeOf(locus, sex, number)
        .toSorted((a, b) => b - a)
        .map((allele) => locus.alleles[allele]?.id)
        .join(' ');
      found.set(name, add(found.get(name) ?? ZERO, chance));
    }
  }
  expect(short(sum(found.values()))).toBe('1');
  return Object.fromEntries([...found].map(([name, chance]) => [name, short(chance)]));
}

export const locusNamed = (id: string): Locus => {
  const locus = ballPython.loci.find((each) => each.id === id);
  if (!locus) throw new Error(`No locus ${id}.`);
  return locus;
};
