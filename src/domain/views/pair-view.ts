import { readGoal } from '../choosing/goal.ts';
import { genesBook, type GenesBook } from '../genes-book/genes-book.ts';
import { clutchOf, type PairSide } from '../genes-book/pair-sides.ts';
import type { Catalogue } from '../genes/catalogue.ts';
import { locusOf } from '../genes/catalogue.ts';
import type { ClutchOdds } from '../genes/clutch-odds.ts';
import { toNumber } from '../genes/fraction.ts';
import { groundsOf } from '../genes/grounds.ts';
import { lookTable } from '../genes/look-table.ts';
import { clutchCautions, deference } from '../genes/pair-cautions.ts';
import { closeKin } from '../lineage/close-kin.ts';
import { familyTree } from '../lineage/family-tree.ts';
import type { Picture } from '../picture/picture.ts';
import { cautionLine, kinCaution, reasonFor, type CautionLine } from './caution-words.ts';
import { oddsWords, percent } from './chance-words.ts';
import { kinWords, type KinWords } from './kin-words.ts';
import { namedKin, type NamedKin } from './lineage-view.ts';
import { expectedWords, lookLines, targetWords, type LookLine } from './look-lines.ts';
import { readingOf, type Reading } from './reading-view.ts';

export interface PairAsk {
  readonly female: PairSide;
  /** Several: one of them is the father. None: she bred alone. */
  readonly males: readonly PairSide[];
  /** Hatched young. */
  readonly young: number;
  /** What is hoped for, as the keeper writes it; may be empty. */
  readonly wish: string;
}

/** One of the pair, and what was made of the words. */
export interface SideLine {
  readonly who: NamedKin | undefined;
  readonly traits: string | undefined;
  readonly reading: Reading | undefined;
}

export interface GroundLine {
  readonly says: string;
  readonly grade: string;
  readonly sources: readonly string[];
}

export interface PairView {
  /** As asked for. */
  readonly young: number;
  readonly female: SideLine;
  readonly males: readonly SideLine[];
  readonly cautions: readonly CautionLine[];
  readonly deference: string;
  readonly reasoned: string | undefined;
  readonly looks: readonly LookLine[];
  /** Looks too rare to list, together. */
  readonly rarer: string | undefined;
  /** Eggs whose genes do not live. */
  readonly lost: string | undefined;
  /** Odds of what is wished for, or why the words are not understood. */
  readonly wish:
    | { readonly kind: 'odds'; readonly of: string; readonly says: readonly string[] }
    | { readonly kind: 'not understood'; readonly problem: string }
    | undefined;
  /** Of each possible father; none for imagined ones. */
  readonly kin: readonly { readonly with: string; readonly words: KinWords }[];
  readonly limits: string;
  readonly grounds: readonly GroundLine[];
  /** What was assumed, and genes at which the records contradict each other. */
  readonly assumed: readonly string[];
}

/** What a real or an imagined pair can give; what is worth knowing comes first. */
export function pairView({ female, males, young, wish }: PairAsk, picture: Picture): PairView {
  const book = genesBook(picture);
  const { catalogue } = book;
  const { dam, odds } = clutchOf(female, males, book);
  const table = lookTable(odds);
  const kin = kinOf(female, males, picture);
  const closest = kin.toSorted((a, b) => b.most - a.most)[0];
  const [male, other] = males;
  return {
    young,
    female: sideLine(female, picture, catalogue),
    males: males.map((each) => sideLine(each, picture, catalogue)),
    cautions: [
      ...clutchCautions(dam, odds).map(cautionLine),
      ...(closest ? kinCaution(closest.words) : []),
    ],
    deference,
    reasoned:
      female.kind === 'snake' && male?.kind === 'snake' && !other
        ? reasonFor({ female: female.id, male: male.id }, picture)
        : undefined,
    looks: lookLines(odds, table, young),
    rarer:
      table.rarer.looks === 0
        ? undefined
        : `${table.rarer.looks} rarer looks together: ${percent(toNumber(table.rarer.perHatchling))}.`,
    lost: lostWords(table.lost, young, catalogue),
    wish: wishOf(wish, odds, young, book, picture),
    kin: kin.map(({ name, words }) => ({ with: name, words })),
    limits: closeKin.source.cite,
    grounds: groundsOf(odds).map(({ statement, evidence }) => ({
      says: statement,
      grade: evidence.grade,
      sources: evidence.sources.map(({ cite }) => cite),
    })),
    assumed: assumedIn(female, males, book, picture),
  };
}

