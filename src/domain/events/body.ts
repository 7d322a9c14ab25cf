import * as z from 'zod/mini';
import { AnimalId } from './fields.ts';
import { event, grams, line, remark } from './envelope.ts';

const animal = AnimalId;

export const bodyEvents = [
  event('weighed', 1, {
    animal,
    massG: grams(6_000).check(z.gte(15)),
    /** What was typed, in the keeper's own unit, where that was not grams. */
    entered: z.optional(z.strictObject({ value: z.number(), unit: z.enum(['oz', 'lb']) })),
    scale: z.optional(line(20)),
    /** Mass of bag or tub taken off, in grams. */
    tareG: z.optional(grams(10_000)),
    /** Why it was kept although it looked wrong. */
    doubt: z.optional(line(200)),
    remark,
  }),
  event('opaque-seen', 1, { animal }),
  event('shed', 1, {
    animal,
    quality: z.enum(['whole', 'pieces', 'caps left', 'tail tip left']),
    preLay: z.optional(z.boolean()),
    remark,
  }),
  event('faeces-seen', 1, {
    animal,
    what: z.enum(['faeces', 'urates', 'both', 'abnormal']),
    remark,
  }),
  /** 1 very thin, 3 good, 5 very fat, judged by eye and hand. */
  event('condition-judged', 1, { animal, score: z.int().check(z.gte(1), z.lte(5)) }),
  event('measured', 1, { animal, lengthCm: z.number().check(z.gte(15), z.lte(250)) }),
] as const;
