import type { Day } from '../core/calendar.ts';
import type { EventId } from '../core/ids.ts';
import type { EventOf } from '../events/event.ts';
import type { Animal } from '../state/animal.ts';
import { cycleRow, northernMonth } from './cycle-plan.ts';
import type { Protocol } from './values.ts';

type Exception = EventOf<'feeding-excepted'>['exceptions'][number];

/** How one snake is fed now: by the plan of its class, and by what the keeper said of it alone. */
export interface FeedingPlan {
  /** The row of the year's plan it is fed by. */
  readonly row: string;
  readonly everyDays: number;
  /** Of the usual meal by body mass. */
  readonly portion: number;
  /** As it stands after "Fed as". */
  readonly words: string;
  /** What is laid down for it alone and holds tonight. */
  readonly own?: (Exception & { readonly id: EventId }) | undefined;
}

/** `stage` is where the animal stands in its season. */
export function feedingPlan(
  animal: Animal,
  { night, protocol }: { readonly night: Day; readonly protocol: Protocol },
  stage: string | undefined,
): FeedingPlan {
  const row = cycleRow(animal, night, protocol, stage);
  const own = ownPlan(animal, northernMonth(night, { ...protocol, yearShiftMonths: 0 }));
  return {
    row: row.id,
    everyDays: own?.everyDays ?? protocol[row.everyDays],
    portion: row.portion === undefined ? 1 : protocol[row.portion],
    words: row.words,
    own,
  };
}

/** Of several that hold in a month, the first says what it says, and the next what is left open. */
function ownPlan({ feedingExcepted }: Animal, month: number): FeedingPlan['own'] {
  const holding = feedingExcepted?.exceptions.filter(({ months }) => holdsIn(months, month)) ?? [];
  if (!feedingExcepted || holding.length === 0) return undefined;
  const merged: Exception = Object.assign({}, ...holding.toReversed());
  return { ...merged, id: feedingExcepted.id };
}

/** Months as the keeper's own calendar names them; from November to March goes over the year's end. */
function holdsIn(months: Exception['months'], month: number): boolean {
  if (!months) return true;
  const [from, until] = months;
  return from <= until ? month >= from && month <= until : month >= from || month <= until;
}
