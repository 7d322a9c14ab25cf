import * as z from 'zod/mini';
import { event, line, remark } from './envelope.ts';
import { IncubatorId, Moment } from './fields.ts';
import { readByHand, stretch, tempC } from './room.ts';

const incubator = IncubatorId;

/** Between the eggs, in a box like theirs, or elsewhere inside. */
export const IncubatorSpot = z.enum(['egg level', 'air']);

const place = { incubator, spot: IncubatorSpot };

/** What eggs are kept warm in. Made again with the same id, it changes. */
export const incubatorEvents = [
  event('incubator-made', 1, {
    incubator,
    name: line(40),
    /** What its thermostat is set to. */
    targetC: z.optional(tempC),
    remark,
  }),
  event('incubator-retired', 1, { incubator, remark }),
  event('incubator-read', 1, { ...place, ...readByHand, remark }),
  /** As `room-logged`, for a sensor in an incubator. */
  event('incubator-logged', 1, { ...place, ...stretch }),
  /** No heat, for whatever reason, from `at` on: one record for every clutch in these. */
  event('heat-failed', 1, {
    incubators: z.array(incubator).check(z.minLength(1), z.maxLength(40)),
    /** Where it is known afterwards. */
    until: z.optional(Moment),
    lowestC: z.optional(tempC),
    remark,
  }),
  /** Heat is back, at `at`. */
  event('heat-back', 1, {
    incubators: z.array(incubator).check(z.minLength(1), z.maxLength(40)),
    lowestC: z.optional(tempC),
    remark,
  }),
] as const;
