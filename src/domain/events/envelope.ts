import * as z from 'zod/mini';
import { DeviceId, EventId, Moment } from './fields.ts';

export const line = (maxLength: number) =>
  z.string().check(z.trim(), z.minLength(1), z.maxLength(maxLength));

/** A free remark, one line. Never required. */
export const remark = z.optional(line(500));

export const count = (most: number) => z.int().check(z.gte(0), z.lte(most));

export const grams = (most: number) => z.number().check(z.gt(0), z.lte(most));

const envelope = {
  id: EventId,
  /** When it happened. */
  at: Moment,
  /** How well that is known: to the minute, to the day, or only since an earlier look. */
  precision: z.enum(['minute', 'day', 'between']),
  /** With `between`: the last look at which it had not happened yet. */
  notBefore: z.optional(Moment),
  /** When it was written down. */
  loggedAt: Moment,
  device: DeviceId,
  /** Initials of who wrote it. */
  by: z.optional(line(8)),
  /** The position it was made at, copied, since tubs move: `B4-2`. */
  place: z.optional(line(40)),
  /** The earlier event that this one stands in for, and why. */
  replaces: z.optional(z.strictObject({ id: EventId, reason: line(200) })),
};

/** One kind of event: the envelope, its name, its shape's version, and its own fields. */
export const event = <Type extends string, Version extends number, Shape extends z.core.$ZodShape>(
  type: Type,
  v: Version,
  shape: Shape,
) => z.strictObject({ ...envelope, type: z.literal(type), v: z.literal(v), ...shape });
