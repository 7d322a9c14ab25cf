import type { AnimalId } from '../src/domain/core/ids.ts';
import { nextHome } from '../src/domain/rotation/bars.ts';
import { checkVisits, type Broken } from '../src/domain/rotation/check-visits.ts';
import type { Solve } from '../src/domain/rotation/linear-model.ts';
import type { PlanProblem, Visit } from '../src/domain/rotation/plan-problem.ts';
import { visitModel, visitsTaken } from '../src/domain/rotation/visit-model.ts';
import { openRotationWorld } from './rotation-world.ts';

/** From the facts of an evening to the visits to begin that evening, and those to come. */
export type Planner = (problem: PlanProblem) => Promise<readonly Visit[]>;

export interface Trial {
  readonly visits: number;
  /** Every time a male is carried, in or out. */
  readonly moves: number;
  /** Nights that a male was with a female in her window: each may bring a lock. */
  readonly lockNights: number;
  /** Nights of females in their window. */
  readonly readyNights: number;
  /** What an advised move broke, by the independent checker. */
  readonly broken: readonly Broken[];
  /** All stays as they were, with nights of the trial. */
  readonly stays: readonly Visit[];
}

/** The best plan of each evening, which keeps what it can of the one before. */
export const bestPlanner =
  (solve: Solve): Planner =>
  async (problem) => {
    const built = visitModel(problem);
    return visitsTaken(built, (await solve(built.model)).values);
  };

/**
 * What a careful keeper does by hand: the most overdue female first, her first choice if he may go,
 * else a reserve, for the longest stay that somebody can end. No limit is broken, and nothing is
 * thought of beyond tonight.
 */
export const greedyPlanner: Planner = (problem) => {
  const begun: Visit[] = [];
  const order = problem.females.toSorted(
    (a, b) => b.overdueNights - a.overdueNights || b.haste - a.haste,
  );
  for (const { id: female } of order) {
    const males = problem.wanted
      .filter((pair) => pair.female === female)
      .toSorted((a, b) => a.choice - b.choice);
    const stays = Array.from({ length: problem.limits.stayNights }, (_, i) => i + 1).toReversed();
    const visit = males
      .flatMap(({ male }) => stays.map((out): Visit => ({ male, female, in: 0, out })))
      .find((each) => checkVisits(problem, [...begun, each]).length === 0);
    if (visit) begun.push(visit);
  }
  return Promise.resolve(begun);
};

/** Lets a planner share the males through an invented season, evening by evening. */
export async function tryRotation(
  planner: Planner,
  seed: number,
  size: Readonly<Record<'males' | 'females' | 'nights', number>>,
): Promise<Trial> {
  const world = openRotationWorld(seed, size);
  const done: Visit[] = [];
  const broken: Broken[] = [];
  let stays: readonly Visit[] = [];
  let kept: readonly Visit[] = [];
  let [moves, lockNights, readyNights] = [0, 0, 0];
  for (let night = 0; night < world.nights; night += 1) {
    const isHome = !world.isAway(night) && !world.isMissed(night);
    readyNights += world.females.filter((id) => world.isReady(id, night)).length;
    stays = stays.map((stay) => ({ ...stay, out: due(stay, night) }));
    if (isHome) {
      const over = stays.filter(({ out }) => out <= night);
      for (const stay of over) {
        world.end(stay, night);
        done.push({ ...stay, out: night });
        moves += 1;
      }
      stays = stays.filter((stay) => !over.includes(stay));
    }
    const out = new Set<AnimalId>(stays.flatMap(({ male, female }) => [male, female]));
    world.live(night, out, isHome);
    if (isHome) {
      const problem = world.problem(night, stays, kept);
      const plan = await planner(problem);
      const tonight = plan.filter((visit) => visit.in === 0);
      broken.push(...checkVisits(problem, tonight));
      kept = plan.map((visit) => ({ ...visit, in: visit.in + night, out: visit.out + night }));
      for (const visit of kept.filter((each) => each.in === night)) {
        world.begin(visit);
        stays = [...stays, visit];
        moves += 1;
      }
    }
    lockNights += stays.filter(({ female }) => world.isReady(female, night)).length;
  }
  return {
    visits: done.length + stays.length,
    moves,
    lockNights,
    readyNights,
    broken,
    stays: done,
  };

  /** A stay that is over because she ovulated, or whose evening was missed, ends on the next one at home. */
  function due({ female, out }: Visit, night: number): number {
    const isOver = !world.isReady(female, night);
    if (!isOver && out > night) return out;
    const away = Array.from({ length: 40 }, (_, i) => i).filter((i) => world.isAway(night + i));
    return night + nextHome(0, away);
  }
}

/** Visits for each female in her window in ten days. */
export const visitsPerTenDays = ({ visits, readyNights }: Trial): number =>
  (visits / readyNights) * 10;

export const movesPerLockNight = ({ moves, lockNights }: Trial): number => moves / lockNights;
