import * as z from 'zod/mini';
import { AnimalId, ClutchId, IncubatorId, LabelCode, RackId, RoomId, TubId } from './fields.ts';
import { count, event, line, remark } from './envelope.ts';

const row = count(99);
const column = count(99);

/** Rooms, racks, tubs and labels: where things stand. Made again with the same id, they change. */
export const placeEvents = [
  event('room-made', 1, { room: RoomId, name: line(40), quarantine: z.optional(z.boolean()) }),
  event('rack-made', 1, {
    rack: RackId,
    room: RoomId,
    /** What stands on the rack, `B`: the first part of every position in it. */
    name: line(12),
    rows: z.int().check(z.gte(1), z.lte(40)),
    columns: z.int().check(z.gte(1), z.lte(20)),
    /** How the keeper walks it: every row from the left, or back and forth. */
    walk: z.enum(['rows', 'serpentine', 'columns']),
  }),
  event('rack-removed', 1, { rack: RackId }),
  /** `row` and `column` count from 1, top left. */
  event('tub-made', 1, { tub: TubId, code: LabelCode, rack: RackId, row, column }),
  event('tub-moved', 1, { tub: TubId, rack: RackId, row, column }),
  event('tub-removed', 1, { tub: TubId }),
  event('tub-cleaned', 1, { tub: TubId, how: z.enum(['spot', 'full']), remark }),
  event('water-seen', 1, { tub: TubId, state: z.enum(['changed', 'tipped', 'dry']) }),
  event('label-printed', 1, {
    codes: z.array(LabelCode).check(z.minLength(1), z.maxLength(2000)),
    format: line(40),
  }),
  event('label-assigned', 3, {
    code: LabelCode,
    to: z.discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('tub'), tub: TubId }),
      z.strictObject({ kind: z.literal('animal'), animal: AnimalId }),
      z.strictObject({ kind: z.literal('room'), room: RoomId }),
      z.strictObject({ kind: z.literal('clutch'), clutch: ClutchId }),
      z.strictObject({ kind: z.literal('incubator'), incubator: IncubatorId }),
    ]),
  }),
] as const;
