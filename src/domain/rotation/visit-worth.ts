import type { Meeting } from './bars.ts';
import { visitFrom } from './bars.ts';
import type { PlanProblem, Visit } from './plan-problem.ts';

/**
 * What the parts of a visit are worth to a plan, in points. They are this program's own weights: they
 * say what gives way to what, and no more.
 *
 * A night of waiting costs about a sixteenth of a visit: his and her next ones come a night later, and
 * what is planned far ahead is what a shed, a meal or a missed evening undoes. It and the worths of a
 * night together and of one overdue were chosen among eleven sets on invented seasons of seeds 1 to 16,
 * and hold on others (`two-months.test.ts`).
 */
export const worths = {
  visit: 400,
  /** Less for each step down from her first choice, down to `reserveMost`. */
  reserve: 30,
  reserveMost: 90,
  /** For each night they are together. */
  together: 40,
  /** For each night she is overdue already, up to so many. */
  overdue: 3,
  overdueNights: 10,
  /** Lost for each night she waits longer than she must, times her haste. */
  waiting: 30,
  /** Lost for a male that has lost mass: this much at the mass at which he is stopped. */
  loss: 40,
  /** Lost for each visit he has begun in the last four weeks. */
  lateVisit: 2,
  lateVisits: 6,
  /** Each time a male is moved. */
  move: 5,
  /** For a visit that the kept plan has already. */
  kept: 6,
} as const;

/** What the plan looks for, as the screen says it; each sentence is a part of `worthOf`. */
export const objectiveInWords: readonly string[] = [
  'As many visits as the limits allow, her first choice before a reserve.',
  'The most overdue female first, and sooner where her window may close.',
  'A male that lost mass, or was out often, goes last.',
  'Few moves: evenings on which a full stay can begin, before those that cut it short.',
  'Of two equal plans the one that changes less.',
];

/** What one visit is worth, a whole number of points. */
export function worthOf(
  { male, female, pair }: Meeting,
  visit: Visit,
  problem: PlanProblem,
): number {
  const earliest = Math.max(0, female.window?.from ?? 0, visitFrom(female, problem) ?? 0);
  const waits = Math.max(0, visit.in - earliest);
  const isKept = problem.kept.some(
    (each) =>
      each.male === visit.male &&
      each.female === visit.female &&
      each.in === visit.in &&
      each.out === visit.out,
  );
  return Math.round(
    worths.visit -
      Math.min(worths.reserveMost, worths.reserve * pair.choice) +
      worths.together * (visit.out - visit.in) +
      worths.overdue * Math.min(worths.overdueNights, female.overdueNights) -
      worths.waiting * female.haste * waits -
      worths.loss * Math.min(1, Math.max(0, male.lossOfStop)) -
      worths.lateVisit * Math.min(worths.lateVisits, male.lateVisits) -
      worths.move * 2 +
      (isKept ? worths.kept : 0),
  );
}
