import type { Growth } from './follicle-curve-view.ts';

const tenth = (mm: number): string => (Math.round(mm * 10) / 10).toFixed(1).replace('-', '−');

/** A chance in whole per cent; never 0 or 100, which nothing here is sure of. */
function percent(chance: number): string {
  if (chance < 0.01) return 'under 1 %';
  return chance > 0.99 ? 'over 99 %' : `${Math.round(100 * chance)} %`;
}

/**
 * How fast the largest follicle grows, with its interval; or why nothing is said.
 *
 * @example '4.1 mm a week, 2.9 to 5.3 (80 %); chance that it is shrinking 3 %.'
 */
export function trendWords({ readings, trend }: Growth): string | undefined {
  if (trend) {
    const { mmPerWeek, low, high, chanceShrinking } = trend;
    return `${tenth(mmPerWeek)} mm a week, ${tenth(low)} to ${tenth(high)} (80 %); chance that it is shrinking ${percent(chanceShrinking)}.`;
  }
  const nights = new Set(readings.map(({ night }) => night)).size;
  if (nights === 0) return undefined;
  return nights === 1
    ? 'one scan is not a trend.'
    : 'no trend yet: it takes two scans of follicles that have left their resting size.';
}
