import { labelsOnPage, type LabelFormat } from './format.ts';
import type { LabelSubject } from './subject.ts';

/** A label's place on its page, counted from 0 along the rows, and what it is about. */
export interface FilledCell {
  readonly cell: number;
  readonly subject: LabelSubject;
}

/** The left upper corner of a label on its page, in mm. */
export function cellOrigin(format: LabelFormat, cell: number): { x: number; y: number } {
  const column = cell % format.columns;
  const row = Math.floor(cell / format.columns);
  return {
    x: format.left + column * (format.label.width + format.gapX),
    y: format.top + row * (format.label.height + format.gapY),
  };
}

/** `startAt` as a label of this format's page: a whole number from 1 to the page's last label. */
export const startOn = (format: LabelFormat, startAt: number): number =>
  Math.min(labelsOnPage(format), Math.max(1, Math.floor(startAt) || 1));

/** Spreads labels over pages, beginning at label `startAt` (from 1) of a half-used first page. */
export function paginate(
  subjects: readonly LabelSubject[],
  format: LabelFormat,
  startAt: number,
): readonly (readonly FilledCell[])[] {
  const perPage = labelsOnPage(format);
  const used = startOn(format, startAt) - 1;
  const pages: FilledCell[][] = [];
  for (const [i, subject] of subjects.entries()) {
    const place = used + i;
    const page = (pages[Math.floor(place / perPage)] ??= []);
    page.push({ cell: place % perPage, subject });
  }
  return pages;
}

/** The label, from 1, at which the next print begins when `count` more have been used. */
export const nextStart = (format: LabelFormat, startAt: number, count: number): number =>
  ((startOn(format, startAt) - 1 + count) % labelsOnPage(format)) + 1;
