import { showGrams } from '../core/units.ts';
import type { ProtocolValue } from './protocol-value.ts';

type Unit = ProtocolValue['unit'];

const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;

/** Shares are told and typed as percentages. */
export const isShare = (unit: Unit): boolean => unit === 'share' || unit === 'share of body mass';

/** The unit as it stands beside a number that is typed. */
export function unitWords(unit: Unit): string {
  if (unit === 'share') return '%';
  if (unit === 'share of body mass') return '% of body mass';
  return unit;
}

const percent = (share: number): number => Number((share * 100).toFixed(1));

/** @example showValue(0.05, 'share of body mass') //=> '5 % of body mass' */
export function showValue(value: number, unit: Unit): string {
  if (unit === 'g') return showGrams(value);
  if (unit === 'month') return MONTHS[value - 1] ?? `month ${value}`;
  if (isShare(unit)) return `${percent(value)} ${unitWords(unit)}`;
  const isOne =
    value === 1 && /^(days|hours|minutes|cycles|scans|offers|females|meals|months)$/.test(unit);
  return `${value} ${isOne ? unit.slice(0, -1) : unit}`;
}

/** @example showRange(7, 10, 'days') //=> '7–10 days' */
export function showRange(from: number, to: number, unit: Unit): string {
  if (unit === 'month') return `${showValue(from, unit)} to ${showValue(to, unit)}`;
  const first = isShare(unit) ? percent(from) : from;
  return `${first}–${showValue(to, unit)}`;
}
