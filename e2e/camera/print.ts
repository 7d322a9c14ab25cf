import { encode } from 'uqr';
import type { Picture } from './picture.ts';
import type { Random } from './random.ts';

/** Something flat to hold before the camera, measured in units of its own: modules, or raster pixels. */
export interface Print {
  readonly width: number;
  readonly height: number;
  /** How bright it is at a point inside it, 0 black to 1 white. */
  readonly at: (x: number, y: number) => number;
}

export interface QrOptions {
  readonly level?: 'L' | 'M' | 'Q' | 'H';
  /** Blank modules around the symbol; ISO/IEC 18004 asks for 4 (from memory). */
  readonly quietZone?: number;
  /** Light modules on a dark ground. */
  readonly inverted?: boolean;
  /** Share of the symbol's area under stains, black or white, 0 to 1; its three finders stay clean. */
  readonly damage?: number;
  readonly random?: Random;
}

/**
 * A printed QR code. Unit: modules.
 *
 * Errors: throws when there is damage to place and no `random` to place it with.
 */
export function qrPrint(text: string, options: QrOptions = {}): Print {
  const { level = 'Q', quietZone = 4, inverted = false, damage = 0, random } = options;
  const { size, data } = encode(text, { ecc: level, border: 0 });
  const stains = damage > 0 ? placeStains(size, damage, random) : [];
  const side = size + 2 * quietZone;
  const dark = (x: number, y: number): boolean => {
    const stain = stains.find((each) => (each.x - x) ** 2 + (each.y - y) ** 2 < each.radius ** 2);
    return stain ? stain.dark : (data[Math.floor(y)]?.[Math.floor(x)] ?? false);
  };
  return {
    width: side,
    height: side,
    at: (x, y) => (dark(x - quietZone, y - quietZone) === inverted ? 1 : 0),
  };
}

interface Stain {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  readonly dark: boolean;
}

const FINDER = 8; // Seven modules and the separator.

function placeStains(size: number, share: number, random?: Random): readonly Stain[] {
  if (!random) throw new Error('Damage needs `random`, so that it can be repeated.');
  const stains: Stain[] = [];
  let left = share * size ** 2;
  while (left > 0) {
    const radius = Math.min(1 + 2 * random(), Math.sqrt(left / Math.PI) + 0.3);
    const [x, y, dark] = [random() * size, random() * size, random() < 0.5];
    const nearLow = (at: number) => at < FINDER + radius;
    const nearHigh = (at: number) => at > size - FINDER - radius;
    if ((nearLow(x) && (nearLow(y) || nearHigh(y))) || (nearHigh(x) && nearLow(y))) continue;
    stains.push({ x, y, radius, dark });
    left -= Math.PI * radius ** 2;
  }
  return stains;
}

/** A rastered page, for instance of the labels as the app prints them. Unit: raster pixels. */
export const rasterPrint = ({ width, height, gray }: Picture): Print => ({
  width,
  height,
  at: (x, y) => (gray[Math.floor(y) * width + Math.floor(x)] ?? 255) / 255,
});
