import { tQuantile } from '../core/student-t.ts';
import type { Spread } from './link.ts';

/**
 * A length in days as the logarithm that is reckoned with: ln(days + `aheadDays`) is `location`
 * plus `scale` times Student's t.
 */
export interface LogLength {
  readonly aheadDays: number;
  readonly location: number;
  readonly scale: number;
}

/** As good as without skew. */
const LEAST_SCALE = 0.02;

/**
 * The length that is `early` or less once in ten, `late` or more once in ten, and likeliest at
 * `likely`.
 *
 * Two of the numbers fix a plain logarithmic length, which then has a likeliest day of its own.
 * Where theirs lies later, the days are counted from some days ahead of the start: the more of
 * them, the less skew, down to none. Skew the other way, and more of it than the plain logarithm
 * has, are not made: then `early` and `late` hold, and `likely` as far as it can.
 */
export function usualLength(spread: Spread, degrees: number): LogLength {
  const early = Math.max(spread.early, 0.5);
  const late = Math.max(spread.late, early + 1);
  const tail = tQuantile(0.9, degrees);
  const through = (scale: number): LogLength => {
    const unit = (late - early) / (2 * Math.sinh(scale * tail));
    return { aheadDays: unit * Math.exp(-scale * tail) - early, location: Math.log(unit), scale };
  };
  const isTooEarly = (scale: number): boolean => likeliest(through(scale), degrees) < spread.likely;

  let most = Math.log(late / early) / (2 * tail);
  if (most <= LEAST_SCALE || !isTooEarly(most)) return through(most);
  let least = LEAST_SCALE;
  if (isTooEarly(least)) return through(least);
  for (let step = 0; step < 40; step += 1) {
    const middle = (least + most) / 2;
    if (isTooEarly(middle)) most = middle;
    else least = middle;
  }
  return through(least);
}

/**
 * The days at which the density is greatest. With t standing for the days, that is the root nearest
 * 0 of scale·t² + (degrees + 1)·t + scale·degrees = 0, which its derivative set to 0 comes to.
 */
function likeliest({ aheadDays, location, scale }: LogLength, degrees: number): number {
  const within = Math.max(0, (degrees + 1) ** 2 - 4 * scale * scale * degrees);
  const t = (Math.sqrt(within) - degrees - 1) / (2 * scale);
  return Math.exp(location + scale * t) - aheadDays;
}
