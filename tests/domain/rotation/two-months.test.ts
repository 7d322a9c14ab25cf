import { describe, expect, test } from 'vitest';
import {
  bestPlanner,
  greedyPlanner,
  movesPerLockNight,
  tryRotation,
  visitsPerTenDays,
  type Trial,
} from '../../../demo-data/rotation-trial.ts';
import { highsSolver } from '../../../src/worker/planner/highs-solver.ts';

const SIZE = { males: 12, females: 40, nights: 60 };
// The weights of the objective were chosen on seeds 1 to 16; these had no part in it.
const SEEDS = [101, 102, 103, 104, 105, 106, 107, 108];

const together = (trials: readonly Trial[]): Trial => {
  const sum = (of: (trial: Trial) => number) => trials.reduce((all, each) => all + of(each), 0);
  return {
    visits: sum(({ visits }) => visits),
    moves: sum(({ moves }) => moves),
    lockNights: sum(({ lockNights }) => lockNights),
    readyNights: sum(({ readyNights }) => readyNights),
    broken: trials.flatMap(({ broken }) => broken),
    stays: trials.flatMap(({ stays }) => stays),
  };
};

/** Rest, pause and one place, read off what really happened; no plan and no checker is asked. */
function breachesIn({ stays }: Trial): number {
  const REST = 4;
  const PAUSE = 9;
  let found = 0;
  for (const a of stays) {
    for (const b of stays) {
      if (a === b || b.in < a.in) continue;
      if (a.male === b.male && b.in - a.out < REST) found += 1;
      if (a.female === b.female && b.in - a.out < PAUSE) found += 1;
    }
  }
  return found;
}

describe('two invented months with 12 males and 40 females: refusals, sheds, losses, evenings missed', () => {
  test('no advised move breaks a limit; a careful keeper by hand gives fewer visits for more moves', async () => {
    const solve = highsSolver();
    const best: Trial[] = [];
    const byHand: Trial[] = [];
    for (const seed of SEEDS) {
      best.push(await tryRotation(bestPlanner(solve), seed, SIZE));
      byHand.push(await tryRotation(greedyPlanner, seed, SIZE));
    }
    for (const trial of [...best, ...byHand]) {
      expect(trial.broken).toEqual([]);
      expect(breachesIn(trial)).toBe(0);
    }
    const [ours, theirs] = [together(best), together(byHand)];
    expect(ours.readyNights).toBe(theirs.readyNights);
    expect(visitsPerTenDays(ours)).toBeGreaterThanOrEqual(visitsPerTenDays(theirs));
    expect(movesPerLockNight(ours)).toBeLessThan(movesPerLockNight(theirs));
  }, 240_000);
});
