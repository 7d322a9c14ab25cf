import type { RackEvent } from '../src/domain/events/event.ts';
import { tellAir } from './air.ts';
import { growUp, welcome } from './arrivals.ts';
import { castOf } from './cast.ts';
import { tellEpisode } from './episodes.ts';
import { tellHatchery } from './hatchery.ts';
import { openLogbook, type Logbook } from './logbook.ts';
import { nightsUpTo } from './nights.ts';
import { openNursery } from './nursery.ts';
import { chanceFrom } from './random.ts';
import { furnish } from './room.ts';
import { tellRotation } from './rotation.ts';
import { moveMales } from './pairing.ts';
import { tellSales } from './sales.ts';
import { tellPantry } from './pantry.ts';
import { liveOneDay } from './growth.ts';
import { watchQuarantine } from './quarantine.ts';
import { doEvening, doMorning } from './round.ts';
import type { Scenario } from './scenario.ts';
import { changeWater } from './upkeep.ts';
import type { Snake, World } from './world.ts';

/** How many bowls are refilled and written down in a night, given the records made so far. */
export type WaterHabit = (book: Logbook, night: number, tubs: number) => number;

/** A rack's worth of bowls, now and then. */
const nowAndThen: WaterHabit = (_, night, tubs) => (night % 10 === 3 ? Math.ceil(tubs / 3) : 0);

const DAYS_PER_YEAR = 365.25;

/** Seconds for a record: unhurried in a small room, brisk in one of a thousand tubs. */
const paceFor = (animals: number): number => Math.min(160, 20_000 / animals);

/**
 * The events of an invented collection, sorted by time of logging, as if the keeper is about to
 * start the round of the last night.
 */
export function simulate(scenario: Scenario): RackEvent[] {
  const { lastNight, years, offsetMin } = scenario;
  const nights = nightsUpTo(lastNight, Math.round(years * DAYS_PER_YEAR), offsetMin);
  const events = simulateSnakes(scenario, nowAndThen);
  return [
    ...events,
    ...tellHatchery(events, nights, scenario),
    ...tellPantry(events, nights, scenario),
    ...tellSales(events, nights, scenario),
  ].toSorted((a, b) => (a.id < b.id ? -1 : 1));
}

/** The same without what is written beside the incubators. */
export function simulateSnakes(scenario: Scenario, waterHabit: WaterHabit): RackEvent[] {
  const { seed, lastNight, offsetMin, animals, years } = scenario;
  const total = Math.round(years * DAYS_PER_YEAR);
  const chance = chanceFrom(seed);
  const nights = nightsUpTo(lastNight, total, offsetMin);
  const book = openLogbook(offsetMin, chance);
  const nursery = openNursery(seed);

  book.wait(nights.ms(0, 14 * 60));
  const rooms = furnish(animals, book, chance);
  const toCome = castOf({ animals, total, lastMonth: nights.month(total) }, chance).toSorted(
    (a, b) => a.arrivesOn - b.arrivesOn,
  );
  let snakes: Snake[] = [];
  let nextBowl = 0;

  for (let night = 0; night < total; night += 1) {
    const month = nights.month(night);
    const world: World = {
      book,
      chance,
      nights,
      nursery,
      night,
      month,
      toGo: total - night,
      snakes,
    };

    if (night > 0) book.wait(nights.ms(night, 21 * 60 + 30 + chance.whole(0, 155)));
    while ((toCome[0]?.arrivesOn ?? Infinity) <= night) {
      const casting = toCome.shift();
      const snake = casting && welcome(casting, rooms, world);
      if (snake) snakes.push(snake);
    }
    book.pace(paceFor(animals));
    for (const snake of snakes) {
      growUp(snake, rooms, world);
      watchQuarantine(snake, rooms, world);
    }
    snakes.sort((a, b) => a.tub.turn - b.tub.turn);

    doEvening(world);
    moveMales(world);
    nursery.count(world);
    tellEpisode(world, rooms);
    tellRotation(world);
    nextBowl = changeWater(waterHabit(book, night, snakes.length), nextBowl, world);
    doMorning(world);
    snakes = snakes.filter(({ casting }) => casting.leaves?.night !== night);
    for (const snake of snakes) liveOneDay(snake, night);
  }
  tellAir(rooms.snakeRoom, rooms.tubs.adults[0]?.rack, book, nights, scenario);
  return book.events;
}
