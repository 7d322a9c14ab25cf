import * as z from 'zod/mini';
import { eggTroubles, hatchDefects } from '../core/trade-words.ts';
import { count, event, line, remark } from './envelope.ts';
import { AnimalId, ClutchId, IncubatorId } from './fields.ts';

const clutch = ClutchId;

/** Eggs are lettered clockwise from the corner of the box where its label is. */
export const EggMark = z.string().check(z.regex(/^[A-Z]$/));

const eggs = count(20);
const oneOrMore = eggs.check(z.gte(1));

/** From the eggs to the young one that stands by itself. */
export const clutchEvents = [
  /** Who may be the father, and on what grounds. Stored sperm and none at all count as well. */
  event('paternity-stated', 1, {
    animal: AnimalId,
    clutch,
    sires: z
      .array(
        z.strictObject({
          male: z.union([AnimalId, z.literal('unknown'), z.literal('none')]),
          grounds: z.enum(['together', 'locked', 'stored sperm', 'looks of the young', 'DNA test']),
        }),
      )
      .check(z.minLength(1), z.maxLength(8)),
    remark,
  }),
  /** The egg box stands in an incubator from now on, or in another one than before. */
  event('eggs-set', 1, {
    clutch,
    incubator: IncubatorId,
    shelf: z.optional(line(20)),
    remark,
  }),
  /**
   * A look at the eggs, as counts or egg by egg. `good` and `unsure` are what is there now; `slugs`
   * and `dead` what was found so at this look. A count left out was not counted.
   */
  event('eggs-checked', 1, {
    clutch,
    how: z.enum(['candled', 'looked']),
    good: z.optional(eggs),
    unsure: z.optional(eggs),
    slugs: z.optional(eggs),
    dead: z.optional(eggs),
    each: z.optional(
      z
        .array(z.strictObject({ egg: EggMark, is: z.enum(['good', 'unsure', 'slug', 'dead']) }))
        .check(z.minLength(1), z.maxLength(20)),
    ),
    troubles: z.optional(z.array(z.enum(eggTroubles)).check(z.maxLength(eggTroubles.length))),
    remark,
  }),
  /** The closed box was opened for fresh air. */
  event('box-aired', 1, { clutch, remark }),
  /**
   * A look at eggs that are due. `eggs` is how many newly pipped, were cut or came out. With
   * `between`, `notBefore` is the last look that found none.
   */
  event('hatching-seen', 1, {
    clutch,
    seen: z.enum(['nothing yet', 'pip', 'cut', 'out']),
    eggs: z.optional(oneOrMore),
    egg: z.optional(EggMark),
    remark,
  }),
  /** One came out and was given a name: the record that ties it to its clutch. */
  event('hatched', 1, {
    animal: AnimalId,
    clutch,
    egg: z.optional(EggMark),
    defects: z.array(z.enum(hatchDefects)).check(z.maxLength(hatchDefects.length)),
    remark,
  }),
  /** Felt for eggs after laying: are some still in her? */
  event('eggs-felt', 1, {
    animal: AnimalId,
    left: z.enum(['none', 'unsure', 'some']),
    remark,
  }),
  /** Nothing more is to come of these eggs. */
  event('clutch-closed', 1, {
    clutch,
    why: z.enum(['all out', 'none left alive', 'given away']),
    remark,
  }),
] as const;
