/**
 * Chance that Student's t with a whole number of degrees of freedom is at most `t`.
 *
 * The finite sums of Abramowitz M. & Stegun I.A. 1964, Handbook of Mathematical Functions, 26.7.3
 * and 26.7.4: exact for whole degrees, and those are the only ones counted cycles and scans give.
 *
 * Errors: RangeError where `degrees` is not a whole number from 1 on.
 */
export function tCdf(t: number, degrees: number): number {
  if (!Number.isInteger(degrees) || degrees < 1) {
    throw new RangeError(`Degrees of freedom must be a whole number from 1 on, not ${degrees}.`);
  }
  const angle = Math.atan(t / Math.sqrt(degrees));
  const cosine = Math.cos(angle);
  const isOdd = degrees % 2 === 1;
  // Each term is the one before times cos² and a ratio of neighbouring numbers.
  let term = isOdd ? cosine : 1;
  let sum = degrees === 1 ? 0 : term;
  for (let k = isOdd ? 3 : 2; k < degrees; k += 2) {
    term *= (cosine * cosine * (k - 1)) / k;
    sum += term;
  }
  const inner = isOdd ? (2 / Math.PI) * (angle + Math.sin(angle) * sum) : Math.sin(angle) * sum;
  return (1 + inner) / 2;
}

/** The value that Student's t stays at or below with chance `p`, 0 < p < 1. Exact to about 1e-12. */
export function tQuantile(p: number, degrees: number): number {
  if (p === 0.5) return 0;
  if (p < 0.5) return -tQuantile(1 - p, degrees);
  let low = 0;
  let high = 1;
  while (tCdf(high, degrees) < p) high *= 2;
  for (let step = 0; step < 100 && high - low > 1e-13 * high; step += 1) {
    const middle = (low + high) / 2;
    if (tCdf(middle, degrees) < p) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
