import { roomNight, type Day } from '../core/calendar.ts';
import type { EventOf } from '../events/event.ts';
import type { Protocol } from '../protocol/values.ts';

/** What a scan record says, wherever it is kept. */
export type Scan = Pick<EventOf<'follicles-scanned'>, 'id' | 'at' | 'found'>;

/** How a size was taken. */
export type Method = Scan['found']['method'];

/** How far a size by one method is off, as one SD. */
export interface MethodError {
  /** Share of the size. */
  readonly share: number;
  /** Millimetres; it is never smaller than this. */
  readonly leastMm: number;
  /** What is known about the error itself, in whole degrees of freedom. */
  readonly degrees: number;
  /** Nights with repeat scans that it was learnt from. */
  readonly nights: number;
}

export type ScanErrors = Readonly<Record<Method, MethodError>>;

/** A size with its error. */
export interface Sized {
  readonly mm: number;
  /** Millimetres, one SD. */
  readonly errorMm: number;
  /** The error of the method that took it, from which `errorMm` follows. */
  readonly error: MethodError;
}

/** The mean of the two axes, in millimetres; undefined where nothing was measured. */
export const measuredMm = (found: Scan['found']): number | undefined =>
  found.method === 'ultrasound' && found.largestMm
    ? (found.largestMm[0] + found.largestMm[1]) / 2
    : undefined;

/** One SD of a size by a method, in millimetres. */
export const errorMmOf = (mm: number, { share, leastMm }: MethodError): number =>
  Math.max(leastMm, share * mm);

/**
 * The keeper's measurement error by method, from repeat scans of one female in one night.
 *
 * The assumed error counts as `follicleErrorWorth` squared deviations of 1; each repeat scan adds its
 * own, in units of the assumed error. The scale so found is that of the scaled inverse chi-squared
 * posterior [Gelman A. et al. 2013, Bayesian Data Analysis, 3rd ed., 2.6], and predictions from it are
 * Student t with as many degrees.
 *
 * Felt classes are not learnt from: the same class felt twice says nothing on how wide the class is.
 */
export function scanErrors(
  scansOfEachFemale: Iterable<readonly Scan[]>,
  protocol: Protocol,
): ScanErrors {
  const degrees = Math.round(protocol.follicleErrorWorth);
  const assumed = {
    share: protocol.follicleErrorShare,
    leastMm: protocol.follicleErrorLeastMm,
    degrees,
    nights: 0,
  };
  const feltShare = protocol.feltErrorShare;
  const leastFeltMm = feltShare * protocol.feltSmallMm; // There is no smaller class.
  const palpation = { share: feltShare, leastMm: leastFeltMm, degrees, nights: 0 };
  let squares = degrees;
  let known = degrees;
  let nights = 0;
  for (const scans of scansOfEachFemale) {
    for (const sizes of repeatsOf(scans, protocol)) {
      const mean = sizes.reduce((sum, mm) => sum + mm, 0) / sizes.length;
      const error = errorMmOf(mean, assumed);
      for (const mm of sizes) squares += ((mm - mean) / error) ** 2;
      known += sizes.length - 1;
      nights += 1;
    }
  }
  const scale = Math.sqrt(squares / known);
  const ultrasound = {
    share: assumed.share * scale,
    leastMm: assumed.leastMm * scale,
    degrees: known,
    nights,
  };
  return { ultrasound, palpation };
}

/** The sizes of each night on which one female was measured more than once. */
function repeatsOf(scans: readonly Scan[], protocol: Protocol): readonly (readonly number[])[] {
  const byNight = new Map<Day, number[]>();
  for (const { at, found } of scans) {
    const mm = measuredMm(found);
    if (mm === undefined) continue;
    const night = roomNight(at, protocol.rolloverHour);
    byNight.set(night, [...(byNight.get(night) ?? []), mm]);
  }
  return [...byNight.values()].filter((sizes) => sizes.length > 1);
}

const BEYOND = 2; // SDs: of equal follicles, one pair in 44 seems to fall by more.

/** How far two sizes must differ before the difference is more than error, in millimetres. */
export const beyondErrorMm = (a: Sized, b: Sized): number =>
  BEYOND * Math.hypot(a.errorMm, b.errorMm);
