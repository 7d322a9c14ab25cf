import type { Scan } from '../../../src/domain/follicles/error.ts';
import { scanErrors } from '../../../src/domain/follicles/error.ts';
import { readingsOf, type Reading } from '../../../src/domain/follicles/reading.ts';
import { defaultProtocol } from '../../../src/domain/protocol/values.ts';
import { nightOf } from '../../../demo-data/follicle-females.ts';
import { anEvent } from '../../make.ts';

/** Millimetres on ultrasound (one or two axes), `'none'` seen there, or a felt class. */
export type Found =
  | number
  | readonly [number, number]
  | 'none'
  | Extract<Scan['found'], { method: 'palpation' }>['felt'];

/** A scan late on the evening of a day of the season. */
export function aScan(day: number, found: Found): Scan {
  const at = `${nightOf(day)}T22:00:00+01:00`;
  if (typeof found === 'string' && found !== 'none') {
    return anEvent('follicles-scanned', {
      at: at as Scan['at'],
      found: { method: 'palpation', felt: found },
    });
  }
  const [a, b = a] = typeof found === 'object' ? found : [found];
  const largestMm =
    typeof a === 'number' && typeof b === 'number' ? { largestMm: [a, b] as [number, number] } : {};
  return anEvent('follicles-scanned', {
    at: at as Scan['at'],
    found: { method: 'ultrasound', ...largestMm },
  });
}

/** The readings of scans on days of the season, with the error as assumed. */
export const readings = (
  ...scans: readonly (readonly [day: number, found: Found])[]
): readonly Reading[] =>
  readingsOf(
    scans.map(([day, found]) => aScan(day, found)),
    scanErrors([], defaultProtocol),
    defaultProtocol,
  );
