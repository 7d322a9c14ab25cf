import { describe, expect, test } from 'vitest';
import { checkVisits } from '../../../src/domain/rotation/check-visits.ts';
import type { PlanProblem, Visit } from '../../../src/domain/rotation/plan-problem.ts';
import { meetingsOf, visitModel } from '../../../src/domain/rotation/visit-model.ts';
import { worthOf } from '../../../src/domain/rotation/visit-worth.ts';
import { highsSolver } from '../../../src/worker/planner/highs-solver.ts';
import { anySeason } from './any-season.ts';

const SEASONS = 150;
const NIGHTS = 6;
const solve = highsSolver();

/** Two males and three females over a few nights: every plan there is can be tried. */
function tinySeason(seed: number): PlanProblem {
  const season = anySeason(seed, { males: 2, females: 3 });
  const limits = { ...season.limits, nights: NIGHTS, stayNights: 2 };
  const interval = Math.min(limits.betweenVisitsNights, 3);
  const males = season.males.map((male) => ({ ...male, restNights: Math.min(2, male.restNights) }));
  return { ...season, males, limits: { ...limits, betweenVisitsNights: interval }, pins: [] };
}

/** The best of all plans that the checker lets pass, by trying each: it knows no rows. */
function bestByTrying(problem: PlanProblem): number {
  const single = meetingsOf(problem).flatMap((meeting) =>
    Array.from({ length: NIGHTS * 2 }, (_, i): Visit => {
      const into = Math.floor(i / 2);
      const { male, female } = meeting;
      return { male: male.id, female: female.id, in: into, out: into + 1 + (i % 2) };
    })
      .filter((visit) => checkVisits(problem, [visit]).length === 0)
      .map((visit) => ({ visit, worth: worthOf(meeting, visit, problem) })),
  );
  let best = 0;
  const tryFrom = (at: number, taken: readonly Visit[], worth: number): void => {
    best = Math.max(best, worth);
    for (const [i, { visit, worth: more }] of single.slice(at).entries()) {
      const next = [...taken, visit];
      if (checkVisits(problem, next).length === 0) tryFrom(at + i + 1, next, worth + more);
    }
  };
  tryFrom(0, [], 0);
  return best;
}

describe('seasons small enough to try every plan', () => {
  test('no plan that keeps the limits is worth more than the one the model gives', async () => {
    let planned = 0;
    for (let seed = 1_000; seed < 1_000 + SEASONS; seed += 1) {
      const problem = tinySeason(seed);
      const { worth } = await solve(visitModel(problem).model);
      expect(worth, `seed ${seed}`).toBe(bestByTrying(problem));
      if (worth > 0) planned += 1;
    }
    expect(planned).toBeGreaterThan(SEASONS / 2);
  }, 120_000);
});
