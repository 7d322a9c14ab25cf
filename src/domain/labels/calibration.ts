import { textWidth } from './text-width.ts';
import { labelsOnPage, type LabelFormat } from './format.ts';
import { cellOrigin } from './pages.ts';
import type { BoxMm, Placed, PlacedLine } from './placed.ts';
import { placeLine } from './text-block.ts';

const THIN = 0.1;
const THICK = 0.25;
const CORNER = 2;

type Point = readonly [x: number, y: number];

const line = (from: Point, to: Point, weight: number): PlacedLine => ({
  kind: 'line',
  from,
  to,
  weight,
});

/** How long the test page's rulers are: 100 mm, or what a small label holds. Unit: mm. */
export const rulerLength = (edgeMm: number): number =>
  Math.min(100, Math.floor((edgeMm - 6) / 10) * 10);

/** A test page. What is to be read stands on a cleared box, above the edges of the labels. */
export interface CalibrationPage {
  readonly edges: readonly Placed[];
  readonly cleared: BoxMm;
  readonly readings: readonly Placed[];
}

/**
 * A page to lay on the label paper: every label's edges, a ruler along each axis, and how to read it.
 *
 * All lengths in mm from the page's left upper corner.
 */
export function calibrationPage(format: LabelFormat): CalibrationPage {
  const { page } = format;
  const across = rulerLength(page.width);
  const down = rulerLength(page.height);
  const x = Math.max(3, page.width / 2 - 50);
  const y = Math.max(3, page.height / 2 - 50);
  const cells = Array.from({ length: labelsOnPage(format) }, (_, cell) => cell);
  return {
    edges: cells.flatMap((cell) => labelEdges(format, cell)),
    cleared: {
      x: x - 0.5,
      y: y - 0.5,
      width: Math.min(106, page.width - x - 2),
      height: Math.min(38, page.height - y - 2),
    },
    readings: [
      ...ruler([x, y], across, 'across'),
      ...ruler([x, y], down, 'down'),
      ...advice(format, x + 8, y + 8, Math.min(96, page.width - x - 11), across, down),
    ],
  };
}

/** A box on the label's edges, heavier at its corners: those are looked at against the light. */
function labelEdges(format: LabelFormat, cell: number): readonly Placed[] {
  const { x, y } = cellOrigin(format, cell);
  const right = x + format.label.width;
  const bottom = y + format.label.height;
  const corners: readonly (readonly [number, number, number, number])[] = [
    [x, y, 1, 1],
    [right, y, -1, 1],
    [x, bottom, 1, -1],
    [right, bottom, -1, -1],
  ];
  return [
    line([x, y], [right, y], THIN),
    line([right, y], [right, bottom], THIN),
    line([right, bottom], [x, bottom], THIN),
    line([x, bottom], [x, y], THIN),
    ...corners.flatMap(([cx, cy, inX, inY]) => [
      line([cx, cy], [cx + inX * CORNER, cy], THICK),
      line([cx, cy], [cx, cy + inY * CORNER], THICK),
    ]),
  ];
}

/** A ruler from `start`: a mark for each millimetre, longer at 5 and 10, and numbers at tens. */
function ruler(start: Point, length: number, along: 'across' | 'down'): readonly Placed[] {
  const at = (mm: number, aside: number): Point =>
    along === 'across' ? [start[0] + mm, start[1] + aside] : [start[0] + aside, start[1] + mm];
  const placed: Placed[] = [line(at(0, 0), at(length, 0), THICK)];
  for (let mm = 0; mm <= length; mm += 1) {
    const ten = mm % 10 === 0;
    placed.push(line(at(mm, 0), at(mm, ten ? 3 : mm % 5 === 0 ? 2.2 : 1.4), THIN));
    if (ten && mm > 0) {
      const label = String(mm);
      const size = 2.4;
      const half = textWidth(label, size, false) / 2;
      const [tx, ty] = along === 'across' ? at(mm - half, 3.2) : at(mm - size / 2, 3.4);
      placed.push(placeLine(label, tx, ty, size, false));
    }
  }
  return placed;
}

function advice(
  format: LabelFormat,
  x: number,
  y: number,
  room: number,
  across: number,
  down: number,
): readonly Placed[] {
  const lines =
    format.page.height < 60
      ? [`${across} × ${down} mm?`, 'Print at 100 %.']
      : [
          'Printed at 100 %?',
          `Then this ruler is ${across} mm long, the other ${down} mm.`,
          'Lay this page on a sheet of labels, against the light.',
          'Boxes too far left? Enter how many mm to move right.',
          'Boxes too high? Enter how many mm to move down.',
        ];
  const size = Math.min(4, ...lines.map((text) => room / textWidth(text, 1, true)));
  return lines.map((text, i) => placeLine(text, x, y + i * size * 1.3, size, i === 0));
}
