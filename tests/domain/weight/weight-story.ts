import { addDays, type Day, type Moment } from '../../../src/domain/core/calendar.ts';
import { defaultProtocol, type Protocol } from '../../../src/domain/protocol/values.ts';
import type { Laying } from '../../../src/domain/weight/laying.ts';
import {
  weightReadings,
  type WeightReading,
  type WeightSources,
} from '../../../src/domain/weight/reading.ts';
import { day, moment } from '../../make.ts';
import { eventId } from '../../make-ids.ts';

type Dated = readonly [date: string, massG: number];

export interface StoryParts {
  readonly masses: readonly Dated[];
  /** Meals eaten, or with another outcome. */
  readonly meals?: readonly (readonly [
    date: string,
    massG: number,
    outcome?: 'ate' | 'refused' | 'left' | 'partly',
  ])[];
  readonly sheds?: readonly string[];
  readonly hatched?: string;
  readonly layings?: readonly { readonly date: string; readonly clutchMassG?: number }[];
  readonly regurgitated?: readonly string[];
  readonly protocol?: Protocol;
}

/** What is on record of one animal's weight, ready for the functions that read it. */
export interface WeightStory {
  readonly sources: WeightSources;
  readonly readings: readonly WeightReading[];
  readonly layings: readonly Laying[];
  readonly sheds: readonly Day[];
  readonly protocol: Protocol;
}

export const nightOf = (at: Moment): Day => day(at.slice(0, 10));

const at = (date: string, hour: number): Moment => moment(`${date}T${hour}:00:00+00:00`);

/** On one day: eggs found, then weighed, then fed. */
export function aWeightStory({
  masses,
  meals = [],
  sheds = [],
  hatched,
  layings = [],
  regurgitated = [],
  protocol = defaultProtocol,
}: StoryParts): WeightStory {
  const sources: WeightSources = {
    weighings: masses.map(([date, massG], i) => ({ id: eventId(i + 1), at: at(date, 20), massG })),
    offers: meals.map(([date, eachG, outcome = 'ate'], i) => ({
      id: eventId(1_000 + i),
      at: at(date, 21),
      prey: { kind: 'rat', size: 'one', eachG, count: 1, state: 'thawed' },
      outcome,
    })),
    regurgitations: regurgitated.map((date) => at(date, 22)),
    hatchedDay: hatched === undefined ? undefined : day(hatched),
  };
  return {
    sources,
    readings: weightReadings(sources, nightOf, protocol),
    layings: layings.map(({ date, clutchMassG }) => ({ at: at(date, 19), clutchMassG })),
    sheds: sheds.map(day),
    protocol,
  };
}

export const START = day('2026-01-01');

/** Weights by days from the first, with offers refused all the while, so that its gut is known to be empty. */
export const emptyGutStory = (
  masses: readonly (readonly [days: number, massG: number])[],
  more: Omit<Partial<StoryParts>, 'masses'> = {},
): WeightStory =>
  aWeightStory({
    masses: masses.map(([days, massG]) => [addDays(START, days), massG]),
    meals: [
      [addDays(START, -40), 50],
      [addDays(START, -12), 50, 'refused'],
    ],
    ...more,
  });
