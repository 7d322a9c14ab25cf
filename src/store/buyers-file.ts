import * as z from 'zod/mini';
import { ok, refuse, type Result } from '../domain/core/result.ts';
import type { FileLike } from '../domain/file-like.ts';
import { Buyer } from '../domain/sale/buyer.ts';

const FORMAT = 'nightdrop-buyers';

const File = z.strictObject({
  format: z.literal(FORMAT),
  version: z.literal(1),
  /** Whose records the numbers belong to. */
  collection: z.string(),
  buyers: z.array(Buyer),
});

/** Buyers as a file of their own, so that whoever deletes it has deleted them. */
export const writeBuyers = (collection: string, buyers: readonly Buyer[]): string =>
  `${JSON.stringify({ format: FORMAT, version: 1, collection, buyers }, undefined, 1)}\n`;

const foreign = (): Result<never> =>
  refuse(
    'not-buyers',
    'This is no file of buyers. Pick one that ends in .nightdrop-buyers.json. Nothing was changed.',
  );

/** Errors: refuses what is no such file, and one of another collection. Reads nothing in part. */
export async function readBuyers(
  file: FileLike,
  collection: string,
): Promise<Result<readonly Buyer[]>> {
  try {
    const read = File.safeParse(JSON.parse(await file.text()));
    if (!read.success) return foreign();
    return read.data.collection === collection
      ? ok(read.data.buyers)
      : refuse(
          'another-collection',
          'These buyers belong to another collection. Take in its records first. Nothing was changed.',
        );
  } catch {
    return foreign();
  }
}
