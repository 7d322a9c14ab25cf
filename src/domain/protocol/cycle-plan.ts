import { monthOf, type Day } from '../core/calendar.ts';
import type { Animal } from '../state/animal.ts';
import { feedingClass, type FeedingClass } from './feeding-class.ts';
import type { Protocol, ProtocolKey } from './values.ts';

/** What a row of the plan looks at besides class and month: where a female stands in her season. */
export type CycleStage = 'building' | 'recovering' | 'laid';

/** How one class is fed in one part of the year. The first row that fits holds. */
export interface CycleRow {
  readonly id: string;
  readonly class: FeedingClass;
  /** Only one whose sex is known to be this. */
  readonly sex?: 'female' | 'male';
  readonly stages?: readonly CycleStage[];
  /** Months as in the north; absent: all year. */
  readonly months?: readonly number[];
  readonly everyDays: ProtocolKey;
  /** Of the usual meal by body mass; absent: all of it. */
  readonly portion?: ProtocolKey;
  /** As it stands after "Fed as". */
  readonly words: string;
}

const SEASON_OF_MALES = [10, 11, 12, 1, 2, 3];
const SEASON_OF_FEMALES = [8, 9, 10, 11, 12, 1, 2, 3];

/**
 * The year's plan: hatchlings are never cut back; females are kept in summer and fed up into the season, males the
 * other way round; one that builds follicles gets smaller meals, one that laid is fed back. Sources: feedingRhythm, feedingUp.
 */
export const cyclePlan: readonly CycleRow[] = [
  { id: 'hatchling', class: 'hatchling', everyDays: 'feedHatchlingDays', words: 'a hatchling' },
  { id: 'grower', class: 'grower', everyDays: 'feedGrowerDays', words: 'a grower' },
  {
    id: 'male in season',
    class: 'male',
    months: SEASON_OF_MALES,
    everyDays: 'feedMaleSeasonDays',
    portion: 'maleSeasonPortion',
    words: 'an adult male in the season',
  },
  { id: 'male', class: 'male', everyDays: 'feedMaleDays', words: 'an adult male in summer' },
  {
    id: 'after eggs',
    class: 'female',
    sex: 'female',
    stages: ['recovering', 'laid'],
    everyDays: 'feedRecoveringDays',
    words: 'a female fed back after her eggs',
  },
  {
    id: 'building',
    class: 'female',
    sex: 'female',
    stages: ['building'],
    everyDays: 'feedFemaleSeasonDays',
    portion: 'buildingPortion',
    words: 'a female that builds follicles',
  },
  {
    id: 'fed up',
    class: 'female',
    sex: 'female',
    months: SEASON_OF_FEMALES,
    everyDays: 'feedFemaleSeasonDays',
    words: 'an adult female in the season',
  },
  { id: 'kept', class: 'female', everyDays: 'feedFemaleDays', words: 'an adult on maintenance' },
];

/** The month of a night as it would be called in the north, 1 to 12. */
export const northernMonth = (night: Day, { yearShiftMonths }: Protocol): number =>
  ((monthOf(night) - 1 - yearShiftMonths + 24) % 12) + 1;

/** October to March in the north: cool nights, pairing, slow appetites of males. */
export const isSeasonOfMales = (night: Day, protocol: Protocol): boolean =>
  SEASON_OF_MALES.includes(northernMonth(night, protocol));

/** The row that holds for an animal on a night; `stage` is where it stands in its season. */
export function cycleRow(
  animal: Animal,
  night: Day,
  protocol: Protocol,
  stage: string | undefined,
): CycleRow {
  const kind = feedingClass(animal, night, protocol);
  const month = northernMonth(night, protocol);
  const row = cyclePlan.find(
    (each) =>
      each.class === kind &&
      (each.sex === undefined || each.sex === animal.sex) &&
      (each.stages === undefined || each.stages.some((one) => one === stage)) &&
      (each.months === undefined || each.months.includes(month)),
  );
  return row ?? LAST;
}

/** Each class has a row without conditions; this is the one of grown animals. */
const LAST: CycleRow = {
  id: 'kept',
  class: 'female',
  everyDays: 'feedFemaleDays',
  words: 'an adult on maintenance',
};

/** Days from one weighing to the next. */
export function weighingInterval(animal: Animal, night: Day, protocol: Protocol): number {
  const kind = feedingClass(animal, night, protocol);
  return kind === 'hatchling' || (kind === 'male' && isSeasonOfMales(night, protocol))
    ? protocol.weighOftenDays
    : protocol.weighDays;
}
