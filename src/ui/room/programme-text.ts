import type { Programme } from '../../domain/state/room-air.ts';
import { fromUnit, inUnit, type TempUnit } from './temp-unit.ts';

type Step = Programme['steps'][number];

/** A step as it stands in its boxes. */
export interface StepText {
  readonly month: number;
  readonly day: number;
  readonly dayC: string;
  readonly nightC: string;
  readonly hotSpotC: string;
  readonly hotSpotNightC: string;
}

export const tempFields = ['dayC', 'nightC', 'hotSpotC', 'hotSpotNightC'] as const;

/** To the tenth, as a thermostat is set. */
const shown = (tempC: number | undefined, unit: TempUnit): string =>
  tempC === undefined ? '' : String(Math.round(inUnit(tempC, unit) * 10) / 10);

export const textOf = (step: Step, unit: TempUnit): StepText => ({
  month: step.month,
  day: step.day,
  dayC: shown(step.dayC, unit),
  nightC: shown(step.nightC, unit),
  hotSpotC: shown(step.hotSpotC, unit),
  hotSpotNightC: shown(step.hotSpotNightC, unit),
});

const isRoom = (tempC: number | undefined): boolean =>
  tempC === undefined || (tempC >= 5 && tempC <= 45);

/** The step in the boxes; undefined while a temperature is missing or is none of a room’s. */
export function stepOf(text: StepText, unit: TempUnit): Step | undefined {
  const [dayC, nightC, hotSpotC, hotSpotNightC] = tempFields.map((field) => {
    const typed = text[field].trim().replace(',', '.');
    return typed === '' ? undefined : fromUnit(Number(typed), unit);
  });
  if (dayC === undefined || nightC === undefined) return undefined;
  if (![dayC, nightC, hotSpotC, hotSpotNightC].every(isRoom)) return undefined;
  return {
    month: text.month,
    day: text.day,
    dayC,
    nightC,
    ...(hotSpotC === undefined ? {} : { hotSpotC }),
    ...(hotSpotC === undefined || hotSpotNightC === undefined ? {} : { hotSpotNightC }),
  };
}

const two = (n: number): string => String(n).padStart(2, '0');

/** Minutes of the day as a time input holds them. */
export const clockText = (minute: number): string =>
  `${two(Math.floor(minute / 60))}:${two(minute % 60)}`;

export function minuteOf(text: string): number | undefined {
  const [, hours, minutes] = /^(\d\d):(\d\d)/.exec(text) ?? [];
  return hours === undefined ? undefined : 60 * Number(hours) + Number(minutes);
}
