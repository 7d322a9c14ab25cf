// Exact by definition. Source: NIST SP 811 (2008), Appendix B.8.
export const GRAMS_PER_OUNCE = 28.349523125;
export const GRAMS_PER_POUND = 453.59237;
export const MM_PER_INCH = 25.4;

/** Grams for the screen: whole ones from 100 g, tenths below, where a hatchling's scale shows them. */
export const showGrams = (massG: number): string =>
  `${massG >= 100 || Number.isInteger(massG) ? Math.round(massG).toLocaleString('en') : massG.toFixed(1)} g`;
