import { addDays, daysBetween, type Day } from '../core/calendar.ts';
import type { Prey } from '../events/feeding.ts';

/** Pieces of one size in the freezer that came together. */
export interface StockBatch {
  readonly id: string;
  readonly kind: Prey['kind'];
  readonly size: string;
  readonly pieces: number;
  /** The last day it may be fed; absent where nobody wrote it down. */
  readonly useBy?: Day | undefined;
}

export interface Taken {
  readonly batches: readonly StockBatch[];
  /** From which batch, and how many. */
  readonly from: readonly { readonly id: string; readonly pieces: number }[];
  /** Wanted, and not there. */
  readonly short: number;
}

const isGood = ({ useBy }: StockBatch, on: Day): boolean => useBy === undefined || useBy >= on;

/** What goes off first is used first; what has no date, last. */
const inOrder = (batches: readonly StockBatch[]): StockBatch[] =>
  batches.toSorted((a, b) => {
    const [first, second] = [a.useBy ?? '9999', b.useBy ?? '9999'];
    return first === second ? 0 : first < second ? -1 : 1;
  });

/** Pieces taken out on a night, from what goes off first. Nothing past its date is taken. */
export function takeOut(batches: readonly StockBatch[], pieces: number, on: Day): Taken {
  let wanted = pieces;
  const from: { id: string; pieces: number }[] = [];
  const left = inOrder(batches).map((batch) => {
    const taken = isGood(batch, on) ? Math.min(wanted, batch.pieces) : 0;
    wanted -= taken;
    if (taken > 0) from.push({ id: batch.id, pieces: taken });
    return { ...batch, pieces: batch.pieces - taken };
  });
  return { batches: left, from, short: wanted };
}

/** Pieces that may still be fed on a day, and those past their date. */
export function countStock(
  batches: readonly StockBatch[],
  on: Day,
): { readonly good: number; readonly past: number } {
  const good = batches.filter((batch) => isGood(batch, on));
  const sum = (list: readonly StockBatch[]) => list.reduce((all, { pieces }) => all + pieces, 0);
  return { good: sum(good), past: sum(batches) - sum(good) };
}

/**
 * How many pieces will be used in time, where so many a day are eaten evenly, and how many go off unused within it.
 *
 * Pieces that neither are used nor go off in the time are in neither count but the first: they are there.
 */
export function usableStock(
  batches: readonly StockBatch[],
  need: { readonly from: Day; readonly days: number; readonly perDay: number },
): { readonly usable: number; readonly goesOff: number } {
  let used = 0;
  let goesOff = 0;
  let kept = 0;
  for (const { pieces, useBy } of inOrder(batches)) {
    const days = useBy === undefined ? Infinity : daysBetween(need.from, useBy) + 1;
    if (days >= need.days) {
      kept += pieces;
      continue;
    }
    const inTime = Math.floor(Math.max(0, days) * need.perDay + 1e-9) - used;
    const taken = Math.min(pieces, Math.max(0, inTime));
    used += taken;
    goesOff += pieces - taken;
  }
  return { usable: used + kept, goesOff };
}

/** The first day on which the freezer is empty, at so many pieces a day; undefined where none are eaten. */
export function lastsUntil(
  batches: readonly StockBatch[],
  from: Day,
  perDay: number,
): Day | undefined {
  if (!(perDay > 0)) return undefined;
  const days = Math.ceil(countStock(batches, from).good / perDay);
  const { usable } = usableStock(batches, { from, days, perDay });
  return addDays(from, Math.floor(usable / perDay));
}
