import { momentOf } from '../domain/core/calendar.ts';
import type { FileLike, FileSpot } from '../domain/file-like.ts';
import type { PhotoBackupMade } from '../domain/photo-room.ts';
import { makeFile, type WritePiece } from '../store/made-files.ts';
import { writePhotoBackup } from '../store/photo-backup.ts';
import { allRecords } from './backup.ts';
import type { Collection, World } from './collection.ts';

/**
 * Writes the whole log and all pictures into a file that the browser holds, and from there into one
 * that the keeper chose, where it knows such files.
 *
 * Errors: rejects where the file cannot be written; then the keeper's is as it was before.
 */
export async function backUpWithPhotos(
  { photos, clock }: World,
  whole: Collection,
  collection: string,
  spot: FileSpot | null,
): Promise<PhotoBackupMade> {
  const shelf = await photos();
  const kept = await shelf.list();
  const contents = { collection, made: momentOf(clock()), records: allRecords(whole) };
  const fill = (write: WritePiece) => writePhotoBackup(contents, kept, shelf, write);
  const { file, drop } = await makeFile(clock().ms, fill);
  const made = { pictures: kept.length, newest: kept.at(-1)?.id };
  if (!spot) return { ...made, file };
  try {
    await copyTo(spot, file);
  } finally {
    await drop();
  }
  return made;
}

async function copyTo(spot: FileSpot, whole: FileLike): Promise<void> {
  const file = await spot.createWritable();
  try {
    await file.write(whole);
    await file.close();
  } catch (error) {
    await file.abort().catch(() => undefined); // It may have ended by itself.
    throw error;
  }
}
