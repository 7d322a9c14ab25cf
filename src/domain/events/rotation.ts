import * as z from 'zod/mini';
import { event, remark } from './envelope.ts';
import { AnimalId, Day } from './fields.ts';

const pair = { female: AnimalId, male: AnimalId };
/** Evenings: the one he goes in, and the one he comes out. */
const stay = { in: Day, out: Day };

/** The keeper's wishes for the rotation of males, and the plan that is gone by. */
export const rotationEvents = [
  /** Reserves stand in the order in which they were wanted. Of two for one pair the later stands. */
  event('pair-wanted', 1, { ...pair, choice: z.enum(['first', 'reserve', 'none']) }),
  /** One visit held fast, the two kept apart, or neither any more. */
  event('visit-ruled', 1, {
    ...pair,
    rule: z.discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('pinned'), ...stay }),
      z.strictObject({ kind: z.literal('apart') }),
      z.strictObject({ kind: z.literal('free') }),
    ]),
    remark,
  }),
  /** Evenings from the first to the last, both included, on which nobody can move a male, or can. */
  event('evenings-away', 1, { from: Day, last: Day, is: z.enum(['away', 'there']), remark }),
  /** The plan the keeper goes by, until another is kept. */
  event('visits-planned', 1, {
    /** The night it was made on. */
    night: Day,
    visits: z.array(z.strictObject({ ...pair, ...stay })).check(z.maxLength(120)),
    remark,
  }),
] as const;
