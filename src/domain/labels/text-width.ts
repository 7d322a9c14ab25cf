/**
 * Advance widths in thousandths of the type size, for the characters from space to tilde.
 *
 * Source: Adobe Core 14 font metrics, Helvetica and Helvetica-Bold, whose widths Arial, Liberation
 * Sans and the sans-serif of most printers share. Where another font is used, the page squeezes
 * each text to the width reckoned here, so nothing runs off its label.
 */
const REGULAR = [
  278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556,
  556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667,
  611, 778, 722, 278, 500, 667, 556, 833, 722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667,
  667, 611, 278, 278, 278, 469, 556, 333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500,
  222, 833, 556, 556, 556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584,
];
const BOLD = [
  278, 333, 474, 556, 556, 889, 722, 238, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556,
  556, 556, 556, 556, 556, 556, 556, 333, 333, 584, 584, 584, 611, 975, 722, 722, 722, 722, 667,
  611, 778, 722, 278, 556, 722, 611, 833, 722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667,
  667, 611, 333, 278, 333, 584, 556, 333, 556, 611, 556, 611, 556, 333, 611, 611, 278, 278, 556,
  278, 889, 611, 611, 611, 611, 389, 556, 333, 611, 556, 778, 556, 556, 500, 389, 280, 389, 584,
];

// The same in both weights, or within a fiftieth.
const FURTHER: Readonly<Record<string, number>> = {
  '\u00a0': 278,
  '°': 400,
  '·': 278,
  '×': 584,
  '±': 584,
  '½': 834,
  '–': 556,
  '‘': 278,
  '’': 278,
  '“': 500,
  '”': 500,
  ß: 611,
  ø: 611,
  æ: 889,
};
const OTHER = 1000; // Other signs and ideographs are at most as wide as they are high.

/** Height of a capital, as a share of the type size. Source: Arial and Helvetica, 0.716 to 0.718. */
export const CAP_HEIGHT = 0.716;
/** How far a line reaches above its baseline (tallest letters) and below it, as shares of size. */
export const ASCENT = 0.76;
export const DESCENT = 0.24;

/** The width of `text` in mm, set at `size` mm. An accent adds nothing to its letter. */
export function textWidth(text: string, size: number, bold: boolean): number {
  const widths = bold ? BOLD : REGULAR;
  let thousandths = 0;
  for (const sign of text.normalize('NFD').replace(/\p{M}/gu, '')) {
    thousandths += widths[(sign.codePointAt(0) ?? 0) - 32] ?? FURTHER[sign] ?? OTHER;
  }
  return (thousandths / 1000) * size;
}
