import { instantMs, type Moment } from '../core/calendar.ts';
import type { EventId } from '../core/ids.ts';
import type { RackEvent } from '../events/event.ts';

/** Where an event stands among the others: when it happened, then when it was written. */
export type PlaceInTime = Pick<RackEvent, 'at' | 'id'>;

/**
 * The order in which events count.
 *
 * Plain code-unit order of ids: `localeCompare` depends on the device, and this decides what is so.
 */
export const inTime = (a: PlaceInTime, b: PlaceInTime): number =>
  byMoment(a.at, b.at) || (a.id < b.id ? -1 : Number(a.id > b.id));

/** A copy in the order in which they count. */
export const inOrder = (events: readonly RackEvent[]): RackEvent[] => events.toSorted(inTime);

/**
 * Moments of one offset sort as they are written. A start compares each record with the one before,
 * and so reads hardly any of them.
 */
const byMoment = (a: Moment, b: Moment): number =>
  isSameOffset(a, b) ? (a < b ? -1 : Number(a > b)) : instantMs(a) - instantMs(b);

/** Of moments to the second; any other are read. */
const isSameOffset = (a: Moment, b: Moment): boolean =>
  a.length === TO_THE_SECOND &&
  b.length === TO_THE_SECOND &&
  a.slice(OFFSET_AT) === b.slice(OFFSET_AT);
const OFFSET_AT = '2026-11-24T21:00:00'.length;
const TO_THE_SECOND = '2026-11-24T21:00:00+01:00'.length;

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
