import { locusOf, type Catalogue } from '../genes/catalogue.ts';
import type { ClutchOdds } from '../genes/clutch-odds.ts';
import { toNumber, type Fraction } from '../genes/fraction.ts';
import { inClutch, neededFor } from '../genes/in-clutch.ts';
import type { GeneSex } from '../genes/locus.ts';
import { alleleAt } from '../genes/look.ts';
import type { LookRow, LookTable } from '../genes/look-table.ts';
import { shareWhere, type Chances } from '../genes/chances.ts';
import { genotypeOf, WILD } from '../genes/genotype.ts';
import { chanceOf, targetCases, type TargetCase } from '../genes/target-odds.ts';
import type { Target, Want } from '../genes/target.ts';
import { writeTraits } from '../genes/write-traits.ts';
import { oddsWords, percent } from './chance-words.ts';

/** Young that look alike, in words. */
export interface LookLine {
  readonly name: string;
  /** The same for a record of such young: each look by itself. */
  readonly words: string;
  /** 0 to 1, for the bar. */
  readonly share: number;
  /** "1/4 (25 %)" */
  readonly chance: string;
  /** In so many hatched young, on average: "1.5". */
  readonly expected: string;
  /** How each would be written down: "Pastel, 66% het Clown"; for each sex where they differ. */
  readonly writes: readonly string[];
  readonly odds: readonly string[];
}

const NINE_IN_TEN: Fraction = { n: 9n, d: 10n };

export function lookLines(odds: ClutchOdds, table: LookTable, young: number): readonly LookLine[] {
  const loci = [
    ...new Set(odds.ways.flatMap(({ crosses }) => crosses.map(({ locus }) => locus.id))),
  ];
  return table.rows.map((row): LookLine => {
    const wants = loci.map((locus): Want => {
      const look = row.looks.find((each) => each.locus === locus)?.name ?? '';
      return { locus, look };
    });
    return {
      name: row.looks.map(({ name }) => name).join(' ') || 'Normal',
      words: row.looks.map(({ name }) => name).join(', ') || 'Normal',
      share: toNumber(row.perHatchling),
      chance: oddsWords(row.perHatchling),
      expected: expectedWords(young * toNumber(row.perHatchling)),
      writes: writesOf(row, odds.catalogue),
      odds: clutchWords(targetCases(odds, { wants }, { of: 'hatchlings' }), young),
    };
  });
}

export const expectedWords = (expected: number): string =>
  expected > 0 && expected < 0.05 ? 'under 0.1' : String(Number(expected.toFixed(1)));

/** What a clutch holds of a target, a sentence each. */
export function clutchWords(cases: readonly TargetCase[], young: number): readonly string[] {
  const { atLeastOne, none, oneOfEachSex } = inClutch(cases, young);
  const needed = neededFor(cases, NINE_IN_TEN, 'one');
  return [
    `At least one in ${young} hatched young: ${percent(atLeastOne)}. None: ${percent(none)}.`,
    `One of each sex at least: ${percent(oneOfEachSex)}.`,
    needed.reachable
      ? `For 9 in 10 it takes ${needed.n} hatched young.`
      : `9 in 10 is not reachable: ${neverWords(needed.limit)}`,
  ];
}

const neverWords = (limit: Fraction): string =>
  limit.n === 0n
    ? 'these parents cannot give it.'
    : `however many hatch, the chance never passes ${oddsWords(limit)}, that these parents can give it at all.`;

export function targetWords(odds: ClutchOdds, target: Target, young: number): readonly string[] {
  const cases = targetCases(odds, target, { of: 'hatchlings' });
  return [`Each young: ${oddsWords(chanceOf(cases))}.`, ...clutchWords(cases, young)];
}

function writesOf({ genotypes, bySex }: LookRow, catalogue: Catalogue): readonly string[] {
  const of = (sex: GeneSex): string => {
    const { text, unsaid } = writeTraits(genotypes[sex], sex, catalogue);
    const beside = unsaid.map(({ id }) => carriersAt(id, sex, genotypes[sex].get(id), catalogue));
    return [text, ...beside].join(', ');
  };
  const sexes = (['female', 'male'] as const).filter((sex) => bySex[sex].n > 0n);
  const texts = sexes.map((sex) => ({ sex, text: of(sex) }));
  const [first] = texts;
  if (!first) return [];
  if (texts.length === 2 && texts.every(({ text }) => text === first.text)) return [first.text];
  return texts.map(({ sex, text }) => `${sex}s: ${text}`);
}

/** Where trade words cannot say it: each allele with its chance. */
function carriersAt(
  id: string,
  sex: GeneSex,
  chances: Chances = new Map(),
  catalogue: Catalogue,
): string {
  const locus = locusOf(catalogue, id);
  return locus.alleles
    .flatMap((_, index) => {
      if (index === WILD) return [];
      const share = shareWhere(chances, (genotype) =>
        genotypeOf(locus, sex, genotype).includes(index),
      );
      return share.n === 0n
        ? []
        : [`${percent(toNumber(share))} with ${alleleAt(locus, index).name}`];
    })
    .join(', ');
}
