import { addDays, daysBetween, monthOf, type Day } from '../core/calendar.ts';
import { notGrown } from '../season/fitness.ts';
import type { LastScan, Standing } from '../season/standing.ts';
import type { Animal } from '../state/animal.ts';
import { agoWords, daysWords } from '../core/day-words.ts';
import { digesting } from './digesting.ts';
import { feedingBlock } from './feeding-block.ts';
import { passedOn } from './passed.ts';
import type { RoomFacts, Rule } from './rule.ts';

/** Days to the next scan, by what the last one found. */
function cadence({ mm }: LastScan, { protocol }: RoomFacts): number {
  if (mm === undefined || mm < protocol.pairFromMm) return protocol.scanSmallDays;
  return mm < protocol.largeFromMm ? protocol.scanGrowingDays : protocol.scanLargeDays;
}

/** The 25th of the month in which first scans begin, before tonight, if it is not spring yet. */
function openingNight({ night, protocol }: RoomFacts): Day | undefined {
  const month = protocol.firstScanMonth;
  const year = Number(night.slice(0, 4)) - (monthOf(night) <= 3 ? 1 : 0);
  const opening = `${year}-${String(month).padStart(2, '0')}-25` as Day;
  return monthOf(night) <= 3 || night >= opening ? opening : undefined;
}

/** Stages in which a look at the follicles says something. */
const scanned: readonly Standing['stage'][] = ['resting', 'building', 'resorbing'];

export const scanDue: Rule = {
  id: 'S1',
  says: 'Scan a female that may breed at the start of the season, then the oftener the larger her follicles.',
  source: 'scanCadence',
  check(animal, room) {
    if (animal.sex !== 'female') return undefined;
    const standing = room.standing(animal);
    if (!standing || !scanned.includes(standing.stage)) return undefined;
    const scan = standing.now?.scan;
    const planned = scan ? nextScan(scan, room) : firstScan(animal, room);
    if (!planned) return undefined;
    const passed = passedOn(animal, 'S1', room);
    const due =
      passed !== undefined && passed >= planned.due
        ? addDays(passed, scan ? cadence(scan, room) : room.protocol.scanSmallDays)
        : planned.due;
    if (due > room.night) return undefined;
    return {
      act: 'scan',
      asks: scan ? 'Scan again' : 'First scan of the season',
      due,
      state: daysBetween(due, room.night) >= 7 ? 'overdue' : 'due',
      alarm: false,
      blocked:
        feedingBlock(animal, room) ?? digesting(animal, room.protocol.mealToHandlingDays, room),
      because: planned.because,
      records: scan ? [scan.id] : [],
    };
  },
};

interface Planned {
  readonly due: Day;
  readonly because: readonly string[];
}

function nextScan(scan: LastScan, room: RoomFacts): Planned {
  const every = cadence(scan, room);
  const what = scan.mm === undefined ? 'no follicle seen' : `${scan.mm} mm`;
  return {
    due: addDays(scan.night, every),
    because: [
      `Last scan ${agoWords(scan.night, room.night)}: ${what}.`,
      `At that size you scan every ${daysWords(every)}.`,
    ],
  };
}

function firstScan(animal: Animal, room: RoomFacts): Planned | undefined {
  const opening = openingNight(room);
  if (opening === undefined || notGrown(animal, room).length > 0) return undefined;
  return {
    due: opening,
    because: ['No scan on record this season.', 'She has the mass and the years you ask for.'],
  };
}
