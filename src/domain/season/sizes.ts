import { tenth } from '../core/tenth.ts';
import { measuredMm } from '../follicles/error.ts';
import { feltMm } from '../follicles/reading.ts';
import type { Protocol } from '../protocol/values.ts';
import type { Scan } from '../state/season.ts';

/** The size a scan found, in millimetres, rounded to a tenth; undefined where it found none. */
export function largestMm({ found }: Pick<Scan, 'found'>, protocol: Protocol): number | undefined {
  const mm = found.method === 'palpation' ? feltMm(found.felt, protocol) : measuredMm(found);
  return mm === undefined ? undefined : tenth(mm);
}
