import type { RoomId } from '../src/domain/core/ids.ts';
import { defaultProtocol } from '../src/domain/protocol/values.ts';
import { bandsOf } from '../src/domain/room/band.ts';
import { logDrafts } from '../src/domain/room/log-drafts.ts';
import { presets } from '../src/domain/room/presets.ts';
import type { Programme } from '../src/domain/state/room-air.ts';
import type { Reading, Spot } from '../src/domain/state/readings.ts';
import type { Logbook } from './logbook.ts';
import type { Nights } from './nights.ts';
import { chanceFrom } from './random.ts';
import type { Scenario } from './scenario.ts';
import type { Rack } from './world.ts';

/** How long the sensors have been there, and how often they read. */
const SENSOR_NIGHTS = 45;
const EVERY_MIN = 15;
/** Of the way to what the thermostat asks for, how much air goes in that time. */
const FOLLOWS = 0.16;
const NOON_MIN = 12 * 60;
/** Before work, when the files are taken in. */
const MORNING_MIN = 8 * 60 + 25;
const tenth = (tempC: number): number => Math.round(tempC * 10) / 10;

/**
 * A room’s programme, and what two sensors and the keeper read of it up to the last morning: air that
 * follows its thermostat slowly, a battery that was empty for a day, a door left open one night.
 *
 * Written last and with chance of its own, so that the snakes’ lives do not hang on it.
 */
export function tellAir(
  room: RoomId,
  heated: Rack | undefined,
  book: Logbook,
  nights: Nights,
  { seed, offsetMin }: Pick<Scenario, 'seed' | 'offsetMin'>,
): void {
  const chance = chanceFrom(seed + 1);
  const [school] = presets;
  if (!school) return;
  const { name, dayFromMin, nightFromMin, steps } = school;
  const programme: Programme = { from: nights.day(0), name, dayFromMin, nightFromMin, steps };
  book.wait(nights.ms(nights.total, MORNING_MIN));
  book.pace(4);
  book.write(
    { type: 'room-programme-set', room, ...programme, steps: [...steps] },
    { atMs: nights.ms(0, 21 * 60), precision: 'day' },
  );

  const minuteAt = (night: number, minute: number): number =>
    Math.floor(nights.ms(night, minute) / 60_000);
  const first = Math.max(0, nights.total - SENSOR_NIGHTS);
  const [from, to] = [minuteAt(first, NOON_MIN), minuteAt(nights.total, MORNING_MIN - 20)];
  const emptyFrom = minuteAt(nights.total - 17, 9 * 60);
  const doorFrom = minuteAt(nights.total - 5, 22 * 60 + 30);

  function curve(spot: Spot): Reading[] {
    const bandAt = bandsOf([programme], spot, defaultProtocol);
    const readings: Reading[] = [];
    let tempC = bandAt(from + offsetMin).targetC ?? 25;
    for (let minute = from; minute <= to; minute += EVERY_MIN) {
      const askedC = bandAt(minute + offsetMin).targetC ?? tempC;
      const isOpen = spot === 'air' && minute > doorFrom && minute < doorFrom + 170;
      tempC += ((isOpen ? askedC - 4 : askedC) - tempC) * FOLLOWS + chance.between(-0.13, 0.13);
      if (minute > emptyFrom && minute < emptyFrom + 31 * 60) continue;
      const humidity = Math.round(62 - (tempC - 23) * 2.5 + chance.between(-2, 2));
      const humidityPercent = spot === 'air' ? humidity : undefined;
      readings.push({ minute, offsetMin, tempC: tenth(tempC), humidityPercent });
    }
    return readings;
  }

  const air = curve('air');
  const shelf = { spot: 'air', sensor: 'Shelf sensor' } as const;
  for (const draft of logDrafts({ room, ...shelf }, air, '°C')) book.write(draft);
  if (heated) {
    const mat = { spot: 'hot spot', rack: heated.id, sensor: 'Mat sensor' } as const;
    for (const draft of logDrafts({ room, ...mat }, curve('hot spot'), '°C')) book.write(draft);
  }
  for (let night = nights.total - 12; night < nights.total; night += chance.whole(1, 3)) {
    const minute = minuteAt(night, 23 * 60 + chance.whole(0, 40));
    const near = air.find((reading) => reading.minute >= minute);
    if (!near) continue;
    const tempC = tenth(near.tempC + chance.between(-0.4, 0.4));
    book.write(
      { type: 'room-read', room, spot: 'air', tempC },
      { atMs: minute * 60_000, precision: 'day' },
    );
  }
}
