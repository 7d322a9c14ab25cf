import { lastRun, type Run } from '../../room/rules/last-run.ts';
import type { Incubator, IncubatorSpot } from '../../state/incubator.ts';
import type { Reading, Series } from '../../state/readings.ts';

/** Series that speak for the eggs: those between them, or of the air where there are none. */
export function eggSeries({ recent }: Incubator): readonly Series<IncubatorSpot>[] {
  const between = recent.filter(({ spot }) => spot === 'egg level');
  return between.length > 0 ? between : recent;
}

/** The newest reading that speaks for the eggs. */
export const newestReading = (incubator: Incubator): Reading | undefined =>
  eggSeries(incubator)
    .flatMap(({ readings }) => readings.at(-1) ?? [])
    .toSorted((a, b) => a.minute - b.minute)
    .at(-1);

/**
 * Readings outside up to the newest of all: one by hand is enough, a sensor's must go on for so long.
 */
export function outsideNow(
  incubator: Incubator,
  isOutside: (tempC: number) => boolean,
  minutes: number,
  gapMin: number,
): (Run & { readonly byHand: boolean }) | undefined {
  const newest = newestReading(incubator);
  for (const series of eggSeries(incubator)) {
    const run = lastRun(series, ({ tempC }) => isOutside(tempC), gapMin);
    if (!run || run.last.minute !== newest?.minute) continue;
    const byHand = series.sensor === undefined;
    if (byHand || run.lengthMin >= minutes) return { ...run, byHand };
  }
  return undefined;
}
