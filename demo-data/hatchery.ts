import { addDays, daysBetween, roomNight } from '../src/domain/core/calendar.ts';
import { labelCode, LABEL_CODES } from '../src/domain/core/code.ts';
import type { AnimalId, DeviceId, IncubatorId } from '../src/domain/core/ids.ts';
import type { EventOf, RackEvent } from '../src/domain/events/event.ts';
import { openLogbook, type Logbook } from './logbook.ts';
import type { Nights } from './nights.ts';
import { chanceFrom, type Chance } from './random.ts';
import type { Scenario } from './scenario.ts';

/** The phone that lies beside the incubators. */
const DEVICE = 'DEM02' as DeviceId;
const SET_TO_C = 31.5;
const DAYS = 400;
/** How warm the room is when the heat fails. */
const ROOM_C = 25;

interface Young {
  readonly animal: AnimalId;
  readonly hatched: number;
  /** The night it was given its name. */
  readonly named: number;
}

interface Story {
  readonly laid: EventOf<'laid'>;
  readonly night: number;
  readonly males: readonly AnimalId[];
  /** Of the last clutch nobody wrote down who the father may be. */
  readonly isStated: boolean;
  readonly young: readonly Young[];
  /** The first pip, and the night all were out. */
  readonly pips: number;
  readonly out: number;
}

/**
 * What two incubators, their eggs and those who watched them came to, for the clutches of the last
 * year: written on a second phone, with chance of its own, so that the snakes' lives do not hang on it.
 */
export function tellHatchery(
  events: readonly RackEvent[],
  nights: Nights,
  scenario: Scenario,
): readonly RackEvent[] {
  const chance = chanceFrom(scenario.seed + 2);
  const book = openLogbook(scenario.offsetMin, chance, DEVICE);
  const stories = storiesIn(events, nights, chance);
  const [first] = stories;
  if (!first) return [];
  const [left, spare] = [book.minter.incubator(), book.minter.incubator()];
  const morning = (night: number) => nights.ms(night, 31 * 60);
  const evening = (night: number) => nights.ms(night, 22 * 60 + 20);
  book.pace(12);

  const begin = Math.max(1, first.night - 12);
  const end = Math.min(nights.total - 1, Math.max(...stories.map(({ out }) => out)) + 2);
  const failsOn = Math.min(end - 1, first.night + 24);
  let driftC = 0;

  book.wait(evening(begin));
  book.write({ type: 'incubator-made', incubator: left, name: 'Left', targetC: SET_TO_C });
  book.write({ type: 'incubator-made', incubator: spare, name: 'Old one', remark: 'Spare.' });
  const code = labelCode(chance.whole(0, LABEL_CODES - 1));
  book.write({
    type: 'label-assigned',
    code,
    to: { kind: 'incubator', incubator: left },
  });

  for (let night = begin; night < end; night += 1) {
    driftC = driftC * 0.9 + chance.between(-0.15, 0.15);
    book.wait(evening(night));
    if (night > begin) read(left, driftC, book, chance);
    for (const story of stories) watch(story, night, left, book, chance);
    if (night === failsOn) {
      book.write({ type: 'heat-failed', incubators: [left, spare], remark: 'Storm, no power.' });
    }
    book.wait(morning(night));
    if (night === failsOn) {
      const lowestC = ROOM_C + 0.5;
      book.write({ type: 'heat-back', incubators: [left, spare], lowestC });
    }
    if (night === failsOn + 3) logProbe(left, driftC, book, chance);
    if (chance.happens(0.85)) read(left, driftC, book, chance);
    for (const story of stories) lookForPips(story, night, book, nights);
  }
  book.wait(evening(end));
  book.write({ type: 'incubator-retired', incubator: spare, remark: 'Its door no longer shuts.' });
  return book.events;
}

const tenth = (tempC: number): number => Math.round(tempC * 10) / 10;

function read(incubator: IncubatorId, driftC: number, book: Logbook, chance: Chance): void {
  book.write({
    type: 'incubator-read',
    incubator,
    spot: 'egg level',
    tempC: tenth(SET_TO_C + driftC + chance.between(-0.2, 0.2)),
    humidityPercent: chance.whole(88, 96),
  });
}

