import * as z from 'zod/mini';
import { buildingSigns } from '../core/trade-words.ts';
import { AnimalId, TubId } from './fields.ts';
import { count, event, line, remark } from './envelope.ts';

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
] as const;
