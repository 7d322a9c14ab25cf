import type { LabelCode } from '../core/code.ts';
import type { Moment } from '../core/calendar.ts';
import type { RackId, RoomId, TubId } from '../core/ids.ts';
import type { EventOf, RackEvent } from '../events/event.ts';

export interface Room {
  readonly kind: 'room';
  readonly id: RoomId;
  readonly name: string;
  readonly quarantine: boolean;
}

export interface Rack {
  readonly kind: 'rack';
  readonly id: RackId;
  readonly room?: RoomId | undefined;
  readonly name: string;
  readonly rows: number;
  readonly columns: number;
  readonly walk: EventOf<'rack-made'>['walk'];
  readonly removed: boolean;
}

export interface Tub {
  readonly kind: 'tub';
  readonly id: TubId;
  readonly code?: LabelCode | undefined;
  readonly rack?: RackId | undefined;
  /** Counted from 1, top left. */
  readonly row: number;
  readonly column: number;
  readonly removed: boolean;
  readonly cleanedAt?: Moment | undefined;
  readonly water?: { readonly state: string; readonly at: Moment } | undefined;
}

export interface Label {
  readonly kind: 'label';
  readonly code: LabelCode;
  readonly to?: EventOf<'label-assigned'>['to'] | undefined;
  readonly printedAt?: Moment | undefined;
}

/** Each function: the place after the event. Total, like all reducers. */
export function applyToRoom(before: Room | undefined, event: RackEvent, id: RoomId): Room {
  const room = before ?? { kind: 'room', id, name: '', quarantine: false };
  return event.type === 'room-made'
    ? { ...room, name: event.name, quarantine: event.quarantine ?? false }
    : room;
}

export function applyToRack(before: Rack | undefined, event: RackEvent, id: RackId): Rack {
  const rack: Rack = before ?? {
    kind: 'rack',
    id,
    name: '',
    rows: 1,
    columns: 1,
    walk: 'rows',
    removed: false,
  };
  if (event.type === 'rack-made') {
    const { room, name, rows, columns, walk } = event;
    return { ...rack, room, name, rows, columns, walk, removed: false };
  }
  return event.type === 'rack-removed' ? { ...rack, removed: true } : rack;
}

export function applyToTub(before: Tub | undefined, event: RackEvent, id: TubId): Tub {
  const tub: Tub = before ?? { kind: 'tub', id, row: 0, column: 0, removed: false };
  switch (event.type) {
    case 'tub-made':
    case 'tub-moved': {
      const { rack, row, column } = event;
      const code = event.type === 'tub-made' ? event.code : tub.code;
      return { ...tub, code, rack, row, column, removed: false };
    }
    case 'tub-removed':
      return { ...tub, removed: true };
    case 'tub-cleaned':
      return { ...tub, cleanedAt: event.at };
    case 'water-seen':
      return { ...tub, water: { state: event.state, at: event.at } };
    default:
      return tub;
  }
}

export function applyToLabel(before: Label | undefined, event: RackEvent, code: LabelCode): Label {
  const label: Label = before ?? { kind: 'label', code };
  switch (event.type) {
    case 'tub-made':
      return { ...label, to: { kind: 'tub', tub: event.tub } };
    case 'label-assigned':
      return { ...label, to: event.to };
    case 'label-printed':
      return { ...label, printedAt: event.at };
    default:
      return label;
  }
}
