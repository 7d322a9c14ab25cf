import type { LabelCode } from '../core/code.ts';
import type { AnimalId, RackId, RoomId, TubId } from '../core/ids.ts';
import type { RackEvent } from '../events/event.ts';
import type { SubjectId } from '../events/subjects.ts';
import type { Animal } from './animal.ts';
import { applyToAnimal } from './apply-to-animal.ts';
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

export type Subject = Animal | Tub | Rack | Room | Label;

/** The subject after one more event; which kind it is stands in the first letter of its id. */
export function applyTo(id: SubjectId, before: Subject | undefined, event: RackEvent): Subject {
  switch (id.charAt(0)) {
    case 'a':
      return applyToAnimal(before as Animal | undefined, event, id as AnimalId);
    case 't':
      return applyToTub(before as Tub | undefined, event, id as TubId);
    case 'k':
      return applyToRack(before as Rack | undefined, event, id as RackId);
    case 'r':
      return applyToRoom(before as Room | undefined, event, id as RoomId);
    default:
      return applyToLabel(before as Label | undefined, event, id.slice(2) as LabelCode);
  }
}
