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

interface Group {
  readonly group: string;
  readonly worth: number;
  readonly mean: number;
  readonly squares: number;
}

/**
 * The next value of a group of the keeper, or of a new group.
 *
 * Normal–inverse-gamma with the three variances in fixed proportion: given one scale, means of
 * groups and of the keeper are normal and drawn together by their precisions; the squares left over
 * update the scale. Without groups and blur it is the textbook's
 * (Murphy K.P. 2007, Conjugate Bayesian analysis of the Gaussian distribution, section 3).
 *
 * A blurred value counts as `variance / (variance + blur)` of a value, in the means as in the
 * degrees. That is exact in the means as long as the variance is what it was taken to be.
 * The degrees are rounded to a whole number.
 */
export function predictNext(prior: Prior, seen: readonly Seen[], group?: string): Predicted {
  const groups = byGroup(prior, seen);
  const all = pooled(prior, groups);

  const worth = groups.reduce((sum, each) => sum + each.worth, 0);
  const squares = groups.reduce(
    (sum, each) => sum + each.squares + precision(prior, each) * (each.mean - all.mean) ** 2,
    (all.mean - prior.mean) ** 2 / prior.keepers,
  );
  const degrees = prior.degrees + worth;
  const share = seen.length === 0 ? 0 : worth / seen.length;
  const variance = (prior.degrees * prior.variance + share * squares) / degrees;

  const own = groups.find((each) => each.group === group);
  // Her own values are not in what she shrinks towards.
  const others = own ? pooled(prior, groups.filter((each) => each !== own)) : all;
  const hers = combine(
    { mean: others.mean, precision: 1 / (1 / others.precision + prior.groups) },
    { mean: own?.mean ?? 0, precision: own?.worth ?? 0 },
  );
  return {
    location: hers.mean,
    scale: Math.sqrt(variance * (1 / hers.precision + 1)),
    degrees: Math.round(degrees),
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

const pooled = (prior: Prior, groups: readonly Group[]): Known =>
  groups.reduce<Known>(
    (known, each) => combine(known, { mean: each.mean, precision: precision(prior, each) }),
    { mean: prior.mean, precision: 1 / prior.keepers },
  );

/** How much a group says of the keeper's mean: a little, however many values it has. */
const precision = (prior: Prior, { worth }: Group): number => 1 / (prior.groups + 1 / worth);

function byGroup(prior: Prior, seen: readonly Seen[]): readonly Group[] {
  return [...new Set(seen.map(({ group }) => group))].map((group) => {
    const values = seen
      .filter((each) => each.group === group)
      .map(({ mean, blur }) => ({ mean, worth: prior.variance / (prior.variance + blur) }));
    const worth = values.reduce((sum, each) => sum + each.worth, 0);
    const mean = values.reduce((sum, each) => sum + each.worth * each.mean, 0) / worth;
    const squares = values.reduce((sum, each) => sum + each.worth * (each.mean - mean) ** 2, 0);
    return { group, worth, mean, squares };
  });
}
