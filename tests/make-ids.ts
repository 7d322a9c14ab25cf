import { labelCode, type LabelCode } from '../src/domain/core/code.ts';
import {
  inBase32,
  ID_LENGTH,
  WRITER_LENGTH,
  type AnimalId,
  type BuyerId,
  type ClutchId,
  type EventId,
  type IncubatorId,
  type PhotoId,
  type RackId,
  type RoomId,
  type TubId,
} from '../src/domain/core/ids.ts';

const own = (n: number): string => inBase32(n, ID_LENGTH - WRITER_LENGTH);

/** The nth id a device could have made; ids rise with `n`. */
export const eventId = (n: number, device = 'MAKE0'): EventId => `${own(n)}${device}` as EventId;
export const animalId = (n: number): AnimalId => `a-${eventId(n)}` as AnimalId;
export const tubId = (n: number): TubId => `t-${eventId(n)}` as TubId;
export const rackId = (n: number): RackId => `k-${eventId(n)}` as RackId;
export const roomId = (n: number): RoomId => `r-${eventId(n)}` as RoomId;
export const clutchId = (n: number): ClutchId => `c-${eventId(n)}` as ClutchId;
export const incubatorId = (n: number): IncubatorId => `i-${eventId(n)}` as IncubatorId;
export const photoId = (n: number): PhotoId => `p-${eventId(n)}` as PhotoId;
export const buyerId = (n: number): BuyerId => `b-${eventId(n)}` as BuyerId;
export const code = (n: number): LabelCode => labelCode(n * 7_919);
