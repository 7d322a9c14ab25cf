/** A share between 0 and 1, from its lowest to its highest likely value. */
export interface ShareInterval {
  readonly low: number;
  readonly high: number;
}

/** Two-sided 95 % of the standard normal. Source: Abramowitz M. & Stegun I.A. 1964, table 26.5. */
const Z_95 = 1.959963984540054;

/**
 * What a share may be where `hits` of `of` were counted: the 95 % interval by Wilson E.B. 1927, J Am
 * Stat Assoc 22:209–212. It holds its 95 % also for few cases, and for none and all of them.
 *
 * Always holds the share that was counted; with nothing counted, it is 0 to 1.
 *
 * Errors: RangeError where `hits` is not between 0 and `of`.
 */
export function wilsonInterval(hits: number, of: number): ShareInterval {
  if (!(hits >= 0 && hits <= of)) throw new RangeError(`${hits} of ${of} is no share.`);
  if (of === 0) return { low: 0, high: 1 };
  const share = hits / of;
  const square = (Z_95 * Z_95) / of;
  const middle = (share + square / 2) / (1 + square);
  const half = Math.sqrt(square * (share * (1 - share) + square / 4)) / (1 + square);
  // Rounding must not put the counted share outside: at all of n it would, by the last bit.
  return {
    low: hits === 0 ? 0 : Math.min(share, middle - half),
    high: hits === of ? 1 : Math.max(share, middle + half),
  };
}
