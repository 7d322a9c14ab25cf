import { tenth } from '../core/tenth.ts';
import { beyondErrorMm, errorMmOf, type MethodError } from '../follicles/error.ts';
import type { Doubt, Verdict } from './doubt.ts';

type Axes = readonly [number, number];

export interface ScanEntry {
  /** As typed, in millimetres. */
  readonly axesMm: Axes;
  /** The last size measured before it, in this season. */
  readonly last?: { readonly mm: number; readonly daysAgo: number } | undefined;
  /** How far her scans are off. */
  readonly error: MethodError;
}

const LIMITS_MM = { low: 0.5, high: 80 };
/** A smaller number is often one of centimetres. */
const SMALL_MM = 6;
const LARGE_MM = 55;
/** Two axes across each other in one follicle are not further apart. */
const MOST_RATIO = 2;
/** From 20 mm she ovulates after 25 days at the earliest: a follicle grows no faster. */
const GROWS_MM_A_DAY = 1;
const FELL_SHARE = 0.3;

/** What stands against the two axes of a follicle. Sources: scanSizes, follicleStages. */
export function scanSlips(entry: ScanEntry): Pick<Verdict, 'refusals' | 'doubts'> {
  const { axesMm } = entry;
  const doubt = isOdd(axesMm, entry) ? (slipped(entry) ?? jumped(entry)) : undefined;
  const doubts = doubt ? [doubt] : [];
  const beyond = axesMm.find((mm) => mm < LIMITS_MM.low || mm > LIMITS_MM.high);
  if (beyond === undefined) return { refusals: [], doubts };
  const message = `${beyond} mm cannot be a follicle: ${LIMITS_MM.low} to ${LIMITS_MM.high} mm.`;
  return { refusals: [{ code: 'size-out-of-range', message }], doubts };
}

const meanMm = ([a, b]: Axes): number => (a + b) / 2;
export const showAxes = ([a, b]: Axes): string => `${a} × ${b} mm`;

const isUnlike = (axes: Axes): boolean => Math.max(...axes) > MOST_RATIO * Math.min(...axes);

function isSmall(axes: Axes, { last }: ScanEntry): boolean {
  return Math.min(...axes) < SMALL_MM && (last === undefined || last.mm > SMALL_MM);
}

function hasGrownTooFast(axes: Axes, { last, error }: ScanEntry): boolean {
  if (!last) return false;
  const sized = (mm: number) => ({ mm, errorMm: errorMmOf(mm, error), error });
  const mm = meanMm(axes);
  const allowed = last.daysAgo * GROWS_MM_A_DAY + beyondErrorMm(sized(last.mm), sized(mm));
  return mm - last.mm > allowed;
}

const hasFallen = (axes: Axes, { last }: ScanEntry): boolean =>
  last !== undefined && meanMm(axes) < last.mm * (1 - FELL_SHARE);

const isOdd = (axes: Axes, entry: ScanEntry): boolean =>
  isSmall(axes, entry) ||
  Math.max(...axes) > LARGE_MM ||
  isUnlike(axes) ||
  hasGrownTooFast(axes, entry) ||
  hasFallen(axes, entry);

/** What may have been meant: one axis or both in centimetres, or a point left out. Likeliest first. */
const slips: readonly Axes[] = [
  [10, 1],
  [1, 10],
  [0.1, 1],
  [1, 0.1],
  [10, 10],
  [0.1, 0.1],
  [10, 0.1],
  [0.1, 10],
];

/** The slip that makes an odd pair of axes an ordinary one. */
function slipped(entry: ScanEntry): Doubt | undefined {
  const [a, b] = entry.axesMm;
  for (const [times, timesAcross] of slips) {
    const meant: Axes = [tenth(a * times), tenth(b * timesAcross)];
    if (isOdd(meant, entry)) continue;
    const [value, across] = meant;
    const instead = { label: showAxes(meant), value, across };
    const typed = showAxes(entry.axesMm);
    if (times < 1 || timesAcross < 1) {
      const message = `${typed} is larger than a follicle. A point left out?`;
      return { code: 'point-left-out', message, instead };
    }
    const message =
      times === timesAcross
        ? `${typed} is very small${after(entry)}. Was it centimetres?`
        : `${typed}: one axis is far smaller than the other. Was it centimetres?`;
    return { code: 'centimetres', message, instead };
  }
  return undefined;
}

/** What no slip explains. */
function jumped(entry: ScanEntry): Doubt | undefined {
  const { axesMm, last } = entry;
  const now = showAxes(axesMm);
  if (Math.max(...axesMm) > LARGE_MM) {
    return { code: 'very-large', message: `${now} is larger than a ripe follicle. Sure?` };
  }
  if (isUnlike(axesMm)) {
    const message = `${now}: two axes of one follicle are not so far apart. Sure?`;
    return { code: 'unlike-axes', message };
  }
  if (hasGrownTooFast(axesMm, entry)) {
    const message = `${now}${after(entry)}: a follicle grows about ${GROWS_MM_A_DAY} mm a day at most. The right snake?`;
    return { code: 'grew', message };
  }
  if (last && hasFallen(axesMm, entry)) {
    const message = `${now}${after(entry)}. Scan again in two weeks before reading it as resorbing.`;
    return { code: 'fell', message };
  }
  return undefined;
}

function after({ last }: ScanEntry): string {
  if (!last) return '';
  const ago = last.daysAgo === 0 ? 'the same night' : `${last.daysAgo} days before`;
  return `, after ${last.mm} mm ${last.daysAgo === 1 ? 'the night before' : ago}`;
}
