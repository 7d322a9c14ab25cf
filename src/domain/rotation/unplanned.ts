import type { AnimalId } from '../core/ids.ts';
import {
  barsForAll,
  barsOnEntry,
  mayComeOut,
  type Bar,
  type LimitName,
  type Meeting,
} from './bars.ts';
import type { Night, PlanProblem, Visit } from './plan-problem.ts';
import { meetingsOf } from './visit-model.ts';

/** Why a wanted pair has no visit in the plan: the limits that stop it, and what would free it. */
export interface Unplanned {
  readonly male: AnimalId;
  readonly female: AnimalId;
  readonly choice: number;
  readonly stops: readonly Stop[];
}

export interface Stop {
  readonly limit: LimitName;
  readonly who: Bar['who'];
  /** The first evening without it, where it passes within the plan. */
  readonly from?: Night | undefined;
  /** Where others of the plan are in the way. */
  readonly others: readonly Visit[];
}

/**
 * What stands against each wanted pair that the plan leaves out, of females it does not visit at all.
 *
 * Where a visit is possible by itself, the plan has a better use of him, or she has another male: the
 * visits in its way are named. Where none is possible, every limit that bars every evening is.
 */
export function unplannedIn(problem: PlanProblem, planned: readonly Visit[]): readonly Unplanned[] {
  const visited = new Set([...problem.underWay, ...planned].map(({ female }) => female));
  return meetingsOf(problem)
    .filter(({ female }) => !visited.has(female.id))
    .map((meeting) => ({
      male: meeting.male.id,
      female: meeting.female.id,
      choice: meeting.pair.choice,
      stops: stopsOf(meeting, problem, planned),
    }));
}

function stopsOf(
  meeting: Meeting,
  problem: PlanProblem,
  planned: readonly Visit[],
): readonly Stop[] {
  const always = barsForAll(meeting);
  if (always.length > 0) return always.map((bar) => ({ ...bar, others: [] }));
  const { limits } = problem;
  const evenings = Array.from({ length: limits.nights }, (_, night) => ({
    night,
    bars: [
      ...barsOnEntry(meeting, night, problem),
      ...(canEnd(meeting, night, problem) ? [] : [{ limit: 'away', who: 'keeper' } as const]),
    ],
  }));
  const free = evenings.filter(({ bars }) => bars.length === 0);
  if (free.length > 0) {
    const his = planned.filter(({ male }) => male === meeting.male.id);
    return his.length > 0
      ? [{ limit: 'one place', who: 'male', others: his }]
      : [{ limit: 'females per male', who: 'male', others: [] }];
  }
  // Of the evenings, the one with the fewest bars shows what would free the pair soonest.
  const [best] = evenings.toSorted((a, b) => a.bars.length - b.bars.length || a.night - b.night);
  return (best?.bars ?? []).map(({ limit, who, ...bar }) => ({
    limit,
    who,
    from: 'until' in bar ? bar.until : undefined,
    others: [],
  }));
}

const canEnd = (meeting: Meeting, night: Night, problem: PlanProblem): boolean =>
  Array.from({ length: problem.limits.stayNights }, (_, i) => night + 1 + i).some((out) =>
    mayComeOut(
      meeting,
      { male: meeting.male.id, female: meeting.female.id, in: night, out },
      problem,
    ),
  );
