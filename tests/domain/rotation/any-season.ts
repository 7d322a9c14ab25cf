import { chanceFrom } from '../../../demo-data/random.ts';
import type { AnimalId } from '../../../src/domain/core/ids.ts';
import type {
  PlanFemale,
  PlanMale,
  PlanProblem,
  PlanSnake,
  Visit,
} from '../../../src/domain/rotation/plan-problem.ts';
import { animalId } from '../../make-ids.ts';

/** How many of each there are; left out, a small room from the seed. */
export interface Size {
  readonly males: number;
  readonly females: number;
}

/**
 * An invented evening in the season, from a seed: males at home, resting, out and worn; females in and
 * out of their window, fed, in blue, visited; away evenings, pins and pairs kept apart. Every limit
 * stands in somebody's way in some seed.
 */
export function anySeason(seed: number, size?: Size): PlanProblem {
  const chance = chanceFrom(seed);
  const maybe = <Value>(probability: number, value: () => Value): Value | undefined =>
    chance.happens(probability) ? value() : undefined;
  const count = size ?? { males: chance.whole(1, 5), females: chance.whole(1, 10) };
  const nights = 14;
  const stayNights = chance.whole(1, 4);
  const betweenVisitsNights = chance.whole(2, 12);
  const mealToPairingNights = chance.whole(2, 5);
  const maleIds = Array.from({ length: count.males }, (_, i) => animalId(i + 1));
  const femaleIds = Array.from({ length: count.females }, (_, i) => animalId(100 + i));
  const away = Array.from({ length: nights + 6 }, (_, night) => night).filter(() =>
    chance.happens(0.15),
  );

  const snake = (id: AnimalId): PlanSnake => ({
    id,
    ate: maybe(0.5, () => -chance.whole(0, 10)),
    mealDue: maybe(0.5, () => chance.whole(0, 13)),
    clearFrom: maybe(0.1, () => chance.whole(1, 12)),
    apart: maybe(0.04, () => 'In quarantine.'),
  });
  const males = maleIds.map((id): PlanMale => ({
    ...snake(id),
    cameHome: maybe(0.5, () => -chance.whole(0, 8)),
    restNights: chance.whole(1, 7),
    stopped: maybe(0.06, () => 'Lost too much.'),
    lossOfStop: chance.whole(0, 10) / 10,
    lateVisits: chance.whole(0, 7),
    had: femaleIds.filter(() => chance.happens(0.15)).slice(0, 4),
    mostFemales: chance.whole(1, 6),
  }));
  const females = femaleIds.map((id): PlanFemale => {
    const from = maybe(0.2, () => chance.whole(0, 8)) ?? 0;
    return {
      ...snake(id),
      window: maybe(0.85, () => ({ from, before: from + chance.whole(1, 30) })),
      visitEnded: maybe(0.5, () => -chance.whole(0, 20)),
      overdueNights: chance.whole(0, 14),
      haste: chance.pick([1, 2, 3]),
    };
  });
  const wanted = femaleIds.flatMap((female) => {
    const first = chance.whole(0, maleIds.length - 1);
    return [...maleIds.slice(first), ...maleIds.slice(0, first)]
      .slice(0, chance.whole(1, 3))
      .map((male, choice) => ({
        male,
        female,
        choice,
        unreasoned: chance.happens(0.08) ? ['Half siblings.'] : [],
        barred: chance.happens(0.05),
      }));
  });
  const underWay: Visit[] = [];
  for (const male of maleIds) {
    const female = chance.pick(femaleIds as [AnimalId, ...AnimalId[]]);
    if (!chance.happens(0.25) || underWay.some((stay) => stay.female === female)) continue;
    underWay.push({ male, female, in: -chance.whole(0, 3), out: chance.whole(0, 3) });
  }
  const pins = wanted
    .filter(() => chance.happens(0.1))
    .map(({ male, female }): Visit => {
      const into = chance.whole(0, nights - 1);
      return { male, female, in: into, out: into + chance.whole(1, stayNights) };
    });
  return {
    limits: { nights, stayNights, mealToPairingNights, betweenVisitsNights },
    males,
    females,
    wanted,
    underWay,
    pins,
    away,
    kept: [],
  };
}
