import * as z from 'zod/mini';
import { citesSources, handOvers } from '../core/trade-words.ts';
import { event, line } from './envelope.ts';
import { AnimalId, BuyerId, Day } from './fields.ts';

const animal = AnimalId;

/** Three letters of ISO 4217. */
export const Currency = z.string().check(z.regex(/^[A-Z]{3}$/));

/** An amount in the smallest unit of its currency: cents, pence, whole yen. */
export const Money = z.strictObject({
  minor: z.int().check(z.gte(0), z.lte(100_000_000_000)),
  currency: Currency,
});
export type Money = z.infer<typeof Money>;

/** Who buys lies apart from the log, which is for ever, and can be erased there. */
const buyer = z.optional(BuyerId);
const price = z.optional(Money);

/**
 * From being offered to being handed over. None has a line for remarks: what is written here cannot
 * be taken back, and a name is soon written.
 */
export const saleEvents = [
  event('put-up-for-sale', 1, { animal, price }),
  event('taken-off-sale', 1, { animal }),
  event('reserved', 1, {
    animal,
    buyer,
    price,
    /** Money that came, or what was agreed instead of it. */
    deposit: z.optional(z.union([Money, line(60)])),
    until: z.optional(Day),
  }),
  event('sold', 1, { animal, buyer, price }),
  /** How it went; that it is gone is said by a `left` written with it. */
  event('handed-over', 1, { animal, how: z.enum(handOvers) }),
  event('sale-ended', 1, { animal, why: z.enum(['fell through', 'brought back']) }),
  /** Where it comes from in the words of CITES, as the keeper states it. */
  event('source-stated', 1, {
    animal,
    code: z.enum(citesSources),
    /** The number of a permit or certificate. */
    permit: z.optional(line(60)),
  }),
] as const;
