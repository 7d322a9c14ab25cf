import { addDays, type Day } from '../core/calendar.ts';
import type { AnimalId } from '../core/ids.ts';
import type { EventOf } from '../events/event.ts';
import type { Picture } from '../picture/picture.ts';
import { changesIn } from '../rotation/changes.ts';
import { isProvenBest, type Solve } from '../rotation/linear-model.ts';
import type { PlanProblem, Visit } from '../rotation/plan-problem.ts';
import { readProblem } from '../rotation/read-problem.ts';
import { unplannedIn } from '../rotation/unplanned.ts';
import { visitModel, visitsTaken } from '../rotation/visit-model.ts';
import { objectiveInWords } from '../rotation/visit-worth.ts';
import { changeWords, unplannedWords, type PlanTongue } from './plan-words.ts';

/** A planned visit, ready to show and to keep. */
export interface PlannedVisit {
  readonly male: AnimalId;
  readonly female: AnimalId;
  readonly maleName: string;
  readonly femaleName: string;
  readonly malePosition: string | undefined;
  readonly femalePosition: string | undefined;
  readonly in: Day;
  readonly out: Day;
  readonly isPinned: boolean;
  readonly isUnderWay: boolean;
  /** "first choice" */
  readonly choice: string;
}

export interface PlanView {
  readonly night: Day;
  readonly visits: readonly PlannedVisit[];
  /** "Proven: no other plan is better." */
  readonly proof: string;
  readonly objective: readonly string[];
  /** What differs from the plan that was kept, and why; a sentence each. */
  readonly changes: readonly string[];
  readonly isKept: boolean;
  readonly unplanned: readonly {
    readonly male: string;
    readonly female: string;
    readonly says: readonly string[];
  }[];
  readonly brokenPins: readonly string[];
  /** What to record to go by it. */
  readonly toKeep: Pick<EventOf<'visits-planned'>, 'night' | 'visits'>;
}

/** The best plan of the next nights by the records as they are, with what was left out and why. */
export async function planView(picture: Picture, solve: Solve): Promise<PlanView> {
  const problem = readProblem(picture);
  const { facts } = picture;
  const tongue: PlanTongue = { problem, night: facts.night, nameOf: facts.nameOf };
  const built = visitModel(problem);
  const solved = await solve(built.model);
  const visits = visitsTaken(built, solved.values);
  const changes = changesIn(problem, visits);
  const toDay = (visit: Visit) => ({
    female: visit.female,
    male: visit.male,
    in: addDays(facts.night, visit.in),
    out: addDays(facts.night, visit.out),
  });
  const gap = solved.worth > 0 ? ((solved.atMost - solved.worth) / solved.worth) * 100 : Infinity;
  return {
    night: facts.night,
    visits: [
      ...problem.underWay.map((stay) => planned(stay, true, problem, picture)),
      ...visits.map((visit) => planned(visit, false, problem, picture)),
    ],
    proof: isProvenBest(solved)
      ? 'Proven: no plan within your limits is better.'
      : `Not proven the best: another could be better by at most ${Number.isFinite(gap) ? `${gap.toFixed(1)} %` : 'an unknown part'}.`,
    objective: objectiveInWords,
    changes: changes.map((change) => changeWords(change, tongue)),
    isKept: problem.kept.length > 0 && changes.length === 0,
    unplanned: unplannedIn(problem, visits).map((each) => ({
      male: facts.nameOf(each.male),
      female: facts.nameOf(each.female),
      says: unplannedWords(each, tongue),
    })),
    brokenPins: built.brokenPins.map(
      (pin) =>
        `Your pin of ${facts.nameOf(pin.male)} with ${facts.nameOf(pin.female)} cannot hold: it breaks a limit, or an earlier pin.`,
    ),
    toKeep: { night: facts.night, visits: visits.map(toDay) },
  };
}

function planned(
  visit: Visit,
  isUnderWay: boolean,
  problem: PlanProblem,
  picture: Picture,
): PlannedVisit {
  const { facts } = picture;
  const [he, she] = [picture.animal(visit.male), picture.animal(visit.female)];
  const pair = problem.wanted.find(
    (each) => each.male === visit.male && each.female === visit.female,
  );
  return {
    male: visit.male,
    female: visit.female,
    maleName: facts.nameOf(visit.male),
    femaleName: facts.nameOf(visit.female),
    malePosition: he && picture.position(picture.whereIs(he)),
    femalePosition: she && picture.position(picture.whereIs(she)),
    in: addDays(facts.night, visit.in),
    out: addDays(facts.night, visit.out),
    isPinned: problem.pins.some(
      (pin) => pin.male === visit.male && pin.female === visit.female && pin.in === visit.in,
    ),
    isUnderWay,
    choice:
      pair === undefined ? 'not on the board' : pair.choice === 0 ? 'first choice' : 'reserve',
  };
}
