import type { Day } from '../src/domain/core/calendar.ts';

/** What an invented collection is made from. The same scenario gives the same events. */
export interface Scenario {
  readonly seed: number;
  /** The room night the history ends on: its evening round has not been done yet. */
  readonly lastNight: Day;
  /** Minutes that local time is ahead of UTC, kept all through: no summer time in this room. */
  readonly offsetMin: number;
  /** How many animals live there on the last night. */
  readonly animals: number;
  readonly years: number;
}

/** The collection shown to whoever wants a look before starting an own one. */
export const demoScenario = (lastNight: Day, offsetMin: number): Scenario => ({
  seed: 7,
  lastNight,
  offsetMin,
  animals: 46,
  years: 2,
});
