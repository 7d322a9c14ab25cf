import type { FileLike } from '../../src/domain/file-like.ts';

/** A file that lies in memory, read as a browser would: cut by bytes, then decoded. */
export function textFile(text: string): FileLike {
  return new Blob([text]);
}
