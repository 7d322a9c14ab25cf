import * as z from 'zod/mini';
import { healthSystems } from '../core/trade-words.ts';
import { AnimalId, Day, TubId } from './fields.ts';
import { event, line, remark } from './envelope.ts';

export const Sex = z.enum(['male', 'female', 'unknown']);
export type Sex = z.infer<typeof Sex>;

const animal = AnimalId;

/** From arrival to leaving. */
export const lifeEvents = [
  event('arrived', 1, {
    animal,
    name: line(60),
    sex: Sex,
    hatchedDay: z.optional(Day),
    /** Genes as the keeper writes them, kept word for word. */
    traits: z.optional(line(300)),
    origin: z.optional(z.enum(['own', 'bought', 'gift', 'loan'])),
    from: z.optional(line(120)),
  }),
  /** What is now known of it; a field left out says nothing. */
  event('identified', 1, {
    animal,
    name: z.optional(line(60)),
    sex: z.optional(Sex),
    sexedBy: z.optional(z.enum(['probed', 'popped', 'bred', 'stated'])),
    hatchedDay: z.optional(Day),
    traits: z.optional(line(300)),
  }),
  event('parents-stated', 1, {
    animal,
    dam: z.optional(AnimalId),
    /** Every male that may be the father. */
    sires: z.array(AnimalId).check(z.maxLength(8)),
    remark,
  }),
  event('moved', 1, { animal, tub: TubId, why: remark }),
  event('quarantine-started', 1, { animal, until: z.optional(Day), remark }),
  event('quarantine-ended', 1, { animal, remark }),
  event('health-noted', 1, {
    animal,
    system: z.enum(healthSystems),
    /** 1 slight, 2 clear, 3 grave. */
    severity: z.int().check(z.gte(1), z.lte(3)),
    remark,
  }),
  /** Word for word as a vet prescribed it. The app computes nothing from it. */
  event('treated', 1, {
    animal,
    prescribedBy: line(120),
    asOnLabel: line(300),
    until: z.optional(Day),
  }),
  event('tested', 1, { animal, sample: line(60), what: line(120), result: z.optional(line(200)) }),
  event('held-back', 1, { animal, why: remark }),
  event('left', 1, {
    animal,
    how: z.enum(['sold', 'given', 'lent', 'returned', 'died', 'escaped']),
    remark,
  }),
  event('came-back', 1, { animal, remark }),
  event('noted', 1, { animal, text: line(500) }),
  /** A to-do passed over on purpose: the rule's clock starts again from here. */
  event('passed-over', 1, { animal, rule: line(20), reason: line(200) }),
] as const;
