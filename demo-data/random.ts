/** A stream of chance that repeats itself: the same seed gives the same collection. */
export interface Chance {
  /** From 0 up to but not including 1. */
  next(): number;
  between(low: number, high: number): number;
  /** A whole number, both ends included. */
  whole(low: number, high: number): number;
  happens(probability: number): boolean;
  pick<Item>(items: readonly [Item, ...Item[]]): Item;
}

const STEP = 0x9e3779b9; // 2^32 over the golden ratio: neighbouring seeds start far apart

/** A counter stirred by shifts and odd multipliers: 32 bits of state are plenty for invented data. */
export function chanceFrom(seed: number): Chance {
  let counter = Math.imul(seed | 0, STEP);

  function next(): number {
    counter = (counter + STEP) | 0;
    let bits = counter;
    bits = Math.imul(bits ^ (bits >>> 16), 0x21f0aaad);
    bits = Math.imul(bits ^ (bits >>> 15), 0x735a2d97);
    return ((bits ^ (bits >>> 15)) >>> 0) / 2 ** 32;
  }

  const whole = (low: number, high: number): number => low + Math.floor(next() * (high - low + 1));
  return {
    next,
    between: (low, high) => low + next() * (high - low),
    whole,
    happens: (probability) => next() < probability,
    pick: (items) => items[whole(0, items.length - 1)] ?? items[0],
  };
}
