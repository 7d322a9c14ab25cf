import { signal } from '@preact/signals';
import { showGrams } from '../domain/core/units.ts';
import { remember, remembered } from './remember.ts';

export type MassUnit = 'g' | 'oz';

/** How to say masses in pounds and ounces; fetched only where the keeper reads them so. */
const pounds = signal<typeof import('../domain/core/pounds.ts') | undefined>(undefined);

/** The keeper's unit for masses, on this device. Records are in grams. */
export const massUnit = (): MassUnit => (pounds.value ? 'oz' : 'g');

export async function setMassUnit(unit: MassUnit): Promise<void> {
  remember('mass-unit', unit === 'g' ? undefined : unit);
  pounds.value = unit === 'g' ? undefined : await import('../domain/core/pounds.ts');
}

/**
 * Resolves once masses can be said in the keeper's unit. Should that not come, grams are said, and
 * say that they are grams.
 */
export const unitIsHere: Promise<void> =
  remembered('mass-unit') === 'oz' ? setMassUnit('oz').catch(() => undefined) : Promise.resolve();

export const showMass = (massG: number): string =>
  pounds.value ? pounds.value.showPounds(massG) : showGrams(massG);

/** A text or a view of the desk, its masses in the keeper's unit. */
export const inMassUnit = <Told>(told: Told): Told =>
  pounds.value ? pounds.value.inPounds(told) : told;

/** Grams of what was typed in the keeper's unit, and what to keep of the typing; undefined: no mass. */
export function readMass(
  typed: string,
): { massG: number; entered?: { value: number; unit: 'oz' } } | undefined {
  if (!pounds.value) return Number(typed) > 0 ? { massG: Number(typed) } : undefined;
  const read = pounds.value.readOunces(typed);
  return read && { massG: read.massG, entered: { value: read.ounces, unit: 'oz' } };
}
