/** Where most of some numbers lie. */
export interface Spread {
  readonly n: number;
  readonly median: number;
  /** The middle half lies between these two; undefined for fewer than four, of which there is no half. */
  readonly quartiles?: readonly [number, number] | undefined;
  readonly least: number;
  readonly most: number;
}

/** Undefined where there is nothing. */
export function spreadOf(numbers: readonly number[]): Spread | undefined {
  const sorted = numbers.toSorted((a, b) => a - b);
  const [least, most] = [sorted[0], sorted.at(-1)];
  if (least === undefined || most === undefined) return undefined;
  return {
    n: sorted.length,
    median: quantile(sorted, 0.5),
    quartiles: sorted.length < 4 ? undefined : [quantile(sorted, 0.25), quantile(sorted, 0.75)],
    least,
    most,
  };
}

/** On a straight line between the two nearest: Hyndman R.J. & Fan Y. 1996, Am Stat 50:361–365, type 7. */
function quantile(sorted: readonly number[], share: number): number {
  const place = share * (sorted.length - 1);
  const [low, high] = [sorted[Math.floor(place)] ?? 0, sorted[Math.ceil(place)] ?? 0];
  return low + (high - low) * (place - Math.floor(place));
}
