import type { Protocol } from '../protocol/values.ts';
import type { Outcome } from '../events/feeding.ts';
import type { CountChances } from './count-chances.ts';

/** How an animal is expected to eat, before its own offers are counted. */
export type AppetiteClass =
  | 'hatchling'
  | 'grower'
  | 'female'
  | 'male'
  | 'male in season'
  | 'ovulated, before eggs'
  | 'with her eggs'
  | 'in blue';

/**
 * The usual share of offers taken. Source: appetite; keepers’ own counts replace it offer by offer. Of gravid
 * females, 25–50 % are told; the rest are round figures.
 */
export const usualAcceptance: Readonly<Record<AppetiteClass, number>> = {
  hatchling: 0.75,
  grower: 0.9,
  female: 0.85,
  male: 0.85,
  'male in season': 0.45,
  'ovulated, before eggs': 0.35,
  'with her eggs': 0.05,
  'in blue': 0.25,
};

/** A beta: as if so many offers had been eaten and refused. */
export interface Acceptance {
  readonly eaten: number;
  readonly refused: number;
}

/**
 * The chance that an animal eats, from its class and its own offers in the same class: the usual share counts as
 * `acceptanceWorth` offers. A meal that was left counts for nothing, one taken in part as eaten.
 *
 * Source: preyModel.
 */
export function acceptanceOf(
  kind: AppetiteClass,
  outcomes: readonly Outcome[],
  protocol: Protocol,
): Acceptance {
  const usual = usualAcceptance[kind];
  const count = (wanted: (outcome: Outcome) => boolean): number => outcomes.filter(wanted).length;
  return {
    eaten:
      usual * protocol.acceptanceWorth +
      count((outcome) => outcome === 'ate' || outcome === 'partly'),
    refused: (1 - usual) * protocol.acceptanceWorth + count((outcome) => outcome === 'refused'),
  };
}

/** The chance that the next offer is eaten. */
export const chanceEats = ({ eaten, refused }: Acceptance): number => eaten / (eaten + refused);

/**
 * How many of several offers to one animal are eaten: the beta binomial, for its chance is not known and is the same for
 * all of them [Johnson N.L., Kemp A.W. & Kotz S. 2005, Univariate Discrete Distributions, 6.2.2].
 */
export function eatenOf(offers: number, { eaten, refused }: Acceptance): CountChances {
  // Pólya's urn: each offer eaten makes the next one likelier, exactly as the beta does.
  let chances = [1];
  for (let made = 0; made < offers; made += 1) {
    const next = Array.from({ length: made + 2 }, () => 0);
    for (const [n, chance] of chances.entries()) {
      const eats = (eaten + n) / (eaten + refused + made);
      next[n + 1] = (next[n + 1] ?? 0) + chance * eats;
      next[n] = (next[n] ?? 0) + chance * (1 - eats);
    }
    chances = next;
  }
  return chances;
}
