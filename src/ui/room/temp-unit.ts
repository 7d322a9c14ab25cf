import { signal } from '@preact/signals';
import { celsiusOf, fahrenheitOf } from '../../domain/core/units.ts';
import { remember, remembered } from '../remember.ts';

export type TempUnit = '°C' | '°F';

/** The keeper's unit for temperatures, on this device. Records are in °C. */
export const tempUnit = signal<TempUnit>(remembered('temp-unit') === '°F' ? '°F' : '°C');

export function setTempUnit(unit: TempUnit): void {
  tempUnit.value = unit;
  remember('temp-unit', unit);
}

export const inUnit = (tempC: number, unit: TempUnit): number =>
  unit === '°C' ? tempC : fahrenheitOf(tempC);

/** What was typed in a unit, in °C to the hundredth. */
export const fromUnit = (typed: number, unit: TempUnit): number =>
  unit === '°C' ? typed : Math.round(celsiusOf(typed) * 100) / 100;

/** @example showTemp(26.1, '°F') //=> '79.0 °F' */
export const showTemp = (tempC: number, unit: TempUnit): string =>
  `${inUnit(tempC, unit).toFixed(1)} ${unit}`;

/** A difference, which has no zero point to shift. */
export const showTempError = (errorC: number, unit: TempUnit): string =>
  `± ${(unit === '°C' ? errorC : errorC * 1.8).toFixed(1)} ${unit}`;
