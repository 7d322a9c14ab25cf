import type { PlanProblem, Visit } from './plan-problem.ts';

/** A limit that a list of visits breaks, and with which of them. */
export interface Broken {
  readonly limit: string;
  readonly visit: Visit;
}

/**
 * Holds visits against the limits, each read as its sentence says and nothing else. It shares no code
 * with what makes the plan: neither can hide the other's mistake.
 */
export function checkVisits(problem: PlanProblem, planned: readonly Visit[]): readonly Broken[] {
  return sentences.flatMap(([limit, isBroken]) =>
    planned.filter((visit) => isBroken(visit, planned, problem)).map((visit) => ({ limit, visit })),
  );
}

type IsBroken = (visit: Visit, planned: readonly Visit[], problem: PlanProblem) => boolean;

const maleOf = (visit: Visit, { males }: PlanProblem) => males.find(({ id }) => id === visit.male);
const femaleOf = (visit: Visit, { females }: PlanProblem) =>
  females.find(({ id }) => id === visit.female);
const bothOf = (visit: Visit, problem: PlanProblem) => [
  maleOf(visit, problem),
  femaleOf(visit, problem),
];
/** All other visits, begun or planned. */
const others = (visit: Visit, planned: readonly Visit[], { underWay }: PlanProblem) =>
  [...underWay, ...planned].filter((each) => each !== visit);

const sentences: readonly (readonly [string, IsBroken])[] = [
  [
    'Only pairs that are wanted, and that the keeper does not keep apart, meet.',
    (visit, _, { wanted }) =>
      !wanted.some(
        ({ male, female, barred }) => male === visit.male && female === visit.female && !barred,
      ),
  ],
  [
    'A pair that asks for a reason has one on record.',
    (visit, _, { wanted }) =>
      wanted.some(
        ({ male, female, unreasoned }) =>
          male === visit.male && female === visit.female && unreasoned.length > 0,
      ),
  ],
  [
    'A visit begins tonight or later, within the nights of the plan.',
    (visit, _, { limits }) => visit.in < 0 || visit.in >= limits.nights,
  ],
  [
    'A male stays at least one night and no longer than the keeper lets him.',
    (visit, _, { limits }) => visit.out - visit.in < 1 || visit.out - visit.in > limits.stayNights,
  ],
  [
    'He is not fetched sooner than the keeper’s stay, but for a pin, an evening away or the end of her window.',
    (visit, _, problem) => {
      const { limits, away, pins } = problem;
      const isPinned = pins.some(
        (pin) =>
          pin.male === visit.male &&
          pin.female === visit.female &&
          pin.in === visit.in &&
          pin.out === visit.out,
      );
      const end = Math.min(
        visit.in + limits.stayNights,
        femaleOf(visit, problem)?.window?.before ?? Infinity,
      );
      const later = Array.from({ length: limits.stayNights }, (_night, i) => visit.out + 1 + i);
      return !isPinned && later.some((night) => night <= end && !away.includes(night));
    },
  ],
  [
    'A snake is in one place at a time.',
    (visit, planned, problem) =>
      others(visit, planned, problem).some(
        (other) =>
          (other.male === visit.male || other.female === visit.female) &&
          visit.in < other.out &&
          other.in < visit.out,
      ),
  ],
  [
    'He rests at home between two visits.',
    (visit, planned, problem) => {
      const he = maleOf(visit, problem);
      const rest = he?.restNights ?? 0;
      const cameHome = he?.cameHome ?? -Infinity;
      return (
        visit.in - cameHome < rest ||
        others(visit, planned, problem).some(
          (other) =>
            other.male === visit.male && other.in <= visit.in && visit.in - other.out < rest,
        )
      );
    },
  ],
  [
    'She has the keeper’s days of pause between two visits.',
    (visit, planned, problem) => {
      const pause = problem.limits.betweenVisitsNights;
      const ended = femaleOf(visit, problem)?.visitEnded ?? -Infinity;
      return (
        visit.in - ended < pause ||
        others(visit, planned, problem).some(
          (other) =>
            other.female === visit.female && other.in <= visit.in && visit.in - other.out < pause,
        )
      );
    },
  ],
  [
    'Neither has eaten within the days before he goes in.',
    (visit, _, problem) =>
      bothOf(visit, problem).some(
        (snake) =>
          snake?.ate !== undefined && visit.in - snake.ate < problem.limits.mealToPairingNights,
      ),
  ],
  [
    'A meal that comes due is given that evening, or after the visit it falls in, and is rested upon.',
    (visit, planned, problem) =>
      bothOf(visit, problem).some((snake) => {
        if (snake?.mealDue === undefined) return false;
        const { id, mealDue } = snake;
        const during = others(visit, planned, problem).filter(
          (other) =>
            (other.male === id || other.female === id) &&
            other.in <= mealDue &&
            mealDue <= other.out,
        );
        const given = Math.max(mealDue, ...during.map(({ out }) => out));
        return visit.in >= given && visit.in < given + problem.limits.mealToPairingNights;
      }),
  ],
  [
    'Neither is in blue when he goes in.',
    (visit, _, problem) =>
      bothOf(visit, problem).some((snake) => visit.in < (snake?.clearFrom ?? -Infinity)),
  ],
  [
    'A snake that is to be by itself is.',
    (visit, _, problem) => bothOf(visit, problem).some((snake) => snake?.apart !== undefined),
  ],
  [
    'A male that lost too much mass is not used.',
    (visit, _, problem) => maleOf(visit, problem)?.stopped !== undefined,
  ],
  [
    'He is with her only in her window.',
    (visit, _, problem) => {
      const window = femaleOf(visit, problem)?.window;
      return !window || visit.in < window.from || visit.out > window.before;
    },
  ],
  [
    'A male has no more females in a season than the keeper gives him.',
    (visit, planned, problem) => {
      const he = maleOf(visit, problem);
      if (!he || he.had.includes(visit.female)) return false;
      const fresh = planned.filter((each) => each.male === he.id).map((each) => each.female);
      return new Set([...he.had, ...fresh]).size > he.mostFemales;
    },
  ],
  [
    'Males are moved only on evenings when somebody is there.',
    (visit, _, { away }) => away.includes(visit.in) || away.includes(visit.out),
  ],
];
