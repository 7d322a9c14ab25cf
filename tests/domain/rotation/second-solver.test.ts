import { describe, expect, test } from 'vitest';
import { isProvenBest } from '../../../src/domain/rotation/linear-model.ts';
import { visitModel, visitsTaken } from '../../../src/domain/rotation/visit-model.ts';
import { checkVisits } from '../../../src/domain/rotation/check-visits.ts';
import { highsSolver } from '../../../src/worker/planner/highs-solver.ts';
import { anySeason } from './any-season.ts';
import { greatestWorth } from './second-solver.ts';

const SEASONS = 240;
const seeds = Array.from({ length: SEASONS }, (_, i) => i + 1);
const solve = highsSolver();

describe('240 invented seasons, by two solvers that share no code', () => {
  test('the plan is worth what GLPK finds, is proven best, and breaks no limit', async () => {
    let visits = 0;
    for (const seed of seeds) {
      const problem = anySeason(seed);
      const built = visitModel(problem);
      const solved = await solve(built.model);
      const planned = visitsTaken(built, solved.values);
      const second = await greatestWorth(built.model);
      expect(Math.abs(solved.worth - second), `seed ${seed}`).toBeLessThanOrEqual(1e-6);
      expect(isProvenBest(solved), `seed ${seed}`).toBe(true);
      expect(checkVisits(problem, planned), `seed ${seed}`).toEqual([]);
      visits += planned.length;
    }
    // Seasons in which nothing can be planned would prove nothing.
    expect(visits).toBeGreaterThan(SEASONS);
  }, 120_000);

  test('a pin that can hold is in the plan, and the others are named', async () => {
    let held = 0;
    let broken = 0;
    for (const seed of seeds) {
      const problem = anySeason(seed);
      const built = visitModel(problem);
      const { values } = await solve(built.model);
      const planned = visitsTaken(built, values);
      for (const pin of problem.pins) {
        const isBroken = built.brokenPins.includes(pin);
        if (isBroken) broken += 1;
        else held += 1;
        expect(isBroken || planned.some((visit) => isSame(visit, pin)), `seed ${seed}`).toBe(true);
      }
    }
    expect(held).toBeGreaterThan(20);
    expect(broken).toBeGreaterThan(20);
  }, 120_000);
});

const isSame = (a: object, b: object): boolean => JSON.stringify(a) === JSON.stringify(b);
