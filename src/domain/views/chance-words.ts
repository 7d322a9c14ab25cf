import { compare, toNumber, type Fraction } from '../genes/fraction.ts';

/** Never "100 %" or "0 %" of what is not certain. */
export function percent(chance: number): string {
  if (chance > 0 && chance < 0.005) return 'under 1 %';
  if (chance < 1 && chance > 0.995) return 'over 99 %';
  return `${Math.round(chance * 100)} %`;
}

/** @example oddsWords({ n: 1n, d: 4n }) //=> '1/4 (25 %)' */
export function oddsWords(chance: Fraction): string {
  if (compare(chance, { n: 1n, d: 1n }) === 0) return 'all';
  const shown = percent(toNumber(chance));
  return chance.d <= 128n ? `${chance.n}/${chance.d} (${shown})` : shown;
}
