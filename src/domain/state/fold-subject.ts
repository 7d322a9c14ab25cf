import type { LabelCode } from '../core/code.ts';
import type {
  AnimalId,
  ClutchId,
  FreezerId,
  HouseId,
  IncubatorId,
  RackId,
  RoomId,
  TubId,
} from '../core/ids.ts';
import type { RackEvent } from '../events/event.ts';
import type { SubjectId } from '../events/subjects.ts';
import type { Animal } from './animal.ts';
import { applyToAnimal } from './apply-to-animal.ts';
import { applyToClutch, type Clutch } from './clutch.ts';
import { applyToFreezer, type Freezer } from './freezer.ts';
import { applyToHouse, type House } from './house.ts';
import { applyToIncubator, type Incubator } from './incubator.ts';
import {
  applyToLabel,
  applyToRack,
  applyToRoom,
  applyToTub,
  type Label,
  type Rack,
  type Room,
  type Tub,
} from './place.ts';

export type Subject = Animal | Tub | Rack | Room | Clutch | Incubator | House | Freezer | Label;

/** The subject after more events; which kind it is stands in the first letter of its id. */
export function applyTo(
  id: SubjectId,
  before: Subject | undefined,
  events: readonly RackEvent[],
): Subject {
  switch (id.charAt(0)) {
    case 'a':
      return applyToAnimal(before as Animal | undefined, events, id as AnimalId);
    case 't':
      return applyToTub(before as Tub | undefined, events, id as TubId);
    case 'k':
      return applyToRack(before as Rack | undefined, events, id as RackId);
    case 'r':
      return applyToRoom(before as Room | undefined, events, id as RoomId);
    case 'c':
      return applyToClutch(before as Clutch | undefined, events, id as ClutchId);
    case 'i':
      return applyToIncubator(before as Incubator | undefined, events, id as IncubatorId);
    case 'h':
      return applyToHouse(before as House | undefined, events, id as HouseId);
    case 'f':
      return applyToFreezer(before as Freezer | undefined, events, id as FreezerId);
    default:
      return applyToLabel(before as Label | undefined, events, id.slice(2) as LabelCode);
  }
}
