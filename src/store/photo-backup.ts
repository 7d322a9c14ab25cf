import { Zip, ZipPassThrough } from 'fflate';
import { Fault } from '../domain/core/fault.ts';
import type { PhotoId } from '../domain/core/ids.ts';
import type { BackupContents } from './backup-file.ts';
import { backupPieces } from './backup-pieces.ts';
import { letGo } from './let-go.ts';
import type { WritePiece } from './made-files.ts';
import type { KeptPhoto, PhotoShelf } from './photo-shelf.ts';

/** The log in an archive, and the folder and ending of a picture: part of the format. */
export const LOG_NAME = 'log.nightdrop.jsonl';
export const pictureName = (id: PhotoId): string => `pictures/${id}.jpg`;

/** What an archive without extensions can count. Source: APPNOTE.TXT 6.3, 4.4.1.4 and 4.4.8. */
const MOST_FILES = 65_535;
const MOST_BYTES = 4_294_967_295;

/**
 * Records and pictures as one ZIP archive, written as it is made: of the pictures one is in memory at
 * a time. Nothing is packed: pictures are, and any program can open the log.
 *
 * Errors: rejects where the writing does, and with a Fault where an archive cannot hold as much; what
 * was written until then is no backup.
 */
export async function writePhotoBackup(
  contents: BackupContents,
  kept: readonly KeptPhoto[],
  photos: Pick<PhotoShelf, 'load'>,
  write: WritePiece,
): Promise<void> {
  let bytes = 0;
  mustFit(
    kept.length + 1,
    kept.reduce((sum, photo) => sum + photo.bytes, 0),
  );
  const made: Uint8Array[] = [];
  const zip = new Zip((error, piece) => {
    if (error) throw error;
    made.push(piece);
  });
  const add = (name: string) => {
    const file = Object.assign(new ZipPassThrough(name), { mtime: contents.made });
    zip.add(file);
    return async (piece: Uint8Array, isLast: boolean) => {
      file.push(piece, isLast);
      await flush();
    };
  };
  const flush = async () => {
    for (const piece of made.splice(0)) {
      bytes += piece.byteLength;
      mustFit(kept.length + 1, bytes);
      await write(piece);
    }
  };

  const log = add(LOG_NAME);
  for (const piece of backupPieces(contents)) await log(piece, false);
  await log(new Uint8Array(), true);
  for (const { id } of kept) {
    const jpeg = await photos.load(id);
    if (!jpeg) continue; // Thrown away since the list was made.
    await add(pictureName(id))(jpeg, true);
    letGo(jpeg);
  }
  zip.end();
  await flush();
}

function mustFit(files: number, bytes: number): void {
  if (files <= MOST_FILES && bytes <= MOST_BYTES) return;
  throw new Fault(
    'backup-too-large',
    'Records and pictures take more than the 4 GB, or are more than the 65,535 files, that one archive can hold.',
    'Press Back up now for the records alone; pictures that you throw away make room.',
  );
}
