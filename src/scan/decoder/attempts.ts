/** One way of looking at a picture. Each reads some labels that the others do not. */
export interface Attempt {
  /** Sharpens over so many pixels first, for a picture out of focus. */
  readonly sharpen?: { readonly reach: number; readonly strength: number };
  /** Closes fine scratches, which would otherwise break a finder pattern. */
  readonly closeScratches?: boolean;
}

/**
 * In this order, one for each picture, because one picture must not take long and the next is on
 * its way.
 *
 * Measured with pictures made like those of e2e/camera. Near the limits of size, blur, damage, tilt,
 * contrast and noise, of 160: plain 95, reach 2 read 109, reach 3 read 110, one of them 132. With a
 * fine scratch through a finder pattern, of 100: plain 46, closed scratches 53, one of all 59.
 * Histogram thresholds, half size and double size read nothing that sharpening did not.
 */
export const ATTEMPTS: readonly Attempt[] = [
  {},
  { sharpen: { reach: 2, strength: 1 } },
  { sharpen: { reach: 3, strength: 2 } },
  { closeScratches: true },
];

/** The attempt whose turn it is after so many pictures without a code. */
export const attemptAfter = (misses: number): Attempt => ATTEMPTS[misses % ATTEMPTS.length] ?? {};
