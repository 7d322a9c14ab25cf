import {
  add,
  compare,
  ONE,
  oneMinus,
  power,
  same,
  sum,
  times,
  toNumber,
  ZERO,
  type Fraction,
} from './fraction.ts';
import type { TargetCase } from './target-odds.ts';

/** What is hoped for: one at least, or at least one of each sex. */
export type Hope = 'one' | 'one of each sex';

export interface InClutch {
  readonly atLeastOne: number;
  readonly none: number;
  readonly oneOfEachSex: number;
  readonly expected: number;
}

/**
 * What n eggs, or hatchlings, hold of the target. Eggs are independent within a case of parents'
 * genotypes; the cases are mixed, not their chances. Good to 1e-12. Throws a RangeError unless n is
 * a whole number from 0.
 */
export function inClutch(cases: readonly TargetCase[], n: number): InClutch {
  if (!Number.isSafeInteger(n) || n < 0) throw new RangeError(`A clutch cannot hold ${n}.`);
  return {
    atLeastOne: reached(cases, n, 'one'),
    none: mixed(cases, ({ both }) => missed(both, n)),
    oneOfEachSex: reached(cases, n, 'one of each sex'),
    expected: n * toNumber(sum(cases.map((each) => times(each.weight, bothOf(each))))),
  };
}

/** Chance of 0, 1, … n that meet the target. Throws a RangeError unless n is whole, 0 to 200. */
export function howMany(cases: readonly TargetCase[], n: number): readonly number[] {
  if (!Number.isInteger(n) || n < 0 || n > 200) throw new RangeError(`A clutch cannot hold ${n}.`);
  let ways = 1;
  return Array.from({ length: n + 1 }, (_, k) => {
    if (k > 0) ways = (ways * (n - k + 1)) / k;
    return mixed(cases, ({ both }) => ways * both ** k * (1 - both) ** (n - k));
  });
}

/** The smallest n for a chance of at least `goal`, or that no n has it, and why. */
export type Needed =
  | { readonly reachable: true; readonly n: number }
  | { readonly reachable: false; readonly limit: Fraction; readonly because: string };

/** Decided exactly where floating point could not. `goal` lies between 0 and 1. */
export function neededFor(cases: readonly TargetCase[], goal: Fraction, hope: Hope): Needed {
  const possible = cases.filter((each) =>
    hope === 'one' ? bothOf(each).n > 0n : each.female.n > 0n && each.male.n > 0n,
  );
  const limit = sum(possible.map(({ weight }) => weight));
  const never: Needed = { reachable: false, limit, because: whyNot(limit) };
  if (limit.n === 0n || compare(limit, goal) < 0) return never;
  if (compare(limit, goal) === 0) {
    // It comes ever closer, unless the first is sure already.
    const sure = hope === 'one' && possible.every((each) => same(bothOf(each), ONE));
    return sure ? { reachable: true, n: 1 } : never;
  }
  const enough = (n: number) => isReached(cases, n, hope, goal);
  let high = 1;
  while (!enough(high)) {
    if (high > MOST) return never;
    high *= 2;
  }
  let low = Math.floor(high / 2);
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (enough(middle)) high = middle;
    else low = middle;
  }
  return { reachable: true, n: high };
}

/** More young than a lifetime of seasons gives, and still exact in floating point. */
const MOST = 2 ** 50;

const whyNot = (limit: Fraction): string =>
  limit.n === 0n
    ? 'These parents cannot give it.'
    : `However many there are, the chance never passes ${limit.n}/${limit.d}: that these parents can give it at all.`;

/** Near enough for rounding to decide, and few enough to work out exactly. */
const TIE = 1e-9;
const EXACT_UP_TO = 2_000;

function isReached(cases: readonly TargetCase[], n: number, hope: Hope, goal: Fraction): boolean {
  const distance = reached(cases, n, hope) - toNumber(goal);
  if (Math.abs(distance) > TIE || n > EXACT_UP_TO) return distance >= 0;
  return compare(reachedExactly(cases, n, hope), goal) >= 0;
}

const bothOf = ({ female, male }: TargetCase): Fraction => add(female, male);

/** (1 − p)ⁿ, without loss where p is small. */
const missed = (p: number, n: number): number => (n === 0 ? 1 : Math.exp(n * Math.log1p(-p)));

interface Chances {
  readonly female: number;
  readonly male: number;
  readonly both: number;
}
function mixed(cases: readonly TargetCase[], of: (chances: Chances) => number): number {
  return cases.reduce((total, each) => {
    const female = toNumber(each.female);
    const male = toNumber(each.male);
    return total + toNumber(each.weight) * of({ female, male, both: toNumber(bothOf(each)) });
  }, 0);
}

function reached(cases: readonly TargetCase[], n: number, hope: Hope): number {
  if (n === 0) return 0;
  if (hope === 'one') return mixed(cases, ({ both }) => -Math.expm1(n * Math.log1p(-both)));
  return mixed(cases, ({ female, male, both }) =>
    Math.max(0, 1 - missed(female, n) - missed(male, n) + missed(both, n)),
  );
}

function reachedExactly(cases: readonly TargetCase[], n: number, hope: Hope): Fraction {
  return cases.reduce((total, each) => {
    const none = missedExactly(bothOf(each), n);
    const oneSexOnly = add(missedExactly(each.female, n), missedExactly(each.male, n));
    const met = hope === 'one' ? oneMinus(none) : add(oneMinus(oneSexOnly), none);
    return add(total, times(each.weight, met));
  }, ZERO);
}

const missedExactly = (p: Fraction, n: number): Fraction => power(oneMinus(p), n);
