import type { LabelCode } from '../core/code.ts';
import {
  FREEZER,
  HOUSE,
  type AnimalId,
  type ClutchId,
  type FreezerId,
  type HouseId,
  type IncubatorId,
  type RackId,
  type RoomId,
  type TubId,
} from '../core/ids.ts';
import type { RackEvent } from './event.ts';

export type LabelKey = `l-${LabelCode}`;
export const labelKey = (code: LabelCode): LabelKey => `l-${code}`;

/** Whoever or whatever a record is about. Each subject is folded from its own records alone. */
export type SubjectId =
  AnimalId | TubId | RackId | RoomId | ClutchId | IncubatorId | HouseId | FreezerId | LabelKey;

/**
 * The subjects an event changes, so that the cost of a new event follows them and not the log.
 *
 * A correction has none of its own: it changes those of the event it names.
 */
export function subjectsOf(event: RackEvent): readonly SubjectId[] {
  switch (event.type) {
    case 'room-made':
    case 'room-read':
    case 'room-logged':
    case 'room-programme-set':
      return [event.room];
    case 'rack-made':
    case 'rack-removed':
      return [event.rack];
    case 'tub-made':
      return [event.tub, labelKey(event.code)];
    case 'tub-moved':
    case 'tub-removed':
    case 'tub-cleaned':
    case 'water-seen':
      return [event.tub];
    case 'label-printed':
      return event.codes.map(labelKey);
    case 'label-assigned':
      return [labelKey(event.code)];
    case 'introduced':
    case 'pair-seen':
    case 'taken-out':
    case 'pairing-reasoned':
      return [event.male, event.female];
    case 'young-counted':
      return [...new Set([event.animal, ...siresOf(event.sires)]), event.clutch];
    case 'laid':
    case 'paternity-stated':
    case 'hatched':
      return [event.animal, event.clutch];
    case 'eggs-set':
    case 'eggs-checked':
    case 'box-aired':
    case 'hatching-seen':
    case 'clutch-closed':
      return [event.clutch];
    case 'incubator-made':
    case 'incubator-retired':
    case 'incubator-read':
    case 'incubator-logged':
      return [event.incubator];
    case 'heat-failed':
    case 'heat-back':
      return [...new Set(event.incubators)];
    case 'protocol-set':
    case 'vet-stated':
    case 'gene-made':
    case 'prey-size-stated':
    case 'pair-wanted':
    case 'visit-ruled':
    case 'evenings-away':
    case 'visits-planned':
      return [HOUSE];
    case 'prey-stocked':
    case 'prey-thawed':
    case 'prey-thrown-out':
    case 'prey-counted':
      return [FREEZER];
    case 'struck':
      return [];
    default:
      return [event.animal];
  }
}

type Counted = Extract<RackEvent, { type: 'young-counted' }>;

const siresOf = (sires: Counted['sires']): readonly AnimalId[] =>
  sires.flatMap(({ male }) => (male === 'unknown' ? [] : [male]));
