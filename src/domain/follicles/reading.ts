import { roomNight, type Day } from '../core/calendar.ts';
import type { EventId } from '../core/ids.ts';
import type { Protocol } from '../protocol/values.ts';
import {
  errorMmOf,
  measuredMm,
  type Method,
  type MethodError,
  type Scan,
  type ScanErrors,
  type Sized,
} from './error.ts';

interface Looked {
  readonly id: EventId;
  readonly night: Day;
  readonly method: Method;
}

/** A scan that found a size. */
export interface SizeReading extends Looked, Sized {
  readonly kind: 'size';
  /** Mean of the two axes, or what the felt class stands for. */
  readonly mm: number;
  /** The larger axis, or what the felt class stands for. */
  readonly largerMm: number;
}

/**
 * A scan that found nothing. It is no size and never a point on a line: all it says is that the
 * largest follicle was smaller than what the method can find.
 */
export interface BelowReading extends Looked {
  readonly kind: 'below';
  readonly belowMm: number;
  /** Millimetres, one SD, at that limit. */
  readonly errorMm: number;
  readonly error: MethodError;
}

export type Reading = SizeReading | BelowReading;

/** What each scan says of the largest follicle, from the oldest to the newest. */
export const readingsOf = (
  scans: readonly Scan[],
  errors: ScanErrors,
  protocol: Protocol,
): readonly Reading[] =>
  scans
    .map((scan) => readingOf(scan, errors, protocol))
    .toSorted((a, b) => (inOrder(a) < inOrder(b) ? -1 : 1));

const inOrder = ({ night, id }: Looked): string => `${night} ${id}`;

function readingOf({ id, at, found }: Scan, errors: ScanErrors, protocol: Protocol): Reading {
  const { method } = found;
  const looked = { id, method, night: roomNight(at, protocol.rolloverHour) };
  const error = errors[method];
  const mm = method === 'palpation' ? feltMm(found.felt, protocol) : measuredMm(found);
  if (mm !== undefined) {
    const largerMm = method === 'ultrasound' ? Math.max(...(found.largestMm ?? [mm])) : mm;
    return { kind: 'size', ...looked, mm, largerMm, error, errorMm: errorMmOf(mm, error) };
  }
  const belowMm = method === 'palpation' ? protocol.feltSmallMm : protocol.follicleSeenFromMm;
  return { kind: 'below', ...looked, belowMm, error, errorMm: errorMmOf(belowMm, error) };
}

type Felt = Extract<Scan['found'], { method: 'palpation' }>['felt'];

/** What a felt class stands for, in millimetres. Source: feltSizes. */
export function feltMm(felt: Felt, protocol: Protocol): number | undefined {
  switch (felt) {
    case 'nothing':
      return undefined;
    case 'small bumps':
      return protocol.feltSmallMm;
    case 'round lumps':
      return protocol.feltRoundMm;
    case 'large lumps':
      return protocol.feltLargeMm;
    case 'egg-like':
      return protocol.feltEggMm;
  }
}
