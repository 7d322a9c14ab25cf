import { MM_PER_INCH } from '../../src/domain/core/units.ts';
import type { LabelFormat } from '../../src/domain/labels/format.ts';
import { layoutLabel } from '../../src/domain/labels/layout.ts';
import { cellOrigin, type FilledCell } from '../../src/domain/labels/pages.ts';
import type { BoxMm, PlacedQr } from '../../src/domain/labels/placed.ts';
import type { GrayRaster } from './raster.ts';

const DARK = 128;

/** The QR code of a label as it should stand on its page, in mm, without its quiet zone. */
export function expectedQr(
  { cell, subject }: FilledCell,
  format: LabelFormat,
  linkBase?: string,
): PlacedQr {
  const origin = cellOrigin(format, cell);
  const qr = layoutLabel(subject, format, linkBase).placed.find((mark) => mark.kind === 'qr');
  if (!qr) throw new Error(`No QR code on ${subject.code}.`);
  return { ...qr, x: origin.x + qr.x, y: origin.y + qr.y };
}

/** The box around all that is dark inside `within`, in mm; undefined where all is white. */
export function darkBox(raster: GrayRaster, within: BoxMm): BoxMm | undefined {
  const mm = (px: number) => (px / raster.dpi) * MM_PER_INCH;
  const px = (length: number) => Math.round((length / MM_PER_INCH) * raster.dpi);
  let [left, top, right, bottom] = [Infinity, Infinity, -1, -1];
  const endY = Math.min(raster.height, px(within.y + within.height));
  const endX = Math.min(raster.width, px(within.x + within.width));
  for (let y = Math.max(0, px(within.y)); y < endY; y += 1) {
    for (let x = Math.max(0, px(within.x)); x < endX; x += 1) {
      if (raster.pixels[y * raster.width + x]! >= DARK) continue;
      left = Math.min(left, x);
      right = Math.max(right, x + 1);
      top = Math.min(top, y);
      bottom = Math.max(bottom, y + 1);
    }
  }
  if (right < 0) return undefined;
  return { x: mm(left), y: mm(top), width: mm(right - left), height: mm(bottom - top) };
}

/** A QR code's dark square, with one module less white around it than its quiet zone has. */
export function boxAround({ x, y, modules, moduleMm }: PlacedQr): BoxMm {
  const white = 3 * moduleMm;
  const side = modules * moduleMm + 2 * white;
  return { x: x - white, y: y - white, width: side, height: side };
}

/** The largest distance between an edge of one box and the same edge of the other, in mm. */
export const edgeError = (a: BoxMm, b: BoxMm): number =>
  Math.max(
    Math.abs(a.x - b.x),
    Math.abs(a.y - b.y),
    Math.abs(a.x + a.width - b.x - b.width),
    Math.abs(a.y + a.height - b.y - b.height),
  );
