// Exact by definition. Source: NIST SP 811 (2008), Appendix B.8.
export const GRAMS_PER_OUNCE = 28.349523125;
export const GRAMS_PER_POUND = 453.59237;
export const MM_PER_INCH = 25.4;

/**
 * Grams for the screen: whole ones from 100 g, tenths below, where a hatchling's scale shows them.
 *
 * A no-break space holds number and unit on one line, and lets a page say the mass in another unit.
 */
export const showGrams = (massG: number): string =>
  `${massG >= 100 || Number.isInteger(massG) ? inThousands(Math.round(massG)) : massG.toFixed(1)}\u00A0g`;

/** A comma after each three digits. The device's own way takes long to get ready, at every start. */
const inThousands = (whole: number): string => String(whole).replace(/\B(?=(?:\d{3})+$)/g, ',');

/** Degrees Celsius of degrees Fahrenheit, exact. Source: NIST SP 811 (2008), Appendix B.8. */
export const celsiusOf = (tempF: number): number => (tempF - 32) / 1.8;

export const fahrenheitOf = (tempC: number): number => tempC * 1.8 + 32;
