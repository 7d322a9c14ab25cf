import { Buffer } from 'node:buffer';
import writeExcelFile from 'write-excel-file/node';

// Years of a keeper's rows, invented, as messy as such files are: real dates beside dates as text,
// ounces beside grams, merged names, a formula, slips of the finger, rows twice and a tub that is not.

const SNAKES = 60;
const WEEKS = 50;
const DAY_MS = 86_400_000;
const FIRST_DAY = Date.UTC(2024, 0, 5);

interface Row {
  readonly name: string;
  readonly sex: string;
  readonly tub: string;
  readonly hatched: string;
  readonly day: Date;
  readonly mass: string;
  readonly meal: string;
  readonly note: string;
  /** Its name stands in the row above, in a cell merged with its own. */
  readonly isBelow?: boolean;
}

/** What a file holds, counted while it is made. */
export interface Made {
  readonly rows: readonly Row[];
  /** New records that need no answer: snakes, weights and meals. */
  readonly plain: number;
  /** Weights with a digit missing: a question each, with the likely one offered. */
  readonly slips: number;
  readonly twice: number;
}

const names = ['Ash', 'Bay', 'Clay', 'Dew', 'Elm', 'Fen'] as const;
const nameOf = (n: number): string => `${names[n % 6] ?? ''} ${Math.floor(n / 6) + 1}`;

/** 3,000 rows: 60 snakes, each weighed and fed once a week. */
export function messyRows(): Made {
  const rows: Row[] = [];
  let slips = 0;
  for (let week = 0; week < WEEKS; week += 1) {
    for (let n = 0; n < SNAKES; n += 1) {
      const isFirst = week === 0;
      const grams = (n % 2 === 0 ? 1_500 : 900) + week * 2 + (n % 6);
      const isSlip = n === week && week % 5 === 4;
      if (isSlip) slips += 1;
      const inOunces = !isSlip && n % 10 === 3 && week % 7 === 3;
      const row: Row = {
        name: nameOf(n),
        sex: isFirst ? (n % 2 === 0 ? 'f' : 'Male') : '',
        tub:
          isFirst && n < 4
            ? `B${1 + Math.floor(n / 2)}-${1 + (n % 2)}`
            : isFirst && n === 4
              ? 'B9-9'
              : '',
        hatched: isFirst ? '14/07/2020' : '',
        day: new Date(FIRST_DAY + (week * 7 + (n % 3)) * DAY_MS),
        mass: isSlip
          ? String(Math.floor(grams / 10))
          : inOunces
            ? `${(grams / 28.349523125).toFixed(1)} oz`
            : String(grams),
        meal: (n + week) % 5 === 0 ? 'refused' : '1 small rat',
        note:
          n === 7 && week === 7
            ? '<img src=x onerror=alert(1)>'
            : n === 8 && week === 8
              ? '=1+1'
              : '',
      };
      rows.push(row);
    }
  }
  const last = FIRST_DAY + (WEEKS + 1) * 7 * DAY_MS;
  const block = {
    name: nameOf(0),
    sex: '',
    tub: '',
    hatched: '',
    mass: '1600',
    meal: 'refused',
    note: '',
  };
  rows.push({ ...block, day: new Date(last) });
  rows.push({ ...block, day: new Date(last + 3 * DAY_MS), isBelow: true });
  // Two rows once more, as happens when a block is pasted twice.
  const again = rows.slice(100, 102);
  rows.push(...again);
  return {
    rows,
    plain: SNAKES + 4 + 2 * (SNAKES * WEEKS + 2) - slips,
    slips,
    twice: again.length,
  };
}

const two = (n: number): string => String(n).padStart(2, '0');
const dayFirst = (day: Date): string =>
  `${two(day.getUTCDate())}/${two(day.getUTCMonth() + 1)}/${day.getUTCFullYear()}`;

const HEADINGS = [
  'Snake',
  'Sex',
  'Tub',
  'Hatched',
  'Date',
  'Weight (g)',
  'Fed',
  'Hot spot',
  'Notes',
];

/** As a workbook by an independent writer: a title, merged names, real dates and dates as text. */
export async function messyXlsx({ rows }: Made): Promise<Buffer> {
  const text = (value: string) => (value === '' ? null : { value });
  const data = rows.map(({ name, sex, tub, hatched, day, mass, meal, note, isBelow }, i) => {
    const written =
      i % 4 === 0 ? { value: dayFirst(day) } : { value: day, type: Date, format: 'dd/mm/yyyy' };
    const grams = Number(mass);
    return [
      isBelow ? null : { value: name, ...(rows[i + 1]?.isBelow ? { rowSpan: 2 } : {}) },
      text(sex),
      text(tub),
      text(hatched),
      written,
      Number.isFinite(grams) ? { value: grams } : text(mass),
      text(meal),
      i === 10 ? { value: '30 °C (90 °F)' } : i % 50 === 0 ? { value: '88 °F' } : null,
      i === 0 ? { value: '=1+1', type: 'Formula' as const } : text(note),
    ];
  });
  return writeExcelFile([
    {
      sheet: 'Rack B',
      data: [
        [{ value: 'My snakes, 2024', columnSpan: HEADINGS.length }],
        HEADINGS.map((value) => ({ value })),
        ...data,
      ],
    },
    { sheet: 'Prices', data: [[{ value: 'Rats' }, { value: 12 }]] },
  ] as Parameters<typeof writeExcelFile>[0]).toBuffer();
}

/** The same as text: semicolons, and Windows-1252 as older programs write it. */
export function messyCsv({ rows }: Made): Buffer {
  const lines = rows.map(({ name, sex, tub, hatched, day, mass, meal, note }) =>
    [name, sex, tub, hatched, dayFirst(day), mass.replace('.', ','), meal, '', note].join(';'),
  );
  return Buffer.from([HEADINGS.join(';'), ...lines].join('\r\n'), 'latin1');
}
