import { oneLineSize, truncate, wrapAtMost } from './fit-text.ts';
import type { BoxMm, PlacedText } from './placed.ts';
import { ASCENT, textWidth } from './text-width.ts';

/** Capitals of 1.7 mm, the least that is read with ease at 30 cm. Unit: mm. Source: ISO 9241-3. */
export const MIN_TYPE_MM = 2.4;

const LEADING = 1.15;

/** Lines of text from the top of a box, and how high they are together, in mm. */
export interface TextBlock {
  readonly placed: readonly PlacedText[];
  readonly height: number;
}

export interface Paragraph {
  readonly text: string;
  readonly bold: boolean;
}

const NOTHING: TextBlock = { placed: [], height: 0 };

/** One line of text whose ascenders touch `top`. Unit: mm. */
export function placeLine(
  text: string,
  x: number,
  top: number,
  size: number,
  bold: boolean,
): PlacedText {
  const width = textWidth(text, size, bold);
  return { kind: 'text', text, x, baseline: top + ASCENT * size, size, width, bold };
}

function stack(lines: readonly Paragraph[], box: BoxMm, size: number): TextBlock {
  const placed = lines.map(({ text, bold }, i) =>
    placeLine(text, box.x, box.y + i * size * LEADING, size, bold),
  );
  return { placed, height: lines.length === 0 ? 0 : (lines.length - 1) * size * LEADING + size };
}

/**
 * The text that must be read from afar: as large as the box allows, on one line or on two.
 *
 * Two lines only for words, where they more than pay: a position is never broken.
 */
export function placeHeadline(text: string, box: BoxMm, unbroken: boolean): TextBlock {
  if (text.trim() === '') return NOTHING;
  const single = oneLineSize(text, box.width, box.height, true);
  const double = unbroken ? 0 : twoLineSize(text, box);
  if (double > single * 1.15 || single < MIN_TYPE_MM) {
    const size = Math.max(double, Math.min(MIN_TYPE_MM, box.height));
    const most = !unbroken && box.height >= size * (1 + LEADING) ? 2 : 1;
    const lines = wrapAtMost(text, most, box.width, size, true);
    return stack(
      lines.map((line) => ({ text: line, bold: true })),
      box,
      size,
    );
  }
  return stack([{ text, bold: true }], box, single);
}

function twoLineSize(text: string, box: BoxMm): number {
  const most = box.height / (1 + LEADING);
  const words = text.split(/[ \t\n]+/).filter(Boolean);
  let best = 0;
  for (let i = 1; i < words.length; i += 1) {
    const halves = [words.slice(0, i).join(' '), words.slice(i).join(' ')];
    const size = Math.min(...halves.map((half) => oneLineSize(half, box.width, most, true)));
    best = Math.max(best, size);
  }
  return best;
}

/**
 * Paragraphs at one size: the largest up to `most` mm at which all of them fit their box.
 *
 * If they do not fit at the smallest size that is still read, the first ones are kept whole and the
 * rest is cut, since a caller names what matters most first.
 */
export function placeParagraphs(
  paragraphs: readonly Paragraph[],
  box: BoxMm,
  most: number,
): TextBlock {
  const broken = (size: number) =>
    paragraphs.flatMap(({ text, bold }, of) =>
      wrapAtMost(text, 2, box.width, size, bold).map((line) => ({ text: line, bold, of })),
    );
  for (let size = most; size >= MIN_TYPE_MM; size -= 0.2) {
    const lines = broken(size);
    if (lines.length <= rowsIn(box.height, size)) return stack(lines, box, size);
  }
  const lines = broken(MIN_TYPE_MM);
  const rows = rowsIn(box.height, MIN_TYPE_MM);
  const kept = lines.slice(0, rows).map((line, i) => {
    const isCut = i === rows - 1 && lines[rows]?.of === line.of;
    const text = isCut ? `${line.text}…` : line.text;
    return { ...line, text: truncate(text, box.width, MIN_TYPE_MM, line.bold) };
  });
  return stack(kept, box, MIN_TYPE_MM);
}

/** How many lines of text fit in `height` mm. */
const rowsIn = (height: number, size: number): number =>
  Math.max(0, Math.floor((height - size) / (size * LEADING) + 1 + 1e-6));
