import { instantMs } from '../core/calendar.ts';
import type { Animal } from '../state/animal.ts';

/** Meals in a row up to now that it took without help and kept. One left overnight is not yet one. */
export function mealsInRow({
  offers,
  regurgitations,
}: Pick<Animal, 'offers' | 'regurgitations'>): number {
  const brought = regurgitations.at(-1);
  const sinceMs = brought === undefined ? -Infinity : instantMs(brought);
  const known = offers.filter(({ outcome, at }) => outcome !== 'left' && instantMs(at) > sinceMs);
  const broken = known.findLastIndex(
    ({ outcome, how }) => how === 'assisted' || outcome === 'refused',
  );
  return known.length - 1 - broken;
}
