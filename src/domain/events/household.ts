import * as z from 'zod/mini';
import { event, line, remark } from './envelope.ts';

/** The name of a value of the protocol. A later version may know more of them than this one. */
export const ValueKey = z.string().check(z.regex(/^[a-z][A-Za-z0-9]{1,59}$/));

/** In the unit of the value; null goes back to its default. */
export const OwnValue = z.nullable(z.number());

/** What holds for the whole collection: the keeper's own numbers, and whom to call. */
export const householdEvents = [
  /** Values that are not named stay as they are; names this version does not know are kept. */
  event('protocol-set', 1, {
    values: z.record(ValueKey, OwnValue),
    /** The school of practice they were taken from. */
    school: z.optional(line(40)),
    remark,
  }),
  /** The keeper's own reptile vet. */
  event('vet-stated', 1, { name: line(120), phone: line(40) }),
] as const;
