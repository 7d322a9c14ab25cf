import * as z from 'zod/mini';
import { AnimalId, EventId } from './fields.ts';
import { count, event, grams, line, remark } from './envelope.ts';

export const PreyKind = z.enum(['rat', 'mouse', 'soft-furred rat', 'gerbil', 'chick', 'other']);

export const Prey = z.strictObject({
  kind: PreyKind,
  size: line(20),
  /** Mass of one, in grams. */
  eachG: z.optional(grams(400)),
  count: z.int().check(z.gte(1), z.lte(6)),
  state: z.enum(['thawed', 'fresh', 'live']),
});
export type Prey = z.infer<typeof Prey>;

/** `left` is a meal left overnight: nobody knows yet. */
export const Outcome = z.enum(['ate', 'refused', 'left', 'partly']);
export type Outcome = z.infer<typeof Outcome>;

const animal = AnimalId;

export const feedingEvents = [
  event('meal-offered', 1, {
    animal,
    prey: Prey,
    outcome: Outcome,
    how: z.optional(z.enum(['tongs', 'left in tub', 'scented', 'assisted'])),
    remark,
  }),
  /** What became of a meal that was left, or what it really was. */
  event('meal-settled', 1, {
    animal,
    offer: EventId,
    outcome: z.enum(['ate', 'refused', 'partly']),
  }),
  event('regurgitated', 1, {
    animal,
    /** Days since the meal, as the keeper judges it. */
    afterDays: z.optional(count(30)),
    remark,
  }),
] as const;
