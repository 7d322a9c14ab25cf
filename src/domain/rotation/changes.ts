import { barsForAll, barsOnEntry, mayComeOut, type Bar } from './bars.ts';
import type { PlanProblem, Visit } from './plan-problem.ts';
import { meetingsOf } from './visit-model.ts';

/** How a new plan differs from the one that was kept, and why. */
export interface PlanChange {
  readonly kind: 'missed' | 'left out' | 'moved' | 'new';
  readonly visit: Visit;
  /** Where it was moved to. */
  readonly to?: Visit | undefined;
  /** What stands against the visit as it was kept; none: the plan found something better. */
  readonly because: readonly Bar[];
}

/** One change for each visit that is not as it was; visits done or under way are no change. */
export function changesIn(problem: PlanProblem, planned: readonly Visit[]): readonly PlanChange[] {
  const { kept, underWay } = problem;
  if (kept.length === 0) return [];
  const old = kept.filter((visit) => !isDone(visit, problem));
  const rest = planned.filter((visit) => !old.some((each) => isSame(each, visit)));
  const used = new Set<Visit>();
  const gone = old
    .filter((visit) => !planned.some((each) => isSame(each, visit)))
    .map((visit): PlanChange => {
      const to = rest.find((each) => isPair(each, visit) && !used.has(each));
      if (to) used.add(to);
      if (visit.in < 0) return { kind: 'missed', visit, to, because: [] };
      return { kind: to ? 'moved' : 'left out', visit, to, because: barsOf(visit, problem) };
    });
  const fresh = rest
    .filter((visit) => !used.has(visit) && !underWay.some((stay) => isPair(stay, visit)))
    .map((visit): PlanChange => ({ kind: 'new', visit, because: [] }));
  return [...gone, ...fresh];
}

/** He went in on that evening or after, and is there or has come home. */
function isDone(visit: Visit, { underWay, males, females }: PlanProblem): boolean {
  if (visit.in > 0) return false;
  if (underWay.some((stay) => isPair(stay, visit) && stay.in >= visit.in)) return true;
  const home = males.find(({ id }) => id === visit.male)?.cameHome;
  const ended = females.find(({ id }) => id === visit.female)?.visitEnded;
  return home !== undefined && ended !== undefined && home === ended && home > visit.in;
}

function barsOf(visit: Visit, problem: PlanProblem): readonly Bar[] {
  const meeting = meetingsOf(problem).find(({ pair }) => isPair(pair, visit));
  if (!meeting) return [{ limit: 'barred', who: 'pair' }];
  const bars = [...barsForAll(meeting), ...barsOnEntry(meeting, visit.in, problem)];
  if (bars.length > 0 || mayComeOut(meeting, visit, problem)) return bars;
  return [{ limit: 'away', who: 'keeper' }];
}

const isPair = (a: Pick<Visit, 'male' | 'female'>, b: Pick<Visit, 'male' | 'female'>): boolean =>
  a.male === b.male && a.female === b.female;

const isSame = (a: Visit, b: Visit): boolean => isPair(a, b) && a.in === b.in && a.out === b.out;
