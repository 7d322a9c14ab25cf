import * as z from 'zod/mini';
import { line } from '../events/envelope.ts';
import { BuyerId, Day } from '../events/fields.ts';

/** All that is kept of a buyer, apart from the log, until it is erased. */
export const Buyer = z.strictObject({
  id: BuyerId,
  name: line(80),
  /** A telephone number, an address: what the law where the keeper lives asks for, and no more. */
  contact: z.optional(line(200)),
  /** When it was written down. */
  since: Day,
});
export type Buyer = z.infer<typeof Buyer>;
