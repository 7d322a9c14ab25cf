import type { ProtocolValue } from './protocol-value.ts';

type Unit = ProtocolValue['unit'];

interface UnitLimits {
  readonly least: number;
  readonly most: number;
  readonly fineness: number;
  /** A clock and a thermometer know no times: so far beyond what is in use, and no farther. */
  readonly near?: number;
}

/** What a unit allows at all, and how finely a value in it can be told. */
const units: Readonly<Record<Unit, UnitLimits>> = {
  days: { least: 0, most: 500, fineness: 1 },
  minutes: { least: 1, most: 240, fineness: 1 },
  hours: { least: 0, most: 96, fineness: 1 },
  'o’clock': { least: 0, most: 23, fineness: 1, near: 4 },
  g: { least: 1, most: 6_000, fineness: 1 },
  mm: { least: 0.5, most: 80, fineness: 0.5 },
  '°C': { least: 0, most: 45, fineness: 0.1, near: 8 },
  cycles: { least: 1, most: 100, fineness: 1 },
  scans: { least: 1, most: 100, fineness: 1 },
  offers: { least: 1, most: 100, fineness: 1 },
  females: { least: 1, most: 60, fineness: 1 },
  meals: { least: 1, most: 30, fineness: 1 },
  month: { least: 1, most: 12, fineness: 1 },
  months: { least: 0, most: 120, fineness: 1 },
  share: { least: 0, most: 1, fineness: 0.01 },
  'share of body mass': { least: 0, most: 1, fineness: 0.01 },
};

/** So many times beyond what is in use, a value is a slip and no choice. */
const FAR = 4;

/** Steps that a thumb takes, of which about ten cross the range in use. */
const steps = [0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100];

export interface Limits {
  /** Outside these two it is not written down. In the unit of the value. */
  readonly least: number;
  readonly most: number;
  /** A value is a whole multiple of this. */
  readonly fineness: number;
  /** From one tap to the next. */
  readonly step: number;
}

/** How far a value can be set at all, well beyond what is in use. */
export function limitsOf({ unit, from, to, value }: ProtocolValue): Limits {
  const { least, most, near = Infinity } = units[unit];
  const fineness = finenessOf(units[unit].fineness, [from, to, value]);
  const low = Math.max(least, from / FAR, from - near);
  const high = Math.min(most, to * FAR, to + near);
  return {
    least: snapped(Math.min(from, low), fineness, Math.ceil),
    most: snapped(Math.max(to, high), fineness, Math.floor),
    fineness,
    step: Math.max(fineness, steps.findLast((step) => step <= (to - from) / 10 + 1e-9) ?? 0),
  };
}

/** A value given in tenths is told in tenths, whatever is usual for its unit. */
const finenessOf = (usual: number, given: readonly number[]): number =>
  [1, 2, 5, 10]
    .map((parts) => usual / parts)
    .find((fineness) => given.every((each) => isMultiple(each, fineness))) ?? 0.001;

const isMultiple = (value: number, fineness: number): boolean =>
  Math.abs(value / fineness - Math.round(value / fineness)) < 1e-6;

/** To a whole multiple, without the dust of binary fractions. */
export function snapped(
  value: number,
  fineness: number,
  round: (value: number) => number = Math.round,
): number {
  const times = Number((value / fineness).toFixed(6));
  return Number((round(times) * fineness).toFixed(3));
}

/** Whether a value can stand at all. Anything may come in with another phone's file. */
export function isPossible(value: number, about: ProtocolValue): boolean {
  const { least, most, fineness } = limitsOf(about);
  return value >= least && value <= most && isMultiple(value, fineness);
}

export const isInUse = (value: number, { from, to }: ProtocolValue): boolean =>
  value >= from && value <= to;
