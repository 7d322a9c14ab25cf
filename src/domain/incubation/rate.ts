/** Where one day of development is one day. Unit: °C. */
export const STANDARD_C = 31.5;

/** Times as fast for ten degrees more. Source: incubationModel. */
const Q10 = 1.69;
/** Nothing is reckoned faster than here. Unit: °C. */
export const WARMEST_KNOWN_C = 32;
/** The coolest regime that was measured. Unit: °C. Source: incubationModel. */
export const COOLEST_KNOWN_C = 27.05;
/**
 * Below that, development slows sooner: the steepest step of king ratsnakes, from 24 to 26 °C. Source:
 * Ji X. & Du W.-G. 2001, Comp Biochem Physiol A 129:461–471.
 */
const COLD_Q10 = 3.37;

/**
 * How fast eggs develop at a temperature, as a share of their pace at 31.5 °C.
 *
 * Between 28 and 32 °C after water pythons; hotter than that is reckoned as 32 °C, since nothing is
 * known but that it harms.
 */
export function developmentRate(tempC: number): number {
  const known = Math.min(Math.max(tempC, COOLEST_KNOWN_C), WARMEST_KNOWN_C);
  const below = Math.min(0, tempC - COOLEST_KNOWN_C);
  return Q10 ** ((known - STANDARD_C) / 10) * COLD_Q10 ** (below / 10);
}

/**
 * By which share development may be off that nobody read, where the warmth may be off by so much.
 *
 * Three quarters of its variance are taken to be the incubator's own way, the same for every clutch:
 * that part is learnt with the clutches themselves. Unit: °C, clutches. An assumption of this program.
 */
export const takenError = (errorC: number, ownClutches: number): number =>
  (errorC * Math.log(Q10) * Math.sqrt((1 + 3 / (1 + ownClutches)) / 4)) / 10;
