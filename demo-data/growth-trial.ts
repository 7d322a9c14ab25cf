import { daysBetween } from '../src/domain/core/calendar.ts';
import { growthWindow } from '../src/domain/growth/window.ts';
import { defaultProtocol } from '../src/domain/protocol/values.ts';
import { window } from '../src/domain/windows/day-chances.ts';
import { grower, nightOfDay, type TrueCourse } from './growers.ts';
import { chanceFrom } from './random.ts';

// How often what is said of invented growers comes true.

/** What was said of one grower on one evening, and what came of it. */
export interface Asked {
  readonly kind: ReturnType<typeof growthWindow>['kind'];
  readonly weights: number;
  /** Chance that was given to its getting there in time, and whether it did. */
  readonly chanceWithin?: number | undefined;
  readonly gotThere: boolean;
  /** Whether the 80 % window held the day; of those that got there in time. */
  readonly isHeld?: boolean | undefined;
  /** Whether the day came after the window, where it was not held. */
  readonly isLate?: boolean | undefined;
  readonly width?: number | undefined;
  readonly daysAhead?: number | undefined;
}

export const targetOf = (sex: 'female' | 'male'): number => (sex === 'female' ? 1_500 : 500);

/** Asks once of each grower, on a random evening between its third weight and its target. */
export function growthTrial(seeds: readonly number[], course: TrueCourse): readonly Asked[] {
  const protocol = defaultProtocol;
  const within = protocol.growthWithinDays;
  return seeds.flatMap((seed) => {
    const animal = grower(seed, course);
    const chance = chanceFrom(seed + 1_000_003);
    const targetG = targetOf(animal.sex);
    const truth = animal.massG.findIndex((massG) => massG >= targetG);
    const until = truth < 0 ? 1_200 : Math.min(1_200, truth);
    const third = animal.readings[2]?.day ?? Infinity;
    if (third >= until) return [];
    const day = chance.whole(third, until - 1);
    const readings = animal.readings.filter((reading) => reading.day <= day).slice(-30);
    const said = growthWindow(targetG, readings, {
      sex: animal.sex,
      layings: [],
      tonight: nightOfDay(day),
      protocol,
    });
    const gotThere = truth >= 0 && truth <= day + within;
    const weights = 'weights' in said ? said.weights : readings.length;
    const chanceWithin = 'chanceWithin' in said ? said.chanceWithin : undefined;
    const asked = { kind: said.kind, weights, chanceWithin, gotThere };
    if (said.kind !== 'window' || !gotThere) return [asked];
    const { from, to } = window(said.chances);
    const night = nightOfDay(truth);
    return [
      {
        ...asked,
        isHeld: from <= night && night <= to,
        isLate: night > to,
        width: daysBetween(from, to) + 1,
        daysAhead: truth - day,
      },
    ];
  });
}
