import type { AnimalId } from '../core/ids.ts';
import { exactPair } from '../choosing/exact-pair.ts';
import { readGoal, type Goal } from '../choosing/goal.ts';
import { openHets } from '../choosing/open-hets.ts';
import { candidatesIn, notReady } from '../choosing/readiness.ts';
import { showGrams } from '../core/units.ts';
import { genesBook } from '../genes-book/genes-book.ts';
import { knownParent } from '../genes-book/known-parent.ts';
import { pairCautions } from '../genes/pair-cautions.ts';
import { familyTree } from '../lineage/family-tree.ts';
import type { Picture } from '../picture/picture.ts';
import { reasonsAskedFor, unreasonedFor, type AskedReason } from '../rotation/pair-reasons.ts';
import { rotationOf } from '../rotation/kept-plan.ts';
import { standingWants } from '../rotation/read-problem.ts';
import { cautionLine, kinCaution, type CautionLine } from './caution-words.ts';
import { percent } from './chance-words.ts';
import { kinWords } from './kin-words.ts';
import { namedKin } from './lineage-view.ts';

export interface MatesAsk {
  readonly female: AnimalId;
  /** What is hoped for, as the keeper writes it; may be empty. */
  readonly goal: string;
  /** Hatched young in a clutch. */
  readonly young: number;
}

/** One male against one female: all that is weighed on the board. */
export interface MateCell {
  readonly male: AnimalId;
  readonly name: string;
  readonly position: string | undefined;
  readonly traits: string | undefined;
  readonly mass: string | undefined;
  readonly choice: 'first' | 'reserve' | 'none';
  readonly isApart: boolean;
  /** "82 % at least one in 6 young"; absent without a goal. */
  readonly odds: string | undefined;
  readonly kin: string;
  readonly cautions: readonly CautionLine[];
  readonly notReady: readonly string[];
  /** What asks for a reason, and whether each has one. */
  readonly asked: readonly AskedReason[];
  readonly missing: readonly AskedReason[];
}

/** Every grown male against one female; those she is to have first, then by the odds. */
export function matesView(
  { female, goal: text, young }: MatesAsk,
  picture: Picture,
): readonly MateCell[] {
  if (!picture.animal(female)) return [];
  const book = genesBook(picture);
  const { kin } = familyTree(picture);
  const goal = goalOf(text, picture);
  const wants = standingWants(picture).filter((each) => each.female === female);
  const { ruled } = rotationOf(picture);
  const dam = knownParent(female, 'female', book);
  const rank = { first: 0, reserve: 1, none: 2 };
  return candidatesIn(picture)
    .males.map((male) => {
      const pair = { female, male: male.id };
      const chance = goal ? chanceOf(goal, pair, young, picture) : undefined;
      const words = kinWords(
        kin.between(female, male.id),
        'pair',
        (id) => namedKin(id, picture).name,
      );
      const sire = knownParent(male.id, 'male', book);
      const mass = male.weighings.at(-1)?.massG;
      const missing = unreasonedFor(pair, picture);
      const cell: MateCell = {
        male: male.id,
        name: male.name,
        position: picture.position(picture.whereIs(male)),
        traits: male.traits,
        mass: mass === undefined ? undefined : showGrams(mass),
        choice: wants.find((each) => each.male === male.id)?.choice ?? 'none',
        isApart: ruled.some(
          (each) => each.female === female && each.male === male.id && each.rule.kind === 'apart',
        ),
        odds:
          chance === undefined ? undefined : `${percent(chance)} at least one in ${young} young`,
        kin: words.figure,
        cautions: [
          ...pairCautions(dam, sire, book.catalogue).map(cautionLine),
          ...kinCaution(words),
        ],
        notReady: notReady(male, picture),
        asked: reasonsAskedFor(pair, picture),
        missing,
      };
      return { cell, chance: chance ?? 0 };
    })
    .toSorted(
      (a, b) =>
        rank[a.cell.choice] - rank[b.cell.choice] ||
        b.chance - a.chance ||
        a.cell.missing.length - b.cell.missing.length ||
        (a.cell.name < b.cell.name ? -1 : 1),
    )
    .map(({ cell }) => cell);
}

function goalOf(text: string, picture: Picture): Goal | undefined {
  if (text.trim() === '') return undefined;
  const book = genesBook(picture);
  const read = readGoal(text, {
    catalogue: book.catalogue,
    animals: picture.living(),
    mayCarry: (animal) => openHets(animal, picture, book),
  });
  return read.ok && read.goal.kind === 'young' ? read.goal : undefined;
}

function chanceOf(
  goal: Goal,
  { female, male }: { readonly female: AnimalId; readonly male: AnimalId },
  young: number,
  picture: Picture,
): number | undefined {
  if (goal.kind !== 'young') return undefined;
  const { target } = goal;
  const sure = { n: 9n, d: 10n };
  const book = genesBook(picture);
  return exactPair({ goal, target, book, dam: female, sire: male, young, sure }).perClutch;
}
