/** Numbers from 0 up to 1, the same for the same seed, so that a failing picture can be drawn again. */
export type Random = () => number;

/** A generator whose whole state is one 32-bit word, mixed by multiply and shift; ample for pictures. */
export function seeded(seed: number): Random {
  let word = seed >>> 0;
  return () => {
    word = (word + 0x9e3779b9) >>> 0;
    let mixed = Math.imul(word ^ (word >>> 16), 0x21f0aaad);
    mixed = Math.imul(mixed ^ (mixed >>> 15), 0x735a2d97);
    return ((mixed ^ (mixed >>> 15)) >>> 0) / 2 ** 32;
  };
}

/** A normally distributed number with mean 0 and deviation 1 (Box and Muller). */
export const normal = (random: Random): number =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
