import type { QrSquare } from './qr.ts';
import { ASCENT, DESCENT } from './text-width.ts';

/** A rectangle in mm. */
export interface BoxMm {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** One line of text. `x` and `baseline` are where it begins; all lengths in mm. */
export interface PlacedText {
  readonly kind: 'text';
  readonly text: string;
  readonly x: number;
  readonly baseline: number;
  readonly size: number;
  /** As reckoned; a page sets the text to exactly this width, whatever font it has. */
  readonly width: number;
  readonly bold: boolean;
}

/** A QR code; `x` and `y` are the corner of its dark square, without the quiet zone. */
export interface PlacedQr extends QrSquare {
  readonly kind: 'qr';
  readonly x: number;
  readonly y: number;
}

/** A straight line of `weight` mm. */
export interface PlacedLine {
  readonly kind: 'line';
  readonly from: readonly [x: number, y: number];
  readonly to: readonly [x: number, y: number];
  readonly weight: number;
}

export type Placed = PlacedText | PlacedQr | PlacedLine;

/** The room a line of text takes, from the tallest letter to the deepest. */
export const boxOfText = ({ x, baseline, size, width }: PlacedText): BoxMm => ({
  x,
  y: baseline - ASCENT * size,
  width,
  height: (ASCENT + DESCENT) * size,
});
