// How a forecast of one more value narrows and moves with the values seen: closed forms, no days.

/** What is taken to be so before any value: normal, with spreads in shares of one another. */
export interface Prior {
  readonly mean: number;
  /** Variance from one value to the next within a group. */
  readonly variance: number;
  /** How many values the variance is worth: degrees of freedom of its inverse gamma. */
  readonly degrees: number;
  /** Variance of the means of keepers, in variances of a value. */
  readonly keepers: number;
  /** Variance of the means of one keeper's groups, in variances of a value. */
  readonly groups: number;
}

/** One value seen, in the group it belongs to. */
export interface Seen {
  readonly group: string;
  readonly mean: number;
  /** What not knowing it exactly adds to its variance. */
  readonly blur: number;
}

/** The next value is `location` plus `scale` times Student's t of these degrees. */
export interface Predicted {
  readonly location: number;
  readonly scale: number;
  readonly degrees: number;
}

/** What the values seen say of the keeper, and of each group. */
export interface Learnt {
  readonly prior: Prior;
  readonly groups: ReadonlyMap<string, Group>;
  readonly keeper: Known;
  readonly variance: number;
  readonly degrees: number;
}

interface Group {
  readonly worth: number;
  readonly mean: number;
  readonly squares: number;
}

/**
 * Normal–inverse-gamma with the three variances in fixed proportion: given one scale, the means of
 * groups and of the keeper are normal and drawn together by their precisions; the squares left over
 * update the scale. Without groups and blur it is the textbook's
 * (Murphy K.P. 2007, Conjugate Bayesian analysis of the Gaussian distribution).
 *
 * A blurred value counts as w = variance / (variance + blur) of a value, in the means as in the
 * degrees. Its square is the one expected of the value behind it, w·blur + w²·(distance)², and
 * counts w times. All this is exact as long as the variance is what it was taken to be.
 */
export function learn(prior: Prior, seen: readonly Seen[]): Learnt {
  const groups = byGroup(prior, seen);
  let keeper: Known = { mean: prior.mean, precision: 1 / prior.keepers };
  for (const each of groups.values()) keeper = combine(keeper, saysOfKeeper(prior, each));

  let squares = (keeper.mean - prior.mean) ** 2 / prior.keepers;
  for (const each of groups.values()) {
    const { precision } = saysOfKeeper(prior, each);
    squares += each.squares + precision * (each.mean - keeper.mean) ** 2;
  }
  let [worth, cubes, inside] = [0, 0, 0];
  for (const { blur } of seen) {
    const each = worthOf(prior, blur);
    worth += each;
    cubes += each ** 3;
    inside += each * each * blur;
  }
  const degrees = prior.degrees + worth;
  const share = worth === 0 ? 0 : cubes / worth;
  const variance = (prior.degrees * prior.variance + share * squares + inside) / degrees;
  return { prior, groups, keeper, variance, degrees };
}

/** The next value of one group, or of one not seen yet. Degrees are rounded to a whole number. */
export function predictNext({ prior, groups, ...learnt }: Learnt, group?: string): Predicted {
  const own = group === undefined ? undefined : groups.get(group);
  // What a group shrinks towards is what the others say.
  const others = own ? without(learnt.keeper, saysOfKeeper(prior, own)) : learnt.keeper;
  const usual = { mean: others.mean, precision: 1 / (1 / others.precision + prior.groups) };
  const mean = own ? combine(usual, { mean: own.mean, precision: own.worth }) : usual;
  return {
    location: mean.mean,
    scale: Math.sqrt(learnt.variance * (1 / mean.precision + 1)),
    degrees: Math.round(learnt.degrees),
  };
}

/** A mean, and the precision it is known with, in values. */
interface Known {
  readonly mean: number;
  readonly precision: number;
}

const combine = (one: Known, other: Known): Known => {
  const precision = one.precision + other.precision;
  return {
    mean: (one.mean * one.precision + other.mean * other.precision) / precision,
    precision,
  };
};

const without = (all: Known, one: Known): Known =>
  combine(all, { mean: one.mean, precision: -one.precision });

/** A group says a little of the keeper's mean, however many values it has. */
const saysOfKeeper = (prior: Prior, { mean, worth }: Group): Known => ({
  mean,
  precision: 1 / (prior.groups + 1 / worth),
});

const worthOf = (prior: Prior, blur: number): number => prior.variance / (prior.variance + blur);

function byGroup(prior: Prior, seen: readonly Seen[]): ReadonlyMap<string, Group> {
  const groups = new Map<string, { worth: number; mean: number; squares: number }>();
  for (const { group, mean, blur } of seen) {
    let so = groups.get(group);
    if (!so) groups.set(group, (so = { worth: 0, mean: 0, squares: 0 }));
    const more = worthOf(prior, blur);
    const off = mean - so.mean;
    const all = so.worth + more;
    so.mean += (more / all) * off;
    so.squares += ((more * so.worth) / all) * off * off;
    so.worth = all;
  }
  return groups;
}
