import type { AnimalId } from '../core/ids.ts';
import { tCdf } from '../core/student-t.ts';
import type { Protocol } from '../protocol/values.ts';
import type { LagChances } from './day-chances.ts';
import { spreadOf, type LinkName, type Spread } from './link.ts';
import type { OwnInterval } from './own-interval.ts';
import { predictNext, type Predicted, type Prior, type Seen } from './posterior.ts';
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
 * window moves. A length known only to lie between two looks is spread evenly over its days: it
 * counts with the mean of their logarithms, and for less, by their variance. Lengths beyond what
 * the protocol holds possible are not counted; what is left of a range that reaches beyond is.
 *
 * Unit: days. The same arrays give the same answer object.
 */
export function lagChances(
  link: LinkName,
  protocol: Protocol,
  own: readonly OwnInterval[],
  female?: AnimalId,
): Lag {
  const learnt = learnFrom(protocol, own);
  const isHers = own.some((each) => each.female === female);
  // One who has no cycle yet is any of the keeper's.
  const key = isHers ? `${link} ${female}` : link;
  const known = learnt.get(key);
  if (known) return known;
  const lag = reckon(link, protocol, own, female);
  learnt.set(key, lag);
  return lag;
}

/** Answers are kept as long as what they were made from. */
const kept = new WeakMap<Protocol, WeakMap<readonly OwnInterval[], Map<string, Lag>>>();

function learnFrom(protocol: Protocol, own: readonly OwnInterval[]): Map<string, Lag> {
  const ofProtocol = kept.get(protocol) ?? new WeakMap<readonly OwnInterval[], Map<string, Lag>>();
  kept.set(protocol, ofProtocol);
  const learnt = ofProtocol.get(own) ?? new Map<string, Lag>();
  ofProtocol.set(own, learnt);
  return learnt;
}

function reckon(
  link: LinkName,
  protocol: Protocol,
  own: readonly OwnInterval[],
  female: AnimalId | undefined,
): Lag {
  const spread = spreadOf(link, protocol);
  const degrees = protocol.windowSpreadCycles;
  const usual = usualLength(spread, degrees);
  const counted = own.flatMap((each) => withinReason(each, spread));
  const seen = counted.map((each) => spreadOut(each, usual.aheadDays));
  const prior = splitUp(usual.location, usual.scale, protocol);
  return {
    chances: onDays(predictNext(prior, seen, female), usual.aheadDays, spread),
    ownCycles: counted.length,
    herCycles: counted.filter((each) => each.female === female).length,
  };
}

/**
 * The prior whose forecast, with nothing seen, has this location and scale.
 *
 * A share k of the variance is between keepers, a share f of the rest between a keeper's females.
 * With k one half, and no females told apart, the prior's mean is worth one cycle.
 */
function splitUp(location: number, scale: number, protocol: Protocol): Prior {
  const k = protocol.windowKeeperShare;
  const f = protocol.windowFemaleShare;
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

function spreadOut({ female, earliestDays, latestDays }: OwnInterval, aheadDays: number): Seen {
  const logs = Array.from({ length: latestDays - earliestDays + 1 }, (_, more) =>
    // What happened on the same day took half of it.
    Math.log(Math.max(earliestDays + more, 0.5) + aheadDays),
  );
  const mean = logs.reduce((sum, log) => sum + log, 0) / logs.length;
  const blur = logs.reduce((sum, log) => sum + (log - mean) ** 2, 0) / logs.length;
  return { group: female, mean, blur };
}

/** Each day takes what lies within half a day of it; nothing lies outside the limits. */
function onDays({ location, scale, degrees }: Predicted, ahead: number, spread: Spread): LagChances {
  const upTo = (days: number): number =>
    days + ahead <= 0 ? 0 : tCdf((Math.log(days + ahead) - location) / scale, degrees);
  const { neverBefore, neverAfter } = spread;
  const reached = Array.from({ length: neverAfter - neverBefore + 2 }, (_, n) =>
    upTo(neverBefore + n - 0.5),
  );
  const first = reached[0] ?? 0;
  const all = (reached.at(-1) ?? 1) - first;
  const chances = reached.slice(1).map((chance, n) => (chance - (reached[n] ?? 0)) / all);
  return { fromDays: neverBefore, chances };
}
