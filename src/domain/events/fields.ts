import * as z from 'zod/mini';
import { CODE_PATTERN } from '../core/code.ts';
import { ID_LENGTH, SYMBOLS, WRITER_LENGTH } from '../core/ids.ts';

// How the core's words look in a record. Apart from the core, so that screens that only name a day
// or an id need not carry the checker.

export const Day = z.iso.date().brand<'Day'>();
export const Moment = z.iso.datetime({ offset: true }).brand<'Moment'>();
export const LabelCode = z.string().check(z.regex(CODE_PATTERN)).brand<'LabelCode'>();

const id = <Brand extends string>(prefix: string) =>
  z
    .string()
    .check(z.regex(new RegExp(`^${prefix}[${SYMBOLS}]{${ID_LENGTH}}$`)))
    .brand<Brand>();

export const EventId = id<'EventId'>('');
export const AnimalId = id<'AnimalId'>('a-');
export const TubId = id<'TubId'>('t-');
export const RackId = id<'RackId'>('k-');
export const RoomId = id<'RoomId'>('r-');
export const ClutchId = id<'ClutchId'>('c-');
export const IncubatorId = id<'IncubatorId'>('i-');
export const PhotoId = id<'PhotoId'>('p-');
export const BuyerId = id<'BuyerId'>('b-');
export const DeviceId = z
  .string()
  .check(z.regex(new RegExp(`^[${SYMBOLS}]{${WRITER_LENGTH}}$`)))
  .brand<'DeviceId'>();
