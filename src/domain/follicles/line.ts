import { tCdf, tQuantile } from '../core/student-t.ts';

/** A size, in millimetres, and its error as one SD, on a day counted from any fixed one. */
export interface Point {
  readonly days: number;
  readonly mm: number;
  readonly errorMm: number;
}

/**
 * What is known of a straight line of size against time, in mm and days: a bivariate Student t. The
 * level on the weighted mean day and the slope are uncorrelated.
 */
export interface Line {
  readonly meanDays: number;
  readonly levelMm: number;
  /** Scale of the level, in millimetres. */
  readonly levelScaleMm: number;
  readonly slopeMm: number;
  /** Scale of the slope, in millimetres a day. */
  readonly slopeScaleMm: number;
  readonly degrees: number;
}

/**
 * Bayesian straight line with known relative errors and one unknown scale common to all of them.
 *
 * Conjugate normal and scaled inverse chi-squared [Gelman A. et al. 2013, Bayesian Data Analysis, 3rd
 * ed., 14.2 and 14.8]: flat on the level; slope 0 ± `slopePriorMm` before any scan; the scale 1, with
 * as many degrees of freedom as are known of the errors themselves. Points that scatter more than
 * their error widen everything that is said.
 *
 * Unit: `slopePriorMm` is millimetres a day, one SD. `errorDegrees` is a whole number from 1 on. Needs
 * at least one point.
 */
export function fitLine(
  points: readonly Point[],
  errorDegrees: number,
  slopePriorMm: number,
): Line {
  const weights = points.map(({ errorMm }) => errorMm ** -2);
  const total = sum(weights);
  const weighted = (value: (point: Point) => number): number =>
    sum(points.map((point, i) => (weights[i] ?? 0) * value(point)));
  const meanDays = weighted(({ days }) => days) / total;
  const levelMm = weighted(({ mm }) => mm) / total;
  const precision = weighted(({ days }) => (days - meanDays) ** 2) + slopePriorMm ** -2;
  const slopeMm = weighted(({ days, mm }) => (days - meanDays) * (mm - levelMm)) / precision;
  const scatter = weighted(({ mm }) => (mm - levelMm) ** 2) - precision * slopeMm ** 2;
  const degrees = errorDegrees + points.length - 1;
  const scale = Math.sqrt((errorDegrees + Math.max(0, scatter)) / degrees);
  return {
    meanDays,
    levelMm,
    levelScaleMm: scale / Math.sqrt(total),
    slopeMm,
    slopeScaleMm: scale / Math.sqrt(precision),
    degrees,
  };
}

const sum = (values: readonly number[]): number => values.reduce((total, each) => total + each, 0);

/** Middle and scale of the line on a day, in millimetres. */
export const sizeOn = (
  line: Line,
  days: number,
): { readonly mm: number; readonly scaleMm: number } => ({
  mm: line.levelMm + line.slopeMm * (days - line.meanDays),
  scaleMm: Math.hypot(line.levelScaleMm, line.slopeScaleMm * (days - line.meanDays)),
});

/** Chance that the line falls. */
export const chanceFalling = ({ slopeMm, slopeScaleMm, degrees }: Line): number =>
  tCdf(-slopeMm / slopeScaleMm, degrees);

/** Slopes that are equally likely, in millimetres a day, from the lowest to the highest. */
export const likelySlopes = (line: Line, count: number): readonly number[] =>
  Array.from(
    { length: count },
    (_, i) => line.slopeMm + line.slopeScaleMm * tQuantile((i + 0.5) / count, line.degrees),
  );
