import type { AnimalId } from '../core/ids.ts';
import { tCdf } from '../core/student-t.ts';
import type { Protocol } from '../protocol/values.ts';
import { seenBetween, type Candidates } from './between-looks.ts';
import type { LagChances } from './day-chances.ts';
import { spreadOf, type LinkName, type Spread } from './link.ts';
import type { OwnInterval } from './own-interval.ts';
import { learn, predictNext, type Learnt, type Predicted, type Prior } from './posterior.ts';
import { usualLength } from './usual-length.ts';

/** How long a link takes next time, and how many own cycles that rests on. */
export interface Lag {
  readonly chances: LagChances;
  /** The keeper's cycles that were counted, hers included. */
  readonly ownCycles: number;
  readonly herCycles: number;
}

/**
 * How long a link takes for a female, or for any of the keeper's, by the keeper's own cycles.
 *
 * Without any it is the protocol's spread, which is two things: rooms differ, and so do the cycles
 * of one room, and the females in it. With each cycle of one's own the first part shrinks and the
 * window moves. A length known only to lie between two looks is spread over its days, by what the
 * other cycles say of them, and counts for less the less it adds. Lengths beyond what the protocol
 * holds possible are not counted; what is left of a range that reaches beyond is.
 *
 * Unit: days. The same arrays give the same answer object.
 */
export function lagChances(
  link: LinkName,
  protocol: Protocol,
  own: readonly OwnInterval[],
  female?: AnimalId,
): Lag {
  const belief = beliefIn(link, protocol, own);
  // One who has no cycle yet is any of the keeper's.
  const key = female !== undefined && belief.learnt.groups.has(female) ? female : ANY;
  const known = belief.lags.get(key);
  if (known) return known;
  const lag = {
    chances: onDays(predictNext(belief.learnt, key), belief.aheadDays, belief.spread),
    ownCycles: belief.counted.length,
    herCycles: belief.counted.filter((each) => each.female === key).length,
  };
  belief.lags.set(key, lag);
  return lag;
}
const ANY = '';

/** What is believed of one link, and the answers given so far. */
interface Belief {
  readonly spread: Spread;
  readonly aheadDays: number;
  readonly counted: readonly OwnInterval[];
  readonly learnt: Learnt;
  readonly lags: Map<string, Lag>;
}

/** Beliefs are kept as long as the protocol and the intervals they rest on. */
const kept = new WeakMap<Protocol, WeakMap<readonly OwnInterval[], Map<LinkName, Belief>>>();

function beliefIn(link: LinkName, protocol: Protocol, own: readonly OwnInterval[]): Belief {
  const ofProtocol = kept.get(protocol) ?? new WeakMap<object, Map<LinkName, Belief>>();
  kept.set(protocol, ofProtocol);
  const ofOwn = ofProtocol.get(own) ?? new Map<LinkName, Belief>();
  ofProtocol.set(own, ofOwn);
  const belief = ofOwn.get(link) ?? believe(link, protocol, own);
  ofOwn.set(link, belief);
  return belief;
}

function believe(link: LinkName, protocol: Protocol, own: readonly OwnInterval[]): Belief {
  const spread = spreadOf(link, protocol);
  const { aheadDays, location, scale } = usualLength(spread, protocol.windowSpreadCycles);
  const counted = own.flatMap((each) => withinReason(each, spread));
  const prior = splitUp(location, scale, protocol);
  const found = counted.map((each) => candidates(each, aheadDays));
  const learnt = learn(prior, seenBetween(prior, found));
  return { spread, aheadDays, counted, learnt, lags: new Map() };
}

/**
 * The prior whose forecast, with nothing seen, has this location and scale.
 *
 * A share k of the variance is between keepers, a share f of the rest between a keeper's females.
 * With k one half, and no females told apart, the prior's mean is worth one cycle.
 */
function splitUp(location: number, scale: number, protocol: Protocol): Prior {
  // Where all of it were one part, the others could not be learnt.
  const k = Math.min(Math.max(protocol.windowKeeperShare, 0.01), 0.99);
  const f = Math.min(protocol.windowFemaleShare, 0.99);
  const cycles = (1 - k) * (1 - f);
  return {
    mean: location,
    variance: scale * scale * cycles,
    degrees: protocol.windowSpreadCycles,
    keepers: k / cycles,
    groups: ((1 - k) * f) / cycles,
  };
}

function withinReason(interval: OwnInterval, spread: Spread): readonly OwnInterval[] {
  const earliestDays = Math.max(interval.earliestDays, spread.neverBefore);
  const latestDays = Math.min(interval.latestDays, spread.neverAfter);
  return earliestDays <= latestDays ? [{ ...interval, earliestDays, latestDays }] : [];
}

function candidates({ female, earliestDays, latestDays }: OwnInterval, ahead: number): Candidates {
  const logs = Array.from({ length: latestDays - earliestDays + 1 }, (_, more) =>
    // What happened on the same day took half of it.
    Math.log(Math.max(earliestDays + more, 0.5) + ahead),
  );
  return { group: female, logs };
}

/** Each day takes what lies within half a day of it; nothing lies outside the limits. */
function onDays(
  { location, scale, degrees }: Predicted,
  ahead: number,
  spread: Spread,
): LagChances {
  const upTo = (days: number): number =>
    days + ahead <= 0 ? 0 : tCdf((Math.log(days + ahead) - location) / scale, degrees);
  const { neverBefore, neverAfter } = spread;
  const reached = Array.from({ length: neverAfter - neverBefore + 2 }, (_, n) =>
    upTo(neverBefore + n - 0.5),
  );
  const first = reached[0] ?? 0;
  const all = (reached.at(-1) ?? 1) - first;
  // Far out the sums of the distribution are all but one, and may fall by their last digit.
  const chances = reached
    .slice(1)
    .map((chance, n) => Math.max(0, chance - (reached[n] ?? 0)) / all);
  return { fromDays: neverBefore, chances };
}
