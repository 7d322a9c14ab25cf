/** A width and a height in mm. */
export interface SizeMm {
  readonly width: number;
  readonly height: number;
}

/** What a keeper buys: sheets of A4 or US Letter, or a roll whose every label is a page. */
export type Paper = 'a4' | 'letter' | 'roll';

/** Where the labels lie on a page, all in mm from its left upper corner. */
export interface LabelFormat {
  /** Stays the same for ever, since choices are remembered by it. */
  readonly id: string;
  readonly name: string;
  readonly paper: Paper;
  readonly page: SizeMm;
  readonly label: SizeMm;
  readonly columns: number;
  readonly rows: number;
  /** From the page's edges to the first label. */
  readonly left: number;
  readonly top: number;
  /** Between neighbours in a row, and between rows. */
  readonly gapX: number;
  readonly gapY: number;
  /** The printer's dot, of which a QR module is a whole number. */
  readonly dotMm: number;
  readonly source: string;
}

/** How many labels one page holds. */
export const labelsOnPage = (format: LabelFormat): number => format.columns * format.rows;
