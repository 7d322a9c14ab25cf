import { MM_PER_INCH } from '../core/units.ts';
import type { LabelFormat, Paper, SizeMm } from './format.ts';

/** Paper sizes in mm. Source: A4 from ISO 216, Letter from ANSI/ASME Y14.1 (8½ × 11 in). */
export const PAGES: Readonly<Record<'a4' | 'letter', SizeMm>> = {
  a4: { width: 210, height: 297 },
  letter: { width: 8.5 * MM_PER_INCH, height: 11 * MM_PER_INCH },
};

const SOURCE = 'common practice, no source: measure your stock before printing';

// Office printers have 300, 600 or 1200 dots an inch: a module of whole 300ths is exact on all.
const SHEET_DOT = MM_PER_INCH / 300;
const ROLL_DOT = 1 / 8; // "203 dpi" is eight dots a millimetre.

const show = (mm: number): string => String(Math.round(mm * 10) / 10);
const showSize = ({ width, height }: SizeMm): string => `${show(width)} × ${show(height)} mm`;

/** A sheet whose grid of labels is centred on the page, as that of nearly all stock is. */
function sheet(
  paper: 'a4' | 'letter',
  [columns, rows]: readonly [number, number],
  [width, height]: readonly [number, number],
  gapX: number,
): LabelFormat {
  const page = PAGES[paper];
  const count = columns * rows;
  return {
    id: `${paper}-${count}-${Math.round(width)}x${Math.round(height)}`,
    name: `${count} on a sheet, ${showSize({ width, height })}`,
    paper,
    page,
    label: { width, height },
    columns,
    rows,
    left: (page.width - columns * width - (columns - 1) * gapX) / 2,
    top: (page.height - rows * height) / 2,
    gapX,
    gapY: 0,
    dotMm: SHEET_DOT,
    source: SOURCE,
  };
}

function roll(width: number, height: number): LabelFormat {
  const size = { width, height };
  return {
    id: `roll-${width}x${height}`,
    name: showSize(size),
    paper: 'roll',
    page: size,
    label: size,
    columns: 1,
    rows: 1,
    left: 0,
    top: 0,
    gapX: 0,
    gapY: 0,
    dotMm: ROLL_DOT,
    source: SOURCE,
  };
}

const inches = (width: number, height: number): readonly [number, number] => [
  width * MM_PER_INCH,
  height * MM_PER_INCH,
];

/** Every kind of label paper we print on, small labels first. Sizes in mm. */
export const LABEL_FORMATS: readonly LabelFormat[] = [
  sheet('a4', [5, 13], [38.1, 21.2], 2.5),
  sheet('a4', [4, 10], [45.7, 25.4], 2.5),
  sheet('a4', [3, 8], [63.5, 33.9], 2.5),
  sheet('a4', [3, 8], [70, 36], 0),
  sheet('a4', [3, 8], [70, 37], 0),
  sheet('a4', [3, 7], [63.5, 38.1], 2.5),
  sheet('a4', [3, 6], [63.5, 46.6], 2.5),
  sheet('a4', [2, 8], [99.1, 33.9], 2.5),
  sheet('a4', [2, 7], [99.1, 38.1], 2.5),
  sheet('a4', [3, 4], [63.5, 72], 2.5),
  sheet('a4', [2, 5], [99.1, 57], 2.5),
  sheet('a4', [2, 4], [99.1, 67.7], 2.5),
  sheet('a4', [2, 2], [99.1, 139], 2.5),
  sheet('letter', [3, 10], inches(2 + 5 / 8, 1), MM_PER_INCH / 8),
  sheet('letter', [2, 10], inches(4, 1), (MM_PER_INCH * 3) / 16),
  sheet('letter', [2, 7], inches(4, 4 / 3), (MM_PER_INCH * 3) / 16),
  sheet('letter', [2, 5], inches(4, 2), (MM_PER_INCH * 3) / 16),
  sheet('letter', [2, 3], inches(4, 10 / 3), (MM_PER_INCH * 3) / 16),
  roll(40, 30),
  roll(50, 25),
  roll(50, 30),
  roll(57, 32),
  roll(62, 29),
  roll(89, 28),
  roll(102, 152),
];

/** The formats of one kind of paper, in the order a keeper sees them. */
export const formatsOn = (paper: Paper): readonly LabelFormat[] =>
  LABEL_FORMATS.filter((format) => format.paper === paper);
