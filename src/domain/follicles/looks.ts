import type { Day } from '../core/calendar.ts';
import { errorMmOf, type Method, type Sized } from './error.ts';
import type { Reading, SizeReading } from './reading.ts';

/**
 * One night's scans by one method, taken together: the mean of what was measured, with the error of
 * a mean. A repeat scan is no second night.
 */
export interface Look extends Sized {
  readonly night: Day;
  readonly method: Method;
  /** False: nothing was found, and `mm` is only the size that it was smaller than. */
  readonly found: boolean;
  readonly readings: readonly Reading[];
}

/** The readings by night and method, from the oldest to the newest. */
export function looksOf(readings: readonly Reading[]): readonly Look[] {
  const together = new Map<string, Reading[]>();
  for (const reading of readings) {
    const key = `${reading.night} ${reading.method}`;
    together.set(key, [...(together.get(key) ?? []), reading]);
  }
  return [...together]
    .toSorted(([a], [b]) => (a < b ? -1 : 1))
    .flatMap(([, group]) => oneLook(group) ?? []);
}

function oneLook(group: readonly Reading[]): Look | undefined {
  const sizes = group.filter((each): each is SizeReading => each.kind === 'size');
  const [size] = sizes;
  // A follicle found on the same night was there all the time.
  if (size) {
    const { night, method, error } = size;
    const mm = sizes.reduce((sum, each) => sum + each.mm, 0) / sizes.length;
    const errorMm = errorMmOf(mm, error) / Math.sqrt(sizes.length);
    return { night, method, mm, errorMm, error, found: true, readings: sizes };
  }
  const [below] = group;
  if (below?.kind !== 'below') return undefined;
  const { night, method, belowMm, errorMm, error } = below;
  return { night, method, mm: belowMm, errorMm, error, found: false, readings: group };
}
