import type { AnimalId } from '../core/ids.ts';
import { copiesIn } from '../genes-book/copies.ts';
import { genesBook, type GenesBook } from '../genes-book/genes-book.ts';
import { mateTests, type MateTest } from '../genes-book/mate-tests.ts';
import { locusOf } from '../genes/catalogue.ts';
import { alleleIndex } from '../genes/genotype.ts';
import type { Locus } from '../genes/locus.ts';
import type { Picture } from '../picture/picture.ts';
import { percent } from './chance-words.ts';
import { findingLine, troubleLine, type FindingLine, type TroubleLine } from './gene-findings.ts';
import { birthWords, copiesWords } from './genes-view.ts';
import { namedKin, type NamedKin } from './lineage-view.ts';

export interface GeneAsk {
  readonly animal: AnimalId;
  readonly locus: string;
  readonly allele: string;
}

/** One record that moved the chance. */
export interface MoverLine extends FindingLine {
  /** "without it: 66 %" */
  readonly without: string;
}

/** What young with one mate would tell. */
export interface ProofLine {
  /** Undefined: any mate that shows it. */
  readonly mate: NamedKin | undefined;
  readonly mateHas: string;
  readonly says: readonly string[];
}

export interface GeneWhyView {
  readonly gene: string;
  /** By descent and what was stated of founders, with nothing seen. */
  readonly start: string;
  readonly movers: readonly MoverLine[];
  readonly now: string;
  readonly trouble: TroubleLine | undefined;
  /** Undefined where there is nothing to prove. */
  readonly proof:
    { readonly lines: readonly ProofLine[]; readonly because: string | undefined } | undefined;
}

const MOST_MOVERS = 8;
/** Counted as no carrier from here on [common practice, no source: one in twenty]. */
export const NO_CARRIER = 0.05;

/** Why a chance is what it is, and what would settle it; undefined for what is not in the catalogue. */
export function geneWhyView(
  { animal, locus: locusId, allele }: GeneAsk,
  picture: Picture,
): GeneWhyView | undefined {
  const book = genesBook(picture);
  const locus = book.catalogue.loci.find(({ id }) => id === locusId);
  const index = locus ? alleleIndex(locus, allele) : -1;
  const made = locus?.alleles[index];
  if (!locus || !made || !picture.animal(animal)) return undefined;
  const moved = book.moved(animal, locusId);
  if (moved.kind !== 'moved') {
    const trouble = troubleLine(moved, locusId, book, picture);
    return { gene: made.name, start: '', now: '', movers: [], trouble, proof: undefined };
  }
  const words = (chances: typeof moved.now): string =>
    copiesWords(copiesIn(chances, locus, index), made);
  const movers = moved.movers.slice(0, MOST_MOVERS).flatMap((mover): readonly MoverLine[] => {
    const line = findingLine(mover.finding, book, picture);
    return line ? [{ ...line, without: words(mover.without) }] : [];
  });
  return {
    gene: made.name,
    start: birthWords(copiesIn(moved.before, locus, index), made),
    movers,
    now: words(moved.now),
    trouble: undefined,
    proof: proofOf({ animal, locus, index, book }, picture),
  };
}

function proofOf(
  asked: {
    readonly animal: AnimalId;
    readonly locus: Locus;
    readonly index: number;
    readonly book: GenesBook;
  },
  picture: Picture,
): GeneWhyView['proof'] {
  const { animal, locus, index, book } = asked;
  const allele = locus.alleles[index];
  const chances = book.chances(animal, locus.id);
  if (!allele || !chances || allele.mode !== 'recessive') return undefined;
  const { any } = copiesIn(chances, locusOf(book.catalogue, locus.id), index);
  if (any === 0 || any === 1) return undefined;
  const self = picture.animal(animal);
  if (self?.sex !== 'female' && self?.sex !== 'male') {
    return { lines: [], because: 'It must be sexed before young can prove it.' };
  }
  const mates = picture
    .living()
    .filter(({ id, sex }) => id !== animal && sex !== 'unknown' && sex !== self.sex)
    .map(({ id }) => id);
  const tests = mateTests({
    animal,
    sex: self.sex,
    locus,
    allele: index,
    mates,
    book,
    below: NO_CARRIER,
  });
  const name = self.name || 'it';
  return {
    lines: tests.map((test) => proofLine(test, name, allele.name, picture)),
    because: undefined,
  };
}

function proofLine(
  { mate, mateHas, proof }: MateTest,
  name: string,
  gene: string,
  picture: Picture,
): ProofLine {
  const { youngUntilBelow, chanceIfCarrier, canShow, youngToProof, ifOneShows } = proof;
  const says: string[] = [];
  if (ifOneShows !== undefined) {
    says.push(
      ifOneShows > 1 - 1e-9
        ? `One young that shows ${gene} proves ${name}.`
        : `One young that shows ${gene} makes it ${percent(ifOneShows)}.`,
    );
  }
  if (youngToProof !== undefined) {
    const on = Number(youngToProof.toPrecision(2));
    says.push(
      `If ${name} carries it, ${percent(chanceIfCarrier)} of the young show it: about ${on} hatched young to the first.${canShow < 1 ? ` This mate can bring it to light in ${percent(canShow)} of cases.` : ''}`,
    );
  }
  const under = percent(NO_CARRIER);
  if (youngUntilBelow.kind === 'young') {
    const { count } = youngUntilBelow;
    says.push(
      count === 0
        ? `The chance is under ${under} already.`
        : `${count} more hatched young, none of them ${gene}, bring the chance under ${under}.`,
    );
  } else if (youngUntilBelow.kind === 'never') {
    says.push(
      `However many without it, the chance falls no lower than ${percent(youngUntilBelow.floor)}.`,
    );
  } else {
    says.push(`Over ${youngUntilBelow.tried} young without it would be needed for under ${under}.`);
  }
  return {
    mate: mate === undefined ? undefined : namedKin(mate, picture),
    mateHas: mate === undefined ? `any snake that shows ${gene}` : mateHasWords(mateHas, gene),
    says,
  };
}

const mateHasWords = ({ any, two }: MateTest['mateHas'], gene: string): string =>
  two === 1
    ? `shows ${gene}`
    : any === 1
      ? `carries ${gene}`
      : `carries ${gene} by ${percent(any)}`;
