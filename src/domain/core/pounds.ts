import { GRAMS_PER_OUNCE } from './units.ts';

const OUNCES_PER_POUND = 16;
/** Below it a tenth of an ounce is too coarse for a hatchling. */
const FINE_BELOW_OUNCES = 4;

/**
 * Pounds and ounces for the screen: to a tenth of an ounce (about 3 g), below 4 oz to a hundredth.
 *
 * @example showPounds(1_640) //=> '3 lb 9.8 oz'
 */
export function showPounds(massG: number): string {
  const ounces = massG / GRAMS_PER_OUNCE;
  if (ounces < FINE_BELOW_OUNCES) return `${ounces.toFixed(2)} oz`;
  const tenths = Math.round(ounces * 10);
  const pounds = Math.floor(tenths / (OUNCES_PER_POUND * 10));
  const rest = `${((tenths - pounds * OUNCES_PER_POUND * 10) / 10).toFixed(1)} oz`;
  return pounds === 0 ? rest : `${pounds} lb ${rest}`;
}

/** Ounces and their grams, of what was typed: "57.8", or "3 lb 9.8"; undefined where it is no mass. */
export function readOunces(typed: string): { ounces: number; massG: number } | undefined {
  const parts = /^(?:(\d+(?:\.\d*)?) lb ?)?(\d+(?:\.\d*)?)?$/.exec(typed);
  if (!parts) return undefined;
  const ounces = Number(parts[1] ?? 0) * OUNCES_PER_POUND + Number(parts[2] ?? 0);
  // Scales that show grams show no more than tenths.
  const massG = Math.round(ounces * GRAMS_PER_OUNCE * 10) / 10;
  return massG > 0 ? { ounces: Math.round(ounces * 1_000) / 1_000, massG } : undefined;
}

/** What `showGrams` wrote, wherever it stands in a text. A keeper's own words have no such space. */
const GRAMS = /(\d[\d,]*(?:\.\d+)?)\u00A0g\b/g;

/** The same text or plain data, with every mass that the program wrote said in pounds and ounces. */
export function inPounds<Told>(told: Told): Told;
export function inPounds(told: unknown): unknown {
  if (typeof told === 'string') {
    return told.replace(GRAMS, (_all, grams: string) =>
      showPounds(Number(grams.replace(/,/g, ''))),
    );
  }
  if (Array.isArray(told)) return told.map((each) => inPounds(each));
  if (told === null || typeof told !== 'object') return told;
  return Object.fromEntries(Object.entries(told).map(([key, value]) => [key, inPounds(value)]));
}
