import { instantMs } from '../core/calendar.ts';
import type { EventId } from '../core/ids.ts';
import type { RackEvent } from '../events/event.ts';

/** Where an event stands among the others: when it happened, then when it was written. */
export interface PlaceInTime {
  readonly ms: number;
  readonly id: EventId;
}

export const placeOf = ({ at, id }: RackEvent): PlaceInTime => ({ ms: instantMs(at), id });

/**
 * The order in which events count.
 *
 * Plain code-unit order of ids: `localeCompare` depends on the device, and this decides what is so.
 */
export const inTime = (a: PlaceInTime, b: PlaceInTime): number =>
  a.ms - b.ms || (a.id < b.id ? -1 : Number(a.id > b.id));

/** A copy in the order in which they count. */
export const inOrder = (events: readonly RackEvent[]): RackEvent[] =>
  events
    .map((event) => ({ event, ...placeOf(event) }))
    .toSorted(inTime)
    .map(({ event }) => event);

export interface Corrections {
  /** Notes what an event strikes out or stands in for. */
  note(event: RackEvent): void;
  /** Whether an event counts. */
  stands(id: EventId): boolean;
  /** Why an event was struck out, where it was. */
  reasonStruck(id: EventId): string | undefined;
}

/**
 * Who is corrected by whom, in whatever order corrections arrive.
 *
 * A struck event never counts again; record it anew instead. A replaced event does not count while
 * any event that stands in for it, or for that one in turn, has not been struck: striking the last
 * replacement brings the original back. Ids rise with time on every device, so a replacement that
 * sorts before its target is not one; that also keeps the chain free of circles.
 */
export function createCorrections(): Corrections {
  const struck = new Map<EventId, string>();
  const replacements = new Map<EventId, EventId[]>();

  const isCovered = (id: EventId): boolean =>
    replacements.get(id)?.some((by) => !struck.has(by) || isCovered(by)) ?? false;

  return {
    note(event) {
      if (event.type === 'struck') {
        // Two phones may strike the same event; whichever reason is kept must not hang on their order.
        const before = struck.get(event.target);
        if (before === undefined || event.reason < before) struck.set(event.target, event.reason);
      } else if (event.replaces && event.replaces.id < event.id) {
        const { id } = event.replaces;
        replacements.set(id, [...(replacements.get(id) ?? []), event.id]);
      }
    },
    stands: (id) => !struck.has(id) && !isCovered(id),
    reasonStruck: (id) => struck.get(id),
  };
}
