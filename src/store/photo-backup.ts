import { Uint8ArrayReader, ZipWriter } from '@zip.js/zip.js/lib/zip-core-native.js';
import type { PhotoId } from '../domain/core/ids.ts';
import type { BackupContents } from './backup-file.ts';
import { backupPieces } from './backup-pieces.ts';
import type { PhotoShelf } from './photo-shelf.ts';

/** The log in an archive, and the folder and ending of a picture: part of the format. */
export const LOG_NAME = 'log.nightdrop.jsonl';
export const pictureName = (id: PhotoId): string => `pictures/${id}.jpg`;

/**
 * Records and pictures as one ZIP archive, written as it is made: of the pictures one is in memory at
 * a time. Nothing is packed: pictures are, and any program can open the log.
 *
 * Errors: rejects where the output does; what was written until then is no backup.
 */
export async function writePhotoBackup(
  contents: BackupContents,
  ids: readonly PhotoId[],
  photos: PhotoShelf,
  output: WritableStream<Uint8Array>,
): Promise<void> {
  const zip = new ZipWriter(output, { level: 0, useWebWorkers: false });
  await zip.add(LOG_NAME, streamOf(backupPieces(contents)));
  for (const id of ids) {
    const jpeg = await photos.load(id);
    // Thrown away since the list was made.
    if (jpeg) await zip.add(pictureName(id), new Uint8ArrayReader(jpeg));
  }
  await zip.close();
}

const streamOf = (pieces: Iterator<Uint8Array>): ReadableStream<Uint8Array> =>
  new ReadableStream({
    pull(controller) {
      const next = pieces.next();
      if (next.done === true) controller.close();
      else controller.enqueue(next.value);
    },
  });
