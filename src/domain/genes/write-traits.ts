import type { Catalogue } from './catalogue.ts';
import type { Chances } from './chances.ts';
import { add, compare, HALF, ONE, same, ZERO, type Fraction } from './fraction.ts';
import { genotypeOf, isOrdered, numberOf, WILD, type Genotype } from './genotype.ts';
import type { GeneSex, Locus } from './locus.ts';
import { alleleAt, lookOf } from './look.ts';
import { chanceWords } from './trait-text.ts';

export interface WrittenTraits {
  /** "Normal" where there is nothing to say. */
  readonly text: string;
  /** Loci of which more is known than trade words can say; they are left out of the text. */
  readonly unsaid: readonly Locus[];
}

/**
 * Genotypes in trade words: visible traits, then hets, the surest first. `readTraits` reads them back
 * the same.
 */
export function writeTraits(
  genotypes: ReadonlyMap<string, Chances>,
  sex: GeneSex,
  catalogue: Catalogue,
): WrittenTraits {
  const shown: string[] = [];
  const hidden: Hidden[] = [];
  const unsaid: Locus[] = [];
  for (const locus of catalogue.loci) {
    const chances = genotypes.get(locus.id);
    const words = chances ? wordsFor(locus, sex, chances) : nothing;
    if (words) {
      shown.push(...words.shown);
      hidden.push(...words.hidden);
    } else unsaid.push(locus);
  }
  const hets = hidden.toSorted((a, b) => compare(b.chance, a.chance)).map(({ words }) => words);
  const text = [...shown, ...hets].join(', ');
  return { text: text === '' ? 'Normal' : text, unsaid };
}

interface Words {
  readonly shown: readonly string[];
  readonly hidden: readonly Hidden[];
}
interface Hidden {
  readonly words: string;
  readonly chance: Fraction;
}
const nothing: Words = { shown: [], hidden: [] };

/** Two alleles, sorted, and their chance. */
interface Entry {
  readonly pair: Genotype;
  readonly chance: Fraction;
}

/** Undefined where trade words cannot say it. */
function wordsFor(locus: Locus, sex: GeneSex, chances: Chances): Words | undefined {
  const maker = makerWords(locus, sex, chances);
  if (maker !== undefined) return { shown: [maker], hidden: [] };
  const entries = unordered(locus, sex, chances);
  const [only, ...others] = entries ?? [];
  if (!entries || !only) return undefined;
  if (others.length === 0) return certainWords(locus, only.pair);
  const beside = only.pair.find((allele) => entries.every(({ pair }) => pair.includes(allele)));
  if (beside === undefined) return undefined;
  const uncertain = entries
    .map(({ pair: [a, b], chance }) => ({ allele: a === beside ? b : a, chance }))
    .filter(({ allele }) => allele !== WILD);
  return beside === WILD ? hetWords(locus, uncertain, []) : besideVisible(locus, beside, uncertain);
}

type Uncertain = readonly { readonly allele: number; readonly chance: Fraction }[];

function hetWords(locus: Locus, uncertain: Uncertain, shown: readonly string[]): Words | undefined {
  const hidden = uncertain
    .toSorted((a, b) => a.allele - b.allele)
    .flatMap(({ allele, chance }) => {
      const percent = chanceWords(chance);
      // A name that begins with "het" says it itself.
      const name = alleleAt(locus, allele).name.replace(/^het /iu, '');
      return percent === undefined ? [] : [{ words: `${percent} het ${name}`, chance }];
    });
  return hidden.length === uncertain.length ? { shown, hidden } : undefined;
}

function besideVisible(locus: Locus, beside: number, uncertain: Uncertain): Words | undefined {
  const { mode, name } = alleleAt(locus, beside);
  if (mode === 'recessive') return undefined;
  const twice = uncertain.find(({ allele }) => allele === beside);
  if (!twice) return hetWords(locus, uncertain, [name]);
  const percent = chanceWords(twice.chance);
  if (percent === undefined || uncertain.length > 1) return undefined;
  return { shown: [`${percent} super ${name}`], hidden: [] };
}

function certainWords(locus: Locus, [a, b]: Genotype): Words {
  if (b === WILD) return nothing;
  const { mode, name } = alleleAt(locus, b);
  if (a === WILD && mode === 'recessive') {
    return { shown: [], hidden: [{ words: `het ${name}`, chance: ONE }] };
  }
  if (a === b && mode === 'dominant') return { shown: [`super ${name}`], hidden: [] };
  return { shown: [lookOf(locus, 'female', numberOf(locus, 'female', [a, b])).name], hidden: [] };
}

/** A male's one copy of a sex-linked trait, where more is known than that it is there. */
function makerWords(locus: Locus, sex: GeneSex, chances: Chances): string | undefined {
  if (!isOrdered(locus, sex)) return undefined;
  const genotypes = [...chances.keys()].map((number) => genotypeOf(locus, sex, number));
  const [first] = genotypes;
  const allele = first && Math.max(...first);
  if (allele === undefined || allele === WILD) return undefined;
  const onlyOne = genotypes.every(
    ([x, y]) => x !== y && Math.max(x, y) === allele && Math.min(x, y) === WILD,
  );
  if (!onlyOne) return undefined;
  const { name } = alleleAt(locus, allele);
  const onY = chances.get(numberOf(locus, sex, [WILD, allele])) ?? ZERO;
  if (same(onY, HALF)) return undefined;
  if (same(onY, ONE)) return `male maker ${name}`;
  if (same(onY, ZERO)) return `female maker ${name}`;
  const percent = chanceWords(onY);
  return percent === undefined ? undefined : `${percent} male maker ${name}`;
}

/** Pairs without order; undefined where a male's two orders have different chances. */
function unordered(locus: Locus, sex: GeneSex, chances: Chances): readonly Entry[] | undefined {
  const entries: Entry[] = [];
  for (const [number, chance] of chances) {
    const [a, b] = genotypeOf(locus, sex, number);
    if (!isOrdered(locus, sex) || a === b) entries.push({ pair: [a, b], chance });
    else {
      const turned = chances.get(numberOf(locus, sex, [b, a]));
      if (!turned || !same(turned, chance)) return undefined;
      if (a < b) entries.push({ pair: [a, b], chance: add(chance, chance) });
    }
  }
  return entries;
}
