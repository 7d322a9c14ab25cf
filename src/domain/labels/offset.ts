/** How far a printer prints beside the mark: all elements are moved by this. Unit: mm. */
export interface OffsetMm {
  readonly x: number;
  readonly y: number;
}

/** More than this is not the printer but the wrong paper. Unit: mm. */
export const MOST_OFFSET_MM = 5;

/** What a keeper entered, to a tenth of a millimetre and never more than 5 either way. */
export const readOffset = (mm: number): number =>
  Number.isFinite(mm)
    ? Math.round(Math.min(MOST_OFFSET_MM, Math.max(-MOST_OFFSET_MM, mm)) * 10) / 10
    : 0;
