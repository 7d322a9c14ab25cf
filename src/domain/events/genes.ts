import * as z from 'zod/mini';
import { count, event, line, remark } from './envelope.ts';
import { AnimalId, ClutchId } from './fields.ts';
import { Sex } from './life.ts';

/** The id of a locus, an allele or a caution: small letters, digits and hyphens. */
export const GeneId = z.string().check(z.regex(/^[a-z0-9][a-z0-9-]{0,39}$/));

const share = z.number().check(z.gte(0), z.lte(1));

/** A male that may be the father; a male of whom nothing is known counts as well. */
const PossibleSire = z.strictObject({
  male: z.union([AnimalId, z.literal('unknown')]),
  /** Of several, how likely beside the others. Absent: 1. */
  weight: z.optional(z.number().check(z.gt(0), z.lte(1_000))),
});

export const genesEvents = [
  /**
   * Hatched young of a clutch that are only counted, and how they look. One that is kept under a name
   * of its own is an animal with stated parents, and not counted here again. Of two counts of a clutch
   * the later one stands.
   */
  event('young-counted', 1, {
    /** The dam. */
    animal: AnimalId,
    clutch: ClutchId,
    sires: z.array(PossibleSire).check(z.minLength(1), z.maxLength(8)),
    counts: z
      .array(
        z.strictObject({
          /** How they look, as the keeper writes it, kept word for word. */
          looks: line(200),
          sex: z.optional(Sex),
          count: count(30),
        }),
      )
      .check(z.minLength(1), z.maxLength(24)),
    remark,
  }),
  /** What a laboratory found of one allele. */
  event('gene-tested', 1, {
    animal: AnimalId,
    locus: GeneId,
    allele: GeneId,
    result: z.enum(['found', 'not found']),
    /** How often it is found in carriers, and not found in the others, as the laboratory states. */
    sensitivity: z.optional(share),
    specificity: z.optional(share),
    lab: z.optional(line(120)),
    remark,
  }),
  /**
   * A gene of the keeper's own, or his word on one that is there: a locus and allele written again
   * stand in for what was written before. With a locus of the catalogue it is one more of its alleles.
   */
  event('gene-made', 1, {
    locus: GeneId,
    allele: GeneId,
    name: line(60),
    aliases: z.array(line(60)).check(z.maxLength(12)),
    mode: z.enum(['recessive', 'incomplete dominant', 'dominant']),
    /** What two copies are called, where that has a name of its own. */
    two: z.optional(line(60)),
    /** Two copies were never seen to hatch. */
    twoNeverHatch: z.optional(z.boolean()),
    remark,
  }),
  /** Why two are put together in spite of a caution. */
  event('pairing-reasoned', 1, {
    male: AnimalId,
    female: AnimalId,
    cautions: z.array(GeneId).check(z.minLength(1), z.maxLength(24)),
    reason: line(300),
  }),
] as const;
