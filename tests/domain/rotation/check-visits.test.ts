import { describe, expect, test } from 'vitest';
import { checkVisits } from '../../../src/domain/rotation/check-visits.ts';
import type {
  PlanFemale,
  PlanMale,
  PlanProblem,
  Visit,
} from '../../../src/domain/rotation/plan-problem.ts';
import { animalId } from '../../make-ids.ts';

const he = animalId(1);
const she = animalId(2);
const other = animalId(3);

const male = (parts: Partial<PlanMale> = {}): PlanMale => ({
  id: he,
  restNights: 4,
  lossOfStop: 0,
  lateVisits: 0,
  had: [],
  mostFemales: 5,
  ...parts,
});
const female = (parts: Partial<PlanFemale> = {}): PlanFemale => ({
  id: she,
  window: { from: 0, before: 14 },
  overdueNights: 0,
  haste: 1,
  ...parts,
});
const problem = (parts: Partial<PlanProblem> = {}): PlanProblem => ({
  limits: { nights: 14, stayNights: 3, mealToPairingNights: 3, betweenVisitsNights: 9 },
  males: [male()],
  females: [female(), female({ id: other })],
  wanted: [she, other].map((id) => ({
    male: he,
    female: id,
    choice: 0,
    unreasoned: [],
    barred: false,
  })),
  underWay: [],
  pins: [],
  away: [],
  kept: [],
  ...parts,
});
const visit = (into: number, out: number, to = she): Visit => ({
  male: he,
  female: to,
  in: into,
  out,
});
const wanted = (parts: object) =>
  problem().wanted.map((pair) => (pair.female === she ? { ...pair, ...parts } : pair));

/** Each breaks one limit and no other: the numbers are the limits' own, one night too few. */
const planted: readonly (readonly [string, PlanProblem, readonly Visit[]])[] = [
  ['pairs that are wanted', problem({ wanted: [] }), [visit(0, 3)]],
  ['pairs that are wanted', problem({ wanted: wanted({ barred: true }) }), [visit(0, 3)]],
  ['asks for a reason', problem({ wanted: wanted({ unreasoned: ['Kin.'] }) }), [visit(0, 3)]],
  [
    'begins tonight or later',
    problem({ females: [female({ window: { from: -2, before: 14 } })] }),
    [visit(-1, 2)],
  ],
  ['stays at least one night', problem(), [visit(1, 5)]],
  ['stays at least one night', problem({ away: [2, 3, 4] }), [visit(1, 1)]],
  ['fetched sooner', problem(), [visit(0, 2)]],
  ['rests at home', problem(), [visit(0, 3), visit(6, 9, other)]],
  ['rests at home', problem({ males: [male({ cameHome: -1 })] }), [visit(2, 5)]],
  ['rests at home', problem({ underWay: [{ ...visit(-2, 1, other) }] }), [visit(4, 7)]],
  ['days of pause', problem({ females: [female({ visitEnded: -3 })] }), [visit(5, 8)]],
  ['days of pause', problem(), [visit(0, 3), visit(11, 14)]],
  ['eaten within', problem({ males: [male({ ate: -1 })] }), [visit(1, 4)]],
  ['eaten within', problem({ females: [female({ ate: 0 })] }), [visit(2, 5)]],
  ['meal that comes due', problem({ males: [male({ mealDue: 4 })] }), [visit(6, 9)]],
  [
    'meal that comes due',
    problem({ females: [female({ mealDue: 0 })], underWay: [] }),
    [visit(0, 3)],
  ],
  ['in blue', problem({ females: [female({ clearFrom: 5 })] }), [visit(4, 7)]],
  ['by itself', problem({ males: [male({ apart: 'In quarantine.' })] }), [visit(0, 3)]],
  ['lost too much', problem({ males: [male({ stopped: '14 % lost.' })] }), [visit(0, 3)]],
  ['only in her window', problem({ females: [female({ window: undefined })] }), [visit(0, 3)]],
  [
    'only in her window',
    problem({ females: [female({ window: { from: 0, before: 2 } })] }),
    [visit(0, 3)],
  ],
  ['no more females', problem({ males: [male({ mostFemales: 1, had: [other] })] }), [visit(0, 3)]],
  ['somebody is there', problem({ away: [0] }), [visit(0, 3)]],
  ['somebody is there', problem({ away: [3] }), [visit(0, 3)]],
];

describe('the checker of plans', () => {
  test('lets a plan that keeps the limits pass', () => {
    expect(checkVisits(problem(), [visit(0, 3), visit(7, 10, other)])).toEqual([]);
  });

  test.each(planted)('catches a planted breach: %s', (limit, with_, visits) => {
    const broken = checkVisits(with_, visits);
    expect(broken.map((each) => each.limit)).toContainEqual(expect.stringContaining(limit));
    expect(new Set(broken.map((each) => each.limit)).size).toBe(1);
  });

  test('catches two males with one female', () => {
    const second = animalId(4);
    const two = problem({
      males: [male(), male({ id: second })],
      wanted: [he, second].map((id) => ({
        male: id,
        female: she,
        choice: 0,
        unreasoned: [],
        barred: false,
      })),
    });
    const broken = checkVisits(two, [visit(0, 3), { ...visit(1, 4), male: second }]);
    expect(broken.map(({ limit }) => limit)).toContain('A snake is in one place at a time.');
  });
});
