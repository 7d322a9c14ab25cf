import { daysBetween, instantMs, type Day, type Moment } from '../core/calendar.ts';
import type { EventOf } from '../events/event.ts';
import { layingBalanceG } from '../weight/laying.ts';

export interface LayingMasses {
  /** Her last weight before the eggs, and how many days before. */
  readonly before?: { readonly massG: number; readonly days: number } | undefined;
  readonly afterG?: number | undefined;
  readonly clutchG?: number | undefined;
}

interface Weighed {
  readonly at: Moment;
  readonly massG: number;
}

/**
 * Her weights on either side of the eggs, by her weighings from oldest to newest. The one after was
 * written with the eggs, or is of the same or the next night.
 */
export function massesAround(
  { at, notBefore, damMassG, clutchMassG }: EventOf<'laid'>,
  weighings: readonly Weighed[],
  nightOf: (moment: Moment) => Day,
): LayingMasses {
  const lastMs = instantMs(notBefore ?? at);
  const last = weighings.findLast((weighing) => instantMs(weighing.at) <= lastMs);
  const atMs = instantMs(at);
  const next = weighings.find((weighing) => instantMs(weighing.at) >= atMs);
  const after = next && daysBetween(nightOf(at), nightOf(next.at)) <= 1 ? next : undefined;
  return {
    before: last && {
      massG: last.massG,
      days: daysBetween(nightOf(last.at), nightOf(notBefore ?? at)),
    },
    afterG: damMassG ?? after?.massG,
    clutchG: clutchMassG,
  };
}

/** A clutch as a share of its dam, with what it is a share of. */
export interface RelativeMass {
  readonly of: 'her weight before laying' | 'her weight after laying';
  readonly share: number;
}

export interface Balance {
  /** Positive where the eggs weigh more than she lost. */
  readonly overG: number;
  readonly toleranceG: number;
  readonly agrees: boolean;
}

/** The same clutch is another share of another weight: each names its own. Source: relativeClutchMass. */
export function relativeMasses({ before, afterG, clutchG }: LayingMasses): readonly RelativeMass[] {
  if (clutchG === undefined) return [];
  return [
    ...(before ? [{ of: 'her weight before laying' as const, share: clutchG / before.massG }] : []),
    ...(afterG === undefined
      ? []
      : [{ of: 'her weight after laying' as const, share: clutchG / afterG }]),
  ];
}

/** Whether what she lost is what the eggs weigh, within a share of her weight before. Unit: grams. */
export function massBalance(
  { before, afterG, clutchG }: LayingMasses,
  toleranceShare: number,
): Balance | undefined {
  if (!before || afterG === undefined || clutchG === undefined) return undefined;
  const overG = layingBalanceG(before.massG, afterG, clutchG);
  const toleranceG = before.massG * toleranceShare;
  return { overG, toleranceG, agrees: Math.abs(overG) <= toleranceG };
}
