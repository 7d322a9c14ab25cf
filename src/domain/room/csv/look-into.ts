import { momentOf, type Moment } from '../../core/calendar.ts';
import { ok, refuse, type Result } from '../../core/result.ts';
import type { Reading } from '../../state/readings.ts';
import { noveltyOf } from '../log-drafts.ts';
import { guessColumns, type ColumnMap, type Guess } from './columns.ts';
import type { ReadFile, Rejected } from './read-readings.ts';
import { guessSeparator, splitCsv, type CsvRow } from '../../csv/split-csv.ts';

/** A sensor's file, cut into rows, with a guess at what is in them. */
export interface OpenedFile {
  readonly rows: readonly CsvRow[];
  readonly guess: Guess;
}

/** What taking a file in would do. Nothing is written for it. */
export interface ReadingsPreview extends Omit<ReadFile, 'readings'> {
  readonly names: readonly string[];
  /** The first rows, cell by cell. */
  readonly samples: readonly (readonly string[])[];
  readonly map: ColumnMap;
  readonly unsure: Guess['unsure'];
  readonly rows: number;
  readonly readings: number;
  readonly fresh: number;
  readonly known: number;
  readonly differing: number;
  readonly first?: Moment | undefined;
  readonly last?: Moment | undefined;
  readonly lowC?: number | undefined;
  readonly highC?: number | undefined;
  readonly gaps: number;
  /** The longest of them. */
  readonly longestGaps: readonly { readonly from: Moment; readonly hours: number }[];
  readonly rejected: readonly Rejected[];
}

const SAMPLES = 3;
const GAPS_SHOWN = 3;

/**
 * Opens the text of a sensor's file.
 *
 * Errors: refuses what is no table of readings, and says what was looked for.
 */
export function openFile(text: string): Result<OpenedFile> {
  if (text.trim() === '') return refuse('csv-empty', 'This file is empty.');
  if (text.includes('\0')) {
    return refuse(
      'csv-not-text',
      'This file is no plain text. Export the readings as CSV, in UTF-8 if the program asks.',
    );
  }
  const separator = guessSeparator(text);
  if (!separator) {
    return refuse(
      'csv-no-table',
      'This file holds no table: no commas, semicolons or tabs line up in it.',
    );
  }
  const rows = splitCsv(text, separator);
  if (!rows.ok) return rows;
  const guess = guessColumns(rows.value);
  return guess
    ? ok({ rows: rows.value.slice(guess.firstRow), guess })
    : refuse(
        'csv-no-readings',
        'No line of this file has a date with a time and a temperature beside it.',
      );
}

/** What the file comes to, read with these columns, beside what is known of this sensor. */
export function previewOf(
  { rows, guess }: OpenedFile,
  map: ColumnMap,
  file: ReadFile,
  known: readonly Reading[],
  gapMin: number,
): ReadingsPreview {
  const { readings, ...rest } = file;
  const { fresh, ...novelty } = noveltyOf(readings, known);
  const gaps = gapsIn(readings, gapMin);
  const temps = readings.map(({ tempC }) => tempC);
  const [first, last] = [readings[0], readings.at(-1)];
  return {
    ...rest,
    ...novelty,
    names: guess.names,
    samples: rows.slice(0, SAMPLES).map(({ cells }) => cells),
    map,
    unsure: guess.unsure,
    rows: rows.length,
    readings: readings.length,
    fresh: fresh.length,
    first: first && momentAt(first),
    last: last && momentAt(last),
    lowC: first && temps.reduce((a, b) => Math.min(a, b)),
    highC: first && temps.reduce((a, b) => Math.max(a, b)),
    gaps: gaps.length,
    longestGaps: gaps
      .toSorted((a, b) => b.minutes - a.minutes)
      .slice(0, GAPS_SHOWN)
      .map(({ after, minutes }) => ({ from: momentAt(after), hours: minutes / 60 })),
  };
}

const momentAt = ({ minute, offsetMin }: Reading): Moment =>
  momentOf({ ms: minute * 60_000, offsetMin });

const gapsIn = (readings: readonly Reading[], gapMin: number) =>
  readings.flatMap((after, i) => {
    const next = readings[i + 1];
    const minutes = next ? next.minute - after.minute : 0;
    return minutes > gapMin ? [{ after, minutes }] : [];
  });
