import type { Day } from '../src/domain/core/calendar.ts';
import type { RackEvent } from '../src/domain/events/event.ts';
import { tellHatchery } from './hatchery.ts';
import { nightsUpTo } from './nights.ts';
import type { Scenario } from './scenario.ts';
import { simulateSnakes } from './simulate.ts';

// Without water bowls this simulator writes about 0.18 records for each animal and night. The bowls
// make up the rest, as in a room where each of them is written down, once every week or so.
const RECORDS_PER_ANIMAL_NIGHT = 0.32;
const DAYS_PER_YEAR = 365.25;

/** A history of exactly so many events, for measuring. It ends like the demo does. */
export function simulateLarge(
  targetEvents: number,
  animals: number,
  seed: number,
  lastNight: Day,
  offsetMin: number,
): RackEvent[] {
  const years = targetEvents / (animals * RECORDS_PER_ANIMAL_NIGHT) / DAYS_PER_YEAR;
  const scenario = { seed, lastNight, offsetMin, animals, years };
  return simulateFilled(targetEvents, scenario).slice(0, targetEvents);
}

/** So many years with about so many events, the eggs and what hatched of them on top. */
export function simulateDecade(targetEvents: number, scenario: Scenario): RackEvent[] {
  const { lastNight, years, offsetMin } = scenario;
  const events = simulateFilled(targetEvents, scenario);
  const nights = nightsUpTo(lastNight, Math.round(years * DAYS_PER_YEAR), offsetMin);
  return [...events, ...tellHatchery(events, nights, scenario)];
}

/** With as many bowls as are needed to come to so many events. */
function simulateFilled(targetEvents: number, scenario: Scenario): RackEvent[] {
  const nights = Math.round(scenario.years * DAYS_PER_YEAR);
  return simulateSnakes(scenario, (book, night) => {
    const wanted = Math.round((targetEvents * (night + 1)) / nights);
    return Math.max(0, wanted - book.events.length);
  });
}
