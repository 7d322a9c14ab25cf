import { unzipSync } from 'fflate';

/** What an XLSX file may come to once it is unpacked: some 300,000 rows. */
const MOST_UNPACKED_BYTES = 200_000_000;

export class TooLarge extends Error {}

/**
 * The parts of a packed file that hold tables, as text by their path.
 *
 * Each part gets the room that it declares and no more: one that unpacks to more is cut off there,
 * and then is no whole XML.
 *
 * Errors: throws TooLarge before anything is unpacked, and any other error where it is no ZIP.
 */
export function unpack(bytes: Uint8Array): ReadonlyMap<string, string> {
  let total = 0;
  const parts = unzipSync(bytes, {
    filter: ({ name, originalSize }) => {
      if (!isWanted(name)) return false;
      total += originalSize;
      if (total > MOST_UNPACKED_BYTES) throw new TooLarge();
      return true;
    },
  });
  const decoder = new TextDecoder();
  return new Map(
    Object.entries(parts).map(([name, part]): [string, string] => [
      name.replace(/^\//, ''),
      decoder.decode(part),
    ]),
  );
}

const isWanted = (name: string): boolean =>
  /\.(?:xml|rels)$/i.test(name) && !/\/(?:theme|drawings|media|charts|docProps)\//i.test(name);
