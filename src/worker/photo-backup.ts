import { momentOf } from '../domain/core/calendar.ts';
import type { FileSpot } from '../domain/file-like.ts';
import type { PhotoBackupMade } from '../domain/photo-room.ts';
import { writePhotoBackup } from '../store/photo-backup.ts';
import { allRecords } from './backup.ts';
import type { Collection, World } from './collection.ts';

/** A part of a file in memory is handed to the browser once it is so large: it may lie on disk then. */
const PART_BYTES = 8_000_000;

/**
 * Writes the whole log and all pictures into a file that the keeper chose, or into one that the
 * browser holds, where it knows no such files.
 *
 * Errors: rejects where the file cannot be written; then it is as it was before.
 */
export async function backUpWithPhotos(
  { photos, clock }: World,
  whole: Collection,
  collection: string,
  spot: FileSpot | null,
): Promise<PhotoBackupMade> {
  const shelf = await photos();
  const ids = (await shelf.list()).map(({ id }) => id);
  const contents = { collection, made: momentOf(clock()), records: allRecords(whole) };
  const made = { pictures: ids.length, newest: ids.at(-1) };
  if (spot) {
    const file = await spot.createWritable();
    const output = new WritableStream<Uint8Array>({
      write: (piece) => file.write(piece),
      close: () => file.close(),
    });
    try {
      await writePhotoBackup(contents, ids, shelf, output);
    } catch (error) {
      await file.abort().catch(() => undefined); // It may have ended by itself.
      throw error;
    }
    return made;
  }
  const { output, file } = inParts();
  await writePhotoBackup(contents, ids, shelf, output);
  return { ...made, file: file() };
}

function inParts() {
  const parts: Blob[] = [];
  let pieces: BlobPart[] = [];
  let bytes = 0;
  const output = new WritableStream<Uint8Array>({
    write(piece) {
      pieces.push(piece as Uint8Array<ArrayBuffer>);
      bytes += piece.byteLength;
      if (bytes < PART_BYTES) return;
      parts.push(new Blob(pieces));
      pieces = [];
      bytes = 0;
    },
  });
  return { output, file: () => new Blob([...parts, ...pieces], { type: 'application/zip' }) };
}
