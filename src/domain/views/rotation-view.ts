import type { Day } from '../core/calendar.ts';
import type { AnimalId } from '../core/ids.ts';
import { candidatesIn } from '../choosing/readiness.ts';
import type { Picture } from '../picture/picture.ts';
import { rotationOf } from '../rotation/kept-plan.ts';
import { readProblem, standingWants } from '../rotation/read-problem.ts';
import { possibleFathers } from '../rotation/paternity.ts';
import { femaleFacts } from '../rotation/snake-facts.ts';
import { showGrams } from '../core/units.ts';
import { daysWords } from '../core/day-words.ts';
import type { Animal } from '../state/animal.ts';
import { fatherWords } from './father-offers.ts';
import { malePage, type MalePage } from './male-book.ts';

/** A female on the board. */
export interface BoardRow {
  readonly id: AnimalId;
  readonly name: string;
  readonly position: string | undefined;
  readonly mass: string | undefined;
  /** In her window, or why she is not. */
  readonly readiness: string;
  readonly isReady: boolean;
  /** First choice, then reserves. */
  readonly wants: readonly BoardWant[];
  /** The males that may be the fathers of her clutch, a sentence each. */
  readonly fathers: readonly string[];
}

export interface BoardWant {
  readonly male: AnimalId;
  readonly name: string;
  readonly choice: 'first' | 'reserve';
  /** What asks for a reason that is not there yet. */
  readonly unreasoned: readonly string[];
  readonly isApart: boolean;
}

export interface RotationView {
  readonly night: Day;
  /** Those on the board and those that are ready, ready ones first. */
  readonly females: readonly BoardRow[];
  readonly males: readonly MalePage[];
  readonly away: readonly Day[];
  /** Changes whenever another plan may be better. */
  readonly planKey: string;
}

/** The board of females against males, and the book of the males. */
export function rotationView(picture: Picture): RotationView {
  const { females, males } = candidatesIn(picture);
  const problem = readProblem(picture);
  const wants = standingWants(picture);
  const rows = females.map((female): BoardRow => {
    const facts = femaleFacts(female, picture);
    const mass = female.weighings.at(-1)?.massG;
    const hers = problem.wanted
      .filter((each) => each.female === female.id)
      .toSorted((a, b) => a.choice - b.choice);
    return {
      id: female.id,
      name: female.name,
      position: picture.position(picture.whereIs(female)),
      mass: mass === undefined ? undefined : showGrams(mass),
      readiness: facts.closed ?? readyWords(female, facts.overdueNights, picture),
      isReady: facts.window !== undefined,
      wants: hers.map(({ male, choice, unreasoned, barred }) => ({
        male,
        name: picture.facts.nameOf(male),
        choice: choice === 0 ? 'first' : 'reserve',
        unreasoned,
        isApart: barred,
      })),
      fathers: possibleFathers(female, picture).map((each) => fatherWords(each, picture)),
    };
  });
  const wanted = new Set(wants.flatMap(({ female, male }) => [female, male]));
  return {
    night: picture.facts.night,
    females: rows.toSorted(
      (a, b) =>
        Number(b.isReady) - Number(a.isReady) ||
        Number(wanted.has(b.id)) - Number(wanted.has(a.id)) ||
        (a.name < b.name ? -1 : 1),
    ),
    males: males
      .map((male) => malePage(male, picture))
      .toSorted((a, b) => Number(wanted.has(b.id)) - Number(wanted.has(a.id))),
    away: rotationOf(picture).away.filter((day) => day >= picture.facts.night),
    planKey: JSON.stringify([picture.facts.night, problem]),
  };
}

function readyWords(female: Animal, overdue: number, picture: Picture): string {
  const standing = picture.standing(female);
  const late = overdue > 0 ? ` Due for ${daysWords(overdue)}.` : '';
  return `In her window. ${standing?.because[0] ?? ''}${late}`;
}
