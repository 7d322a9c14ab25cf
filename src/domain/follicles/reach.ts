import { tCdf } from '../core/student-t.ts';
import { likelySlopes, type Line } from './line.ts';

const SLOPES = 60; // A chance is then within 0.005 of the exact one.

/**
 * Chance that the line is at a size by each day, from `fromDays` to `withinDays` later. The first is the
 * chance that it is there on that day already.
 *
 * A line is there by a day if it is there at either end, for it is straight. Given the slope, the level
 * is Student t with one degree more [Kotz S. & Nadarajah S. 2004, Multivariate t Distributions and
 * Their Applications, 1.11], so this is a mean over equally likely slopes.
 */
export function chancesReached(
  line: Line,
  mm: number,
  fromDays: number,
  withinDays: number,
): readonly number[] {
  const degrees = line.degrees + 1;
  const start = fromDays - line.meanDays;
  const slopes = likelySlopes(line, SLOPES).map((slope) => {
    const apart = ((slope - line.slopeMm) / line.slopeScaleMm) ** 2;
    const scaleMm = line.levelScaleMm * Math.sqrt((line.degrees + apart) / degrees);
    return { slope, scaleMm };
  });
  const short = (slope: number, days: number): number => mm - line.levelMm - slope * days;
  return Array.from({ length: withinDays + 1 }, (_, day) => {
    const notYet = slopes.reduce((sum, { slope, scaleMm }) => {
      const shortMm = short(slope, slope > 0 ? start + day : start);
      return sum + tCdf(shortMm / scaleMm, degrees);
    }, 0);
    return 1 - notYet / SLOPES;
  });
}
