import { readGoal, type Goal } from '../choosing/goal.ts';
import { carryingChance, openHets } from '../choosing/open-hets.ts';
import { isGrave, rankPairs, type RankedPair } from '../choosing/rank-pairs.ts';
import type { AnimalId } from '../core/ids.ts';
import { genesBook } from '../genes-book/genes-book.ts';
import type { Fraction } from '../genes/fraction.ts';
import { alleleAt } from '../genes/look.ts';
import { alleleIndex } from '../genes/genotype.ts';
import { deference } from '../genes/pair-cautions.ts';
import { closeKin } from '../lineage/close-kin.ts';
import type { Picture } from '../picture/picture.ts';
import { cautionLine, kinCaution, reasonFor, type CautionLine } from './caution-words.ts';
import { oddsWords, percent } from './chance-words.ts';
import { kinWords, type KinWords } from './kin-words.ts';
import { namedKin, type NamedKin } from './lineage-view.ts';

export interface ChooseAsk {
  /** As the keeper writes it. */
  readonly goal: string;
  /** Hatched young in a clutch. */
  readonly young: number;
  readonly readyOnly: boolean;
}

export interface PairLine {
  readonly female: Placed;
  readonly male: Placed;
  /** "82 %" */
  readonly chance: string;
  /** What the chance is of, with the chance of none, and of each young; a sentence each. */
  readonly odds: readonly string[];
  /** How many young, clutches and seasons. */
  readonly way: string;
  readonly kin: KinWords;
  readonly notReady: readonly { readonly name: string; readonly says: readonly string[] }[];
  readonly cautions: readonly CautionLine[];
  /** False where a caution is grave: it is shown, after all others. */
  readonly isSuggested: boolean;
  /** A reason given for this pair, where one was. */
  readonly reasoned: string | undefined;
}

export interface Placed extends NamedKin {
  readonly position: string | undefined;
  readonly traits: string | undefined;
}

export type ChooseView =
  | { readonly kind: 'not understood'; readonly problem: string }
  | {
      readonly kind: 'ranking';
      readonly goal: readonly string[];
      /** How many were looked at, and how many can give it. */
      readonly counts: string;
      readonly pairs: readonly PairLine[];
      readonly deference: string;
      readonly limits: string;
    };

/** Which pairs of the collection come nearest to a goal. */
export function chooseView(
  { goal: text, young, readyOnly }: ChooseAsk,
  picture: Picture,
): ChooseView {
  const book = genesBook(picture);
  const read = readGoal(text, {
    catalogue: book.catalogue,
    animals: picture.living(),
    mayCarry: (animal) => openHets(animal, picture, book),
  });
  if (!read.ok) return { kind: 'not understood', problem: read.problem };
  const { goal } = read;
  if (goal.kind === 'prove' && picture.animal(goal.animal)?.sex === 'unknown') {
    return { kind: 'not understood', problem: 'It must be sexed before it can be proven.' };
  }
  const { females, males, possible, pairs, sure } = rankPairs(goal, picture, { young, readyOnly });
  return {
    kind: 'ranking',
    goal: goalWords(goal, picture),
    counts: `${count(females, 'female')} and ${count(males, 'male')} looked at; ${count(possible, 'pair')} can give it${pairs.length < possible ? `, the first ${pairs.length} shown` : ''}.`,
    pairs: pairs.map((pair) => pairLine(pair, goal, { young, sure }, picture)),
    deference,
    limits: closeKin.source.cite,
  };
}

const count = (n: number, what: string): string => `${n} ${what}${n === 1 ? '' : 's'}`;

function goalWords(goal: Goal, picture: Picture): readonly string[] {
  if (goal.kind === 'young') {
    const { sex } = goal.target;
    return sex === undefined ? goal.wants : [`A ${sex}`, ...goal.wants];
  }
  const { animal, locus, allele } = goal;
  const { name } = namedKin(animal, picture);
  const chance = carryingChance(animal, locus, allele, picture, genesBook(picture));
  const trait = alleleAt(locus, alleleIndex(locus, allele)).name;
  return [`Prove that ${name} carries ${trait}. By the records: ${percent(chance)}.`];
}

function pairLine(
  pair: RankedPair,
  goal: Goal,
  { young, sure }: { readonly young: number; readonly sure: Fraction },
  picture: Picture,
): PairLine {
  const { perClutch, ifCarrier, each, needed, clutches, kin, cautions } = pair;
  const [female, male] = [placed(pair.female, picture), placed(pair.male, picture)];
  const tested = goal.kind === 'prove' ? namedKin(goal.animal, picture).name : '';
  const words = kinWords(kin, 'pair', (id) => namedKin(id, picture).name);
  const odds = [
    `At least one in ${young} hatched young: ${percent(perClutch)}. None: ${percent(1 - perClutch)}.`,
    `Each young: ${oddsWords(each)}.`,
    ...(ifCarrier === undefined
      ? []
      : [`If ${tested} carries it: ${percent(ifCarrier)} in one clutch.`]),
  ];
  const asked = `${sure.n} in ${sure.d}`;
  const way =
    !needed.reachable || clutches === undefined
      ? `${needed.reachable ? '' : needed.because} So ${asked} is out of reach with this pair.`
      : `${needed.n} hatched young for a chance of ${asked}${goal.kind === 'prove' ? `, if ${tested} carries it` : ''}: ${
          clutches === 1 ? '1 clutch, 1 season' : `${clutches} clutches, ${clutches} seasons`
        }.`;
  return {
    female,
    male,
    chance: percent(perClutch),
    odds,
    way,
    kin: words,
    notReady: [
      { name: female.name, says: pair.notReady.female },
      { name: male.name, says: pair.notReady.male },
    ].filter(({ says }) => says.length > 0),
    cautions: [...cautions.map(cautionLine), ...kinCaution(words)],
    isSuggested: !isGrave(pair),
    reasoned: reasonFor(pair, picture),
  };
}

function placed(id: AnimalId, picture: Picture): Placed {
  const animal = picture.animal(id);
  const position = animal && picture.position(picture.whereIs(animal));
  return { ...namedKin(id, picture), position, traits: animal?.traits };
}