/** The night's readings of a probe between the eggs, every quarter of an hour. */
function logProbe(incubator: IncubatorId, driftC: number, book: Logbook, chance: Chance): void {
  const readings = Array.from({ length: 32 }, (_, n): [number, number] => [
    n * 15,
    tenth(SET_TO_C + driftC + chance.between(-0.1, 0.1)),
  ]);
  const atMs = Math.floor(book.nowMs() / 60_000) * 60_000 - 8 * 3_600_000;
  book.write(
    { type: 'incubator-logged', incubator, spot: 'egg level', sensor: 'Egg probe', readings },
    { atMs, precision: 'day' },
  );
}

/** What is done in the evening with the eggs of one clutch. */
function watch(
  { laid, night: laidOn, males, isStated, out }: Story,
  night: number,
  incubator: IncubatorId,
  book: Logbook,
  chance: Chance,
): void {
  const { clutch, animal } = laid;
  const day = night - laidOn;
  if (night > out) return;
  if (day === 0) {
    const [first, ...others] = males;
    const sires = [
      { male: first ?? ('unknown' as const), grounds: 'locked' as const },
      ...others.map((male) => ({ male, grounds: 'together' as const })),
    ];
    if (isStated) book.write({ type: 'paternity-stated', animal, clutch, sires });
    book.write({ type: 'eggs-set', clutch, incubator, shelf: String(chance.whole(1, 3)) });
    book.write({ type: 'eggs-felt', animal, left: 'none' });
  }
  const good = laid.good ?? 0;
  if (day === 1) {
    const unsure = laid.unsure ?? 0;
    book.write({ type: 'eggs-checked', clutch, how: 'candled', good, unsure });
  }
  if (day > 1 && day < 50 && day % 7 === 3) book.write({ type: 'box-aired', clutch });
  if (day === 30 && chance.happens(0.4)) {
    const remark = 'A little dented. More damp round them, not on them.';
    book.write({ type: 'eggs-checked', clutch, how: 'looked', good, troubles: ['dented'], remark });
  }
}

/** What the morning look finds once eggs are due. */
function lookForPips(
  { laid: { clutch }, night: laidOn, young, pips, out }: Story,
  night: number,
  book: Logbook,
  nights: Nights,
): void {
  const notBeforeMs = nights.ms(night, 22 * 60 + 30);
  if (night >= laidOn + 52 && night < pips) {
    book.write({ type: 'hatching-seen', clutch, seen: 'nothing yet' });
  }
  if (night === pips) {
    const seen = { atMs: book.nowMs(), precision: 'between', notBeforeMs } as const;
    book.write({ type: 'hatching-seen', clutch, seen: 'pip', eggs: 1 }, seen);
  }
  for (const { animal, hatched, named } of young) {
    if (named !== night) continue;
    const outOn = { atMs: nights.ms(hatched, 31 * 60), precision: 'day' } as const;
    book.write({ type: 'hatched', animal, clutch, defects: [] }, outOn);
  }
  if (night === out) {
    book.write({ type: 'hatching-seen', clutch, seen: 'out' });
    book.write({ type: 'clutch-closed', clutch, why: 'all out' });
  }
}

/** Clutches of the last year that have hatched or will, with those of their young that have a name. */
function storiesIn(events: readonly RackEvent[], nights: Nights, chance: Chance): Story[] {
  const nightOf = ({ at }: RackEvent): number => daysBetween(nights.day(0), roomNight(at, 12));
  const hatchDays = new Map<AnimalId, number>();
  for (const event of events) {
    if (event.type !== 'arrived' || event.hatchedDay === undefined) continue;
    hatchDays.set(event.animal, daysBetween(nights.day(0), addDays(event.hatchedDay, 0)));
  }
  const last = events.findLast(({ type }) => type === 'laid');
  return events.flatMap((event): Story[] => {
    if (event.type !== 'laid') return [];
    const night = nightOf(event);
    if (nights.total - night > DAYS) return [];
    const pips = night + 56 + chance.whole(-2, 4);
    const young = events.flatMap((each): Young[] => {
      if (each.type !== 'parents-stated' || each.dam !== event.animal) return [];
      const hatched = hatchDays.get(each.animal) ?? -1;
      const isOfThese = hatched > night + 45 && hatched < night + 75;
      const named = nightOf(each);
      return isOfThese && hatched <= named ? [{ animal: each.animal, hatched, named }] : [];
    });
    const males = [
      ...new Set(
        events.flatMap((each) =>
          each.type === 'introduced' && each.female === event.animal && nightOf(each) > night - 250
            ? [each.male]
            : [],
        ),
      ),
    ];
    const out = Math.max(pips + 3, ...young.map(({ named }) => named));
    const isStated = event !== last;
    return [{ laid: event, night, males: males.slice(0, 4), isStated, young, pips, out }];
  });
}