function sideLine(side: PairSide, picture: Picture, catalogue: Catalogue): SideLine {
  const traits = side.kind === 'words' ? side.text : picture.animal(side.id)?.traits;
  return {
    who: side.kind === 'snake' ? namedKin(side.id, picture) : undefined,
    traits,
    reading: traits === undefined ? undefined : readingOf(traits, catalogue),
  };
}

function kinOf(female: PairSide, males: readonly PairSide[], picture: Picture) {
  const { kin } = familyTree(picture);
  return males.flatMap((male) => {
    if (female.kind !== 'snake' || male.kind !== 'snake') return [];
    if (!picture.animal(female.id) || !picture.animal(male.id)) return [];
    const related = kin.between(female.id, male.id);
    const words = kinWords(related, 'pair', (id) => namedKin(id, picture).name);
    return [
      { name: namedKin(male.id, picture).name, words, most: related.atMost ?? related.atLeast },
    ];
  });
}

function lostWords(
  { perEgg, loci }: ReturnType<typeof lookTable>['lost'],
  young: number,
  catalogue: Catalogue,
): string | undefined {
  if (perEgg.n === 0n) return undefined;
  const genes = loci.map((id) => locusOf(catalogue, id).name).join(', ');
  const living = 1 - toNumber(perEgg);
  const eggs =
    living > 0 ? ` For ${young} hatched young it takes ${expectedWords(young / living)} eggs.` : '';
  return `${oddsWords(perEgg)} of the eggs are lost by their genes (${genes}).${eggs} The looks are of those that hatch.`;
}

function wishOf(
  wish: string,
  odds: ClutchOdds,
  young: number,
  { catalogue }: GenesBook,
  picture: Picture,
): PairView['wish'] {
  if (wish.trim() === '') return undefined;
  const read = readGoal(wish, { catalogue, animals: picture.living(), mayCarry: () => [] });
  if (!read.ok) return { kind: 'not understood', problem: read.problem };
  if (read.goal.kind === 'prove') {
    return {
      kind: 'not understood',
      problem: 'What would prove a snake stands on its own page, under Genes.',
    };
  }
  const { target, wants } = read.goal;
  const of =
    target.sex === undefined ? wants.join(' · ') : `A ${target.sex} · ${wants.join(' · ')}`;
  return { kind: 'odds', of, says: targetWords(odds, target, young) };
}

function assumedIn(
  female: PairSide,
  males: readonly PairSide[],
  book: GenesBook,
  picture: Picture,
): readonly string[] {
  const unsettled = [female, ...males].flatMap((side) => {
    if (side.kind === 'words') return [];
    const name = namedKin(side.id, picture).name;
    return book.loci
      .filter((locus) => !book.chances(side.id, locus))
      .map(
        (locus) =>
          `The records of ${name} contradict each other at ${locusOf(book.catalogue, locus).name}: taken for a normal there.`,
      );
  });
  const fathers =
    males.length > 1
      ? ['One of the males is the father of all; each is taken for as likely as the other.']
      : males.length === 0
        ? [
            'Without a male she has daughters only, and each is taken to have two like copies of every gene. The farther a gene lies from the middle of its chromosome, the more of them keep both: how far is not known of any. Booth W. et al. 2014, Biol J Linn Soc 112:461–468.',
          ]
        : [];
  return [
    ...fathers,
    ...unsettled,
    'Genes that are not named are taken for normal. Young are counted as hatched, not as laid.',
  ];
}
