import type { Day } from '../core/calendar.ts';
import type { AnimalId } from '../core/ids.ts';
import type { EventOf, RackEvent } from '../events/event.ts';
import { dayOf } from '../sale/sale-numbers.ts';

export type Came = 'hatched here' | 'bought' | 'gift' | 'loan' | 'came back' | 'not said';

/** A span of days in which an animal was kept. Days are those of the calendar. */
export interface Stay {
  readonly animal: AnimalId;
  readonly from: Day;
  readonly came: Came;
  /** From whom, as written. */
  readonly source?: string | undefined;
  /** The day it left; undefined while it is here. */
  readonly to?: Day | undefined;
  readonly left?: EventOf<'left'>['how'] | undefined;
}

/** When an animal was here, from its records that count, oldest first. */
export function staysOf(animal: AnimalId, events: readonly RackEvent[]): readonly Stay[] {
  const stays: Stay[] = [];
  let open: Stay | undefined;
  const hatched = hatchDay(events);
  for (const event of events) {
    if (event.type === 'left') {
      if (open) stays.push({ ...open, to: dayOf(event.at), left: event.how });
      open = undefined;
    } else if (event.type === 'came-back') {
      open ??= { animal, from: dayOf(event.at), came: 'came back' };
    } else if (event.type === 'arrived') {
      open ??= arrival(event, hatched, stays.length === 0);
    }
  }
  return open ? [...stays, open] : stays;
}

function arrival(event: EventOf<'arrived'>, hatched: Day | undefined, isFirst: boolean): Stay {
  const { animal, origin, from: source } = event;
  const day = dayOf(event.at);
  const isOwn = origin === 'own' && isFirst;
  return isOwn
    ? { animal, from: hatched !== undefined && hatched < day ? hatched : day, came: 'hatched here' }
    : {
        animal,
        from: day,
        came: origin === undefined || origin === 'own' ? 'not said' : origin,
        source,
      };
}

function hatchDay(events: readonly RackEvent[]): Day | undefined {
  let day: Day | undefined;
  for (const event of events) {
    if (event.type === 'arrived' || event.type === 'identified') day = event.hatchedDay ?? day;
    else if (event.type === 'hatched') day ??= dayOf(event.at);
  }
  return day;
}

/** Whether any day of the stay lies in the span, both ends counted. */
export const isWithin = ({ from, to }: Stay, first: Day, last: Day): boolean =>
  from <= last && (to === undefined || to >= first);
