import * as z from 'zod/mini';
import { buildingSigns } from '../core/trade-words.ts';
import { AnimalId, ClutchId, TubId } from './fields.ts';
import { count, event, grams, line, remark } from './envelope.ts';

const pair = { male: AnimalId, female: AnimalId };
const diameterMm = z.number().check(z.gte(0.5), z.lte(80));

/** How the keeper's fingers found the follicles; a class, not a size. */
export const Felt = z.enum(['nothing', 'small bumps', 'round lumps', 'large lumps', 'egg-like']);

export const Sign = z.enum(buildingSigns);

export const PairSeen = z.enum(['locked', 'courting', 'apart', 'ignoring', 'fighting']);

export const breedingEvents = [
  /** The male is in the female's tub; his own stands empty. */
  event('introduced', 1, { ...pair, tub: TubId, remark }),
  event('pair-seen', 1, { ...pair, seen: PairSeen, remark }),
  event('taken-out', 1, { ...pair, remark }),
  event('follicles-scanned', 1, {
    animal: AnimalId,
    found: z.discriminatedUnion('method', [
      z.strictObject({
        method: z.literal('ultrasound'),
        /** Two perpendicular axes of the largest follicle. Absent: none seen. */
        largestMm: z.optional(z.tuple([diameterMm, diameterMm])),
        left: z.optional(count(20)),
        right: z.optional(count(20)),
      }),
      z.strictObject({ method: z.literal('palpation'), felt: Felt }),
    ]),
    remark,
  }),
  event('sign-seen', 1, { animal: AnimalId, sign: Sign, remark }),
  event('ovulated', 1, {
    animal: AnimalId,
    sure: z.enum(['seen at peak', 'seen late', 'inferred']),
    remark,
  }),
  /** Looked for an ovulation, a lock or eggs, and found nothing yet. */
  event('nothing-yet', 1, {
    animal: AnimalId,
    lookedFor: z.enum(['ovulation', 'eggs']),
    remark: z.optional(line(200)),
  }),
  event('nest-box-set', 1, { animal: AnimalId, is: z.enum(['in', 'out']), remark }),
  /**
   * Eggs found. With `between`, `notBefore` is the last look that found none. A count left out was
   * not counted, which is not zero.
   */
  event('laid', 1, {
    animal: AnimalId,
    clutch: ClutchId,
    good: z.optional(count(20)),
    slugs: z.optional(count(20)),
    unsure: z.optional(count(20)),
    clutchMassG: z.optional(grams(3_000)),
    damMassG: z.optional(grams(6_000)),
    care: z.optional(z.enum(['incubator', 'with her'])),
    remark,
  }),
  /** The season ends without eggs, or after them, on the keeper's word. */
  event('season-closed', 1, {
    animal: AnimalId,
    why: z.enum(['resorbed', 'no ovulation', 'year off', 'recovered']),
    remark,
  }),
] as const;
