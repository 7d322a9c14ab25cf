// Chances of inheritance are fractions of small whole numbers, and keepers know them as such: 2/3 is
// not 0.667. They stay exact until a clutch's n eggs raise them to a power; from there on they are
// floating point numbers, good to twelve places, but for ties, which are decided exactly.

/** A rational number in lowest terms, the denominator positive. Plain data: it survives a message. */
export interface Fraction {
  readonly n: bigint;
  readonly d: bigint;
}

export const ZERO: Fraction = { n: 0n, d: 1n };
export const ONE: Fraction = { n: 1n, d: 1n };
export const HALF: Fraction = { n: 1n, d: 2n };

function commonDivisor(a: bigint, b: bigint): bigint {
  let [x, y] = [a < 0n ? -a : a, b];
  while (y !== 0n) [x, y] = [y, x % y];
  return x;
}

function reduced(n: bigint, d: bigint): Fraction {
  const divisor = commonDivisor(n, d);
  return divisor === 1n ? { n, d } : { n: n / divisor, d: d / divisor };
}

/** Throws a RangeError for a denominator that is not positive, and for numbers that are not whole. */
export function fraction(n: number | bigint, d: number | bigint = 1n): Fraction {
  if (d <= 0) throw new RangeError(`A fraction's denominator must be positive, not ${d}.`);
  return reduced(BigInt(n), BigInt(d));
}

export function add(a: Fraction, b: Fraction): Fraction {
  if (a.n === 0n) return b;
  if (b.n === 0n) return a;
  if (a.d === b.d) return reduced(a.n + b.n, a.d);
  return reduced(a.n * b.d + b.n * a.d, a.d * b.d);
}

export function times(a: Fraction, b: Fraction): Fraction {
  if (a.n === 0n || b.n === 0n) return ZERO;
  if (a.d === 1n && a.n === 1n) return b;
  if (b.d === 1n && b.n === 1n) return a;
  return reduced(a.n * b.n, a.d * b.d);
}

export const minus = (a: Fraction, b: Fraction): Fraction => add(a, { n: -b.n, d: b.d });

/** Throws a RangeError when `b` is not positive: no chance is divided by less. */
export function over(a: Fraction, b: Fraction): Fraction {
  if (b.n <= 0n) throw new RangeError('Divided by a chance of nothing.');
  return reduced(a.n * b.d, a.d * b.n);
}

export const oneMinus = (a: Fraction): Fraction => ({ n: a.d - a.n, d: a.d });

export const sum = (all: Iterable<Fraction>): Fraction => {
  let total = ZERO;
  for (const each of all) total = add(total, each);
  return total;
};

/** Below zero when `a` is the smaller, above when it is the larger. */
export function compare(a: Fraction, b: Fraction): number {
  const difference = a.n * b.d - b.n * a.d;
  if (difference === 0n) return 0;
  return difference < 0n ? -1 : 1;
}

export const isChance = ({ n, d }: Fraction): boolean => n >= 0n && n <= d;

export const same = (a: Fraction, b: Fraction): boolean => a.n === b.n && a.d === b.d;

export function power(base: Fraction, exponent: number): Fraction {
  return { n: base.n ** BigInt(exponent), d: base.d ** BigInt(exponent) };
}

export const keyOf = (a: Fraction): string => `${a.n}/${a.d}`;

const EXACT = 2n ** 53n;

/** The nearest floating point number, also when both halves are beyond its range. */
export function toNumber({ n, d }: Fraction): number {
  if (n < EXACT && n > -EXACT && d < EXACT) return Number(n) / Number(d);
  if (n < 0n) return -toNumber({ n: -n, d });
  // 64 bits of quotient: more than a double holds.
  const shift = d.toString(2).length - n.toString(2).length + 64;
  const quotient = shift >= 0 ? (n << BigInt(shift)) / d : n / (d << BigInt(-shift));
  return Number(quotient) * 2 ** -shift;
}

/**
 * The simplest fraction within 1e-12 of a number, by its continued fraction: 0.3218543046357616,
 * worked out from a pedigree, is 243/755 again. Throws a RangeError for what is no chance.
 */
export function nearestFraction(value: number): Fraction {
  if (!(value >= 0 && value <= 1)) throw new RangeError(`${value} is no chance.`);
  let [before, now] = [
    { n: 0, d: 1 },
    { n: 1, d: 0 },
  ];
  let rest = value;
  for (;;) {
    const whole = Math.floor(rest);
    [before, now] = [now, { n: whole * now.n + before.n, d: whole * now.d + before.d }];
    if (Math.abs(now.n / now.d - value) <= 1e-12) return fraction(now.n, now.d);
    rest = 1 / (rest - whole);
  }
}
