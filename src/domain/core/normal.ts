/**
 * Chance that a standard normal is at most `z`.
 *
 * Abramowitz M. & Stegun I.A. 1964, Handbook of Mathematical Functions, 26.2.17: within 7.5e-8.
 */
export function normalCdf(z: number): number {
  const t = 1 / (1 + 0.231_641_9 * Math.abs(z));
  const series =
    t *
    (0.319_381_53 +
      t * (-0.356_563_782 + t * (1.781_477_937 + t * (-1.821_255_978 + t * 1.330_274_429))));
  const tail = (Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)) * series;
  return z > 0 ? 1 - tail : tail;
}
