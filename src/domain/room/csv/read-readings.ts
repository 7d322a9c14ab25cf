import { celsiusOf } from '../../core/units.ts';
import type { Reading } from '../../state/readings.ts';
import { readNumber, timeText, type ColumnMap } from './columns.ts';
import { lineWords } from '../../csv/line-words.ts';
import { readTime } from '../../csv/read-time.ts';
import type { CsvRow } from '../../csv/split-csv.ts';
import { createWallReader, type Zone } from '../../csv/wall-clock.ts';

/** Lines left out, and why. Every one of them is named. */
export interface Rejected {
  readonly reason: string;
  readonly count: number;
  /** "12, 40–44" */
  readonly lines: string;
  /** What stands there, in the first of them. */
  readonly example: string;
}

export interface ReadFile {
  /** In order of time. */
  readonly readings: readonly Reading[];
  readonly rejected: readonly Rejected[];
  /** Readings in the hour that clocks went through twice, told apart by their order in the file. */
  readonly inRepeatedHour: number;
  /** Whether any time was read by this device's zone, because the file names none. */
  readonly usesZone: boolean;
}

const FUTURE_SLACK_MS = 5 * 60_000;
const [COLDEST_C, WARMEST_C] = [-30, 70];

/** To 0.01 °C, finer than any sensor: a tenth of °F can be had back from it. */
const rounded = (tempC: number): number => Math.round(tempC * 100) / 100;

/**
 * The readings of a file's rows.
 *
 * A time without an offset is read by the device's zone. In the hour that comes twice, readings are
 * told apart by their order; an hour that never was holds no reading, and its lines are named.
 */
export function readReadings(
  rows: readonly CsvRow[],
  map: ColumnMap,
  zone: Zone,
  nowMs: number,
): ReadFile {
  const meaning = createWallReader(zone);
  const rejected = createRejections();
  const byMinute = new Map<number, Reading>();
  let inRepeatedHour = 0;
  let usesZone = false;
  let lastMs = -Infinity;

  for (const row of isNewestFirst(rows, map) ? rows.toReversed() : rows) {
    const cell = row.cells[map.temp] ?? '';
    const when = timeText(row, map);
    const time = readTime(when, map.order);
    if (!time) {
      rejected.add(row, when.trim() === '' ? 'no time' : 'time not understood', when);
      continue;
    }
    const value = readNumber(cell);
    if (value === undefined) {
      rejected.add(row, cell.trim() === '' ? 'no temperature' : 'temperature is no number', cell);
      continue;
    }
    const tempC = map.unit === '°F' ? rounded(celsiusOf(value)) : value;
    if (tempC < COLDEST_C || tempC > WARMEST_C) {
      rejected.add(row, `under ${COLDEST_C} °C or over ${WARMEST_C} °C`, cell);
      continue;
    }
    let ms: number | undefined;
    if (time.offsetMin === undefined) {
      usesZone = true;
      const { instants } = meaning(time.wallMs);
      ms = instants.find((each) => each > lastMs) ?? instants.at(-1);
      if (instants.length > 1) inRepeatedHour += 1;
    } else {
      ms = time.wallMs - time.offsetMin * 60_000;
    }
    if (ms === undefined) {
      rejected.add(row, 'clocks went forward: that hour never was', when);
      continue;
    }
    if (ms > nowMs + FUTURE_SLACK_MS) {
      rejected.add(row, 'not yet: that time is still to come', when);
      continue;
    }
    lastMs = ms;
    const minute = Math.floor(ms / 60_000);
    if (byMinute.has(minute)) {
      rejected.add(row, 'a second reading in the same minute', when);
      continue;
    }
    const offsetMin = time.offsetMin ?? Math.round((time.wallMs - ms) / 60_000);
    byMinute.set(minute, { minute, offsetMin, tempC, humidityPercent: humidityIn(row, map) });
  }
  return {
    readings: [...byMinute.values()].toSorted((a, b) => a.minute - b.minute),
    rejected: rejected.all(),
    inRepeatedHour,
    usesZone,
  };
}

/** A humidity that is none is left out; the temperature beside it still counts. */
function humidityIn({ cells }: CsvRow, { humidity }: ColumnMap): number | undefined {
  const value = humidity === undefined ? undefined : readNumber(cells[humidity] ?? '');
  return value !== undefined && value >= 0 && value <= 100 ? value : undefined;
}

function isNewestFirst(rows: readonly CsvRow[], map: ColumnMap): boolean {
  const timeOf = (row: CsvRow): number | undefined =>
    readTime(timeText(row, map), map.order)?.wallMs;
  const first = rows.find((row) => timeOf(row) !== undefined);
  const last = rows.findLast((row) => timeOf(row) !== undefined);
  return first !== undefined && last !== undefined && (timeOf(first) ?? 0) > (timeOf(last) ?? 0);
}

function createRejections() {
  const found = new Map<string, { readonly lines: number[]; readonly example: string }>();
  return {
    add({ line }: CsvRow, reason: string, text: string): void {
      const group = found.get(reason) ?? { lines: [], example: text.trim().slice(0, 40) };
      group.lines.push(line);
      found.set(reason, group);
    },
    all: (): readonly Rejected[] =>
      [...found].map(([reason, { lines, example }]) => ({
        reason,
        count: lines.length,
        lines: lineWords(lines),
        example,
      })),
  };
}
