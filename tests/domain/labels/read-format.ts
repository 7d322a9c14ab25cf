import type { QrSquare } from '../../../src/domain/labels/qr.ts';

/** The dark modules that a path draws, each as `x y`. */
export function modulesOf({ path }: QrSquare): ReadonlySet<string> {
  const dark = new Set<string>();
  for (const [, x, y, run] of path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\d+z/g)) {
    for (let i = 0; i < Number(run); i += 1) dark.add(`${Number(x) + i} ${y}`);
  }
  return dark;
}

/** The error level from the format bits beside the first finder pattern, unmasked. */
export function errorLevel(square: QrSquare): 'L' | 'M' | 'Q' | 'H' | undefined {
  const dark = modulesOf(square);
  const bit = (x: number) => (dark.has(`${x} 8`) ? 1 : 0);
  // Source: ISO/IEC 18004:2015, 7.9.1: the mask 101010000010010 begins with 10.
  const level = ((bit(0) << 1) | bit(1)) ^ 0b10;
  return (['M', 'L', 'H', 'Q'] as const)[level];
}
