/** One measured number. Without a budget it is only told. */
export interface Figure {
  readonly name: string;
  readonly value: number | string;
  readonly unit: string;
  readonly budget?: string;
  readonly ok?: boolean;
}

export type Tell = (figure: Figure) => void;

export const atMost = (limit: number, value: number) => ({
  budget: `≤ ${limit}`,
  ok: value <= limit,
});

export const atLeast = (limit: number, value: number) => ({
  budget: `≥ ${limit}`,
  ok: value >= limit,
});

/** The value below which a share of all values lies, as it was measured, without interpolation. */
export function quantile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? NaN;
}

export const median = (values: readonly number[]): number => quantile(values, 0.5);

export const rounded = (value: number, digits = 0): number =>
  Math.round(value * 10 ** digits) / 10 ** digits;

/** Prints one JSON object a line. A missed budget is told by `ok` and never by the exit code. */
export const print: Tell = (figure) => {
  process.stdout.write(`${JSON.stringify(figure)}\n`);
};
