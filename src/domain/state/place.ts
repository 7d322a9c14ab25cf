import type { LabelCode } from '../core/code.ts';
import type { Moment } from '../core/calendar.ts';
import type { RackId, RoomId, TubId } from '../core/ids.ts';
import type { EventOf, RackEvent } from '../events/event.ts';
import type { Copy } from './copy.ts';
import { applyToAir, noAir, type RoomAir } from './room-air.ts';

export interface Room {
  readonly kind: 'room';
  readonly id: RoomId;
  readonly name: string;
  readonly quarantine: boolean;
  readonly air: RoomAir;
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

/** Each function: the place after the events. Total, like all reducers. */
export function applyToRoom(
  before: Room | undefined,
  events: readonly RackEvent[],
  id: RoomId,
): Room {
  const room: Copy<Room> = { kind: 'room', id, name: '', quarantine: false, air: noAir, ...before };
  for (const event of events) {
    if (event.type === 'room-made') {
      room.name = event.name;
      room.quarantine = event.quarantine ?? false;
    } else room.air = applyToAir(room.air, event);
  }
  return room;
}

const NEW_RACK = { name: '', rows: 1, columns: 1, walk: 'rows', removed: false } as const;

export function applyToRack(
  before: Rack | undefined,
  events: readonly RackEvent[],
  id: RackId,
): Rack {
  const rack: Copy<Rack> = { kind: 'rack', id, ...NEW_RACK, ...before };
  for (const event of events) {
    if (event.type === 'rack-made') {
      const { room, name, rows, columns, walk } = event;
      Object.assign(rack, { room, name, rows, columns, walk, removed: false });
    } else if (event.type === 'rack-removed') rack.removed = true;
  }
  return rack;
}

export function applyToTub(before: Tub | undefined, events: readonly RackEvent[], id: TubId): Tub {
  const tub: Copy<Tub> = { kind: 'tub', id, row: 0, column: 0, removed: false, ...before };
  for (const event of events) changeTub(tub, event);
  return tub;
}

function changeTub(tub: Copy<Tub>, event: RackEvent): void {
  switch (event.type) {
    case 'tub-made':
    case 'tub-moved':
      if (event.type === 'tub-made') tub.code = event.code;
      tub.rack = event.rack;
      tub.row = event.row;
      tub.column = event.column;
      tub.removed = false;
      break;
    case 'tub-removed':
      tub.removed = true;
      break;
    case 'tub-cleaned':
      tub.cleanedAt = event.at;
      break;
    case 'water-seen':
      tub.water = { state: event.state, at: event.at };
      break;
    default: // Changes nothing about a tub.
  }
}

export function applyToLabel(
  before: Label | undefined,
  events: readonly RackEvent[],
  code: LabelCode,
): Label {
  const label: Copy<Label> = { kind: 'label', code, ...before };
  for (const event of events) {
    if (event.type === 'tub-made') label.to = { kind: 'tub', tub: event.tub };
    else if (event.type === 'label-assigned') label.to = event.to;
    else if (event.type === 'label-printed') label.printedAt = event.at;
  }
  return label;
}
