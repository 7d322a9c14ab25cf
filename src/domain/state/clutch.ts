import type { Moment } from '../core/calendar.ts';
import type { AnimalId, ClutchId, EventId } from '../core/ids.ts';
import type { EventOf, RackEvent } from '../events/event.ts';
import type { Copy } from './copy.ts';

/** What the records say of one clutch, from laying on. Lists run from oldest to newest. */
export interface Clutch {
  readonly kind: 'clutch';
  readonly id: ClutchId;
  readonly dam?: AnimalId | undefined;
  /** Missing where a merge has brought the rest of the story first. */
  readonly laid?: EventOf<'laid'> | undefined;
  readonly paternity?: EventOf<'paternity-stated'> | undefined;
  /** Where its box stood, one after the other. */
  readonly stands: readonly EventOf<'eggs-set'>[];
  readonly checks: readonly EventOf<'eggs-checked'>[];
  readonly aired?: { readonly id: EventId; readonly at: Moment } | undefined;
  readonly hatching: readonly EventOf<'hatching-seen'>[];
  /** Those that were given a name. */
  readonly hatched: readonly EventOf<'hatched'>[];
  /** Those that were only counted. */
  readonly counted?: EventOf<'young-counted'> | undefined;
  readonly closed?: EventOf<'clutch-closed'> | undefined;
}

const NEW = { kind: 'clutch', stands: [], checks: [], hatching: [], hatched: [] } as const;

/** The clutch after the events. Total, like all reducers. */
export function applyToClutch(
  before: Clutch | undefined,
  events: readonly RackEvent[],
  id: ClutchId,
): Clutch {
  const clutch: Copy<Clutch> = { id, ...NEW, ...before };
  for (const event of events) change(clutch, event);
  return clutch;
}

function change(clutch: Copy<Clutch>, event: RackEvent): void {
  switch (event.type) {
    case 'laid':
      clutch.dam = event.animal;
      clutch.laid ??= event;
      break;
    case 'paternity-stated':
      clutch.dam ??= event.animal;
      clutch.paternity = event;
      break;
    case 'eggs-set':
      clutch.stands = [...clutch.stands, event];
      break;
    case 'eggs-checked':
      clutch.checks = [...clutch.checks, event];
      break;
    case 'box-aired':
      clutch.aired = { id: event.id, at: event.at };
      break;
    case 'hatching-seen':
      clutch.hatching = [...clutch.hatching, event];
      break;
    case 'hatched':
      clutch.hatched = [...clutch.hatched, event];
      break;
    case 'young-counted':
      clutch.dam ??= event.animal;
      clutch.counted = event;
      break;
    case 'clutch-closed':
      clutch.closed = event;
      break;
    default: // Says nothing of a clutch.
  }
}
