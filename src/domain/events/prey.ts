import * as z from 'zod/mini';
import { count, event, grams, line, remark } from './envelope.ts';
import { PreyKind } from './feeding.ts';
import { AnimalId, Day } from './fields.ts';

/** A size as the supplier names it. */
const size = { kind: PreyKind, size: line(20) };

const pieces = count(5_000).check(z.gte(1));
const month = z.int().check(z.gte(1), z.lte(12));

/** What is in the freezer, and what the keeper lays down about meals. */
export const preyEvents = [
  event('prey-stocked', 1, {
    ...size,
    pieces,
    /** The last day it may be fed. */
    useBy: z.optional(Day),
    /** Supplier and lot, as on the bag: what is asked for when a lot is called back. */
    batch: z.optional(line(60)),
    remark,
  }),
  /** Taken out of the freezer for a night's feeding. */
  event('prey-thawed', 1, { ...size, pieces, remark }),
  event('prey-thrown-out', 1, {
    ...size,
    pieces,
    /** Out of the freezer, or of what had been thawed. */
    from: z.enum(['freezer', 'thawed']),
    why: z.optional(z.enum(['left over', 'past its date', 'spoiled', 'other'])),
    remark,
  }),
  /** What really lies in the freezer: from here on this counts, whatever was reckoned before. */
  event('prey-counted', 1, { ...size, pieces: count(5_000), remark }),
  /** What one piece of a size weighs, as the keeper's supplier sells it; null: no longer bought. */
  event('prey-size-stated', 1, { ...size, eachG: z.nullable(grams(400)) }),
  /** How one snake is fed otherwise than its class, and why. Stands in for all that was said before. */
  event('feeding-excepted', 1, {
    animal: AnimalId,
    exceptions: z
      .array(
        z.strictObject({
          /** The first and the last month it holds in; absent: all year. */
          months: z.optional(z.tuple([month, month])),
          everyDays: z.optional(z.int().check(z.gte(2), z.lte(60))),
          kind: z.optional(PreyKind),
          size: z.optional(line(20)),
          count: z.optional(z.int().check(z.gte(1), z.lte(6))),
          why: z.optional(line(120)),
        }),
      )
      .check(z.maxLength(4)),
    remark,
  }),
  /** It is bred from below the keeper's own limits, and why. */
  event('started-smaller', 1, { animal: AnimalId, why: line(200) }),
] as const;
