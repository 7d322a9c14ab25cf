import { instantMs, type Day } from '../core/calendar.ts';
import { FREEZER } from '../core/ids.ts';
import type { Prey } from '../events/feeding.ts';
import type { RoomFacts } from '../rules/rule.ts';
import type { Animal } from '../state/animal.ts';
import { drawerKey, type Drawer, type Freezer } from '../state/freezer.ts';
import type { Ledger } from '../state/ledger.ts';
import type { StockBatch } from './stock.ts';

export const freezerOf = (ledger: Ledger): Freezer | undefined =>
  ledger.subjects.get(FREEZER) as Freezer | undefined;

/** What lies in the freezer, as the mathematics of stock takes it. */
export const batchesOf = (freezer: Freezer | undefined): readonly StockBatch[] =>
  Object.values(freezer?.drawers ?? {}).flatMap(({ kind, size, batches }) =>
    batches.map(({ id, pieces, useBy }) => ({ id, kind, size, pieces, useBy })),
  );

/** Pieces by the records; negative where more was taken out than was there. */
export const piecesIn = ({ batches, short }: Drawer): number =>
  batches.reduce((sum, { pieces }) => sum + pieces, 0) - short;

/** One size of what was thawed for one night. */
export interface ThawedCount {
  readonly kind: Prey['kind'];
  readonly size: string;
  readonly thawed: number;
  /** Of those, thrown out. */
  readonly binned: number;
  /** Pieces that a snake took or has in its tub. */
  readonly given: number;
  /** Refused in a quarantine tub: they go to no other snake. */
  readonly spoilt: number;
}

/** What is left in hand; negative where more was fed than thawed. */
export const inHand = ({ thawed, binned, given }: ThawedCount): number => thawed - binned - given;

/**
 * What became of the pieces thawed for a night, by size. Thrown out counts for the night it was thawed for, until the
 * next thaw of that size.
 */
export function thawedOn(
  night: Day,
  freezer: Freezer | undefined,
  animals: readonly Animal[],
  { nightOf }: Pick<RoomFacts, 'nightOf'>,
): readonly ThawedCount[] {
  const counts = new Map<string, { -readonly [Key in keyof ThawedCount]: ThawedCount[Key] }>();
  const of = ({ kind, size }: Pick<Prey, 'kind' | 'size'>) => {
    const key = drawerKey({ kind, size });
    const known = counts.get(key);
    if (known) return known;
    const fresh = { kind, size, thawed: 0, binned: 0, given: 0, spoilt: 0 };
    counts.set(key, fresh);
    return fresh;
  };
  const lastThaw = new Map<string, Day>();
  for (const thaw of (freezer?.thaws ?? []).toSorted((a, b) => instantMs(a.at) - instantMs(b.at))) {
    const key = drawerKey(thaw);
    if (thaw.pieces > 0) lastThaw.set(key, nightOf(thaw.at));
    if ((lastThaw.get(key) ?? nightOf(thaw.at)) !== night) continue;
    if (thaw.pieces > 0) of(thaw).thawed += thaw.pieces;
    else of(thaw).binned -= thaw.pieces;
  }
  for (const animal of animals) {
    for (const { at, prey, outcome } of animal.offers) {
      // The night lies on that day or the next: most offers need no closer look.
      if (prey.state !== 'thawed' || String(at) < night || nightOf(at) !== night) continue;
      if (outcome === 'refused') {
        if (animal.quarantine) of(prey).spoilt += prey.count;
      } else {
        of(prey).given += prey.count;
      }
    }
  }
  return [...counts.values()];
}
