import { wilsonInterval, type ShareInterval } from '../core/wilson.ts';
import type { Experience } from './experience.ts';

/** Whole days before ovulation on which a sign was first seen. */
export interface LeadDays {
  /** One in ten came later than this, at most. */
  readonly latest: number;
  readonly middle: number;
  /** One in ten came earlier than this, at most. */
  readonly earliest: number;
}

/** How often a sign came before an ovulation, and how long before, in the keeper's own records. */
export interface SignStatistic {
  readonly sign: string;
  /** Cycles in which it was written down before the ovulation. */
  readonly seenIn: number;
  /** Cycles with an ovulation on record. */
  readonly cycles: number;
  /** 95 % interval of the share of cycles. */
  readonly share: ShareInterval;
  /** Undefined where it was seen in fewer cycles than anything can be said of. */
  readonly lead?: LeadDays | undefined;
}

/** In fewer cycles than this, a sign's days are told to nobody. */
export const FEWEST_CYCLES = 3;
/** Left out at each end; of fewer than ten cycles, none. */
const TAIL = 0.1;

/**
 * What the keeper's records say of each sign, the one that comes first first; too few last.
 *
 * Counted, not weighed: a sign has no number of its own, only a history.
 */
export function signStatistics({
  leads,
  cycles,
}: Pick<Experience, 'leads' | 'cycles'>): readonly SignStatistic[] {
  const bySign = new Map<string, number[]>();
  for (const { sign, days } of leads) bySign.set(sign, [...(bySign.get(sign) ?? []), days]);
  return [...bySign]
    .map(([sign, days]) => ({
      sign,
      seenIn: days.length,
      cycles,
      share: wilsonInterval(days.length, cycles),
      lead: days.length < FEWEST_CYCLES ? undefined : leadDays(days),
    }))
    .toSorted(
      (a, b) =>
        (b.lead?.middle ?? -1) - (a.lead?.middle ?? -1) ||
        b.seenIn - a.seenIn ||
        (a.sign < b.sign ? -1 : 1),
    );
}

function leadDays(days: readonly number[]): LeadDays {
  const sorted = days.toSorted((a, b) => a - b);
  const last = sorted.length - 1;
  const out = Math.floor(TAIL * sorted.length);
  const at = (place: number): number => sorted[place] ?? 0;
  return {
    latest: at(out),
    middle: Math.round((at(Math.floor(last / 2)) + at(Math.ceil(last / 2))) / 2),
    earliest: at(last - out),
  };
}
