import {
  BlobReader,
  BlobWriter,
  Uint8ArrayWriter,
  ZipReader,
  type FileEntry,
} from '@zip.js/zip.js/lib/zip-core-native.js';
import { SYMBOLS, type PhotoId } from '../domain/core/ids.ts';
import { ok, refuse, type Result } from '../domain/core/result.ts';
import type { FileLike } from '../domain/file-like.ts';
import { LOG_NAME, pictureName } from './photo-backup.ts';

/** A picture in an archive, read when it is asked for. */
export interface PackedPicture {
  readonly id: PhotoId;
  readonly bytes: number;
  /** Undefined where it is damaged or no picture. */
  load(): Promise<Uint8Array | undefined>;
}

export interface PhotoBackup {
  readonly log: FileLike;
  readonly pictures: readonly PackedPicture[];
}

/** As every ZIP archive begins that holds anything. Source: APPNOTE.TXT 6.3, 4.3.7. */
const ZIP_BEGINS = 'PK\u0003\u0004';
/** As every JPEG begins. Source: ISO/IEC 10918-1, B.1.1.3. */
const JPEG_BEGINS = [0xff, 0xd8, 0xff];
/** No picture of ours is larger: an archive may promise little and hold much. */
const MOST_BYTES = 4_000_000;

export const isPhotoBackup = async (file: FileLike): Promise<boolean> =>
  (await file.slice(0, ZIP_BEGINS.length).text()) === ZIP_BEGINS;

/**
 * What an archive holds, by its list at the end; the pictures stay where they are.
 *
 * Errors: refuses one that is cut off, damaged, or not of this program. Reads nothing in part.
 */
export async function openPhotoBackup(file: FileLike): Promise<Result<PhotoBackup>> {
  const entries = await entriesOf(file);
  if (!entries) {
    return refuse(
      'backup-cut',
      'This archive ends early, or its list of contents is damaged. Nothing was read. Pick another copy.',
    );
  }
  const log = entries.find(({ filename }) => filename === LOG_NAME);
  if (!log) {
    return refuse(
      'backup-foreign',
      `This archive is not a Nightdrop backup: it holds no ${LOG_NAME}. Pick a file that ends in .nightdrop.zip.`,
    );
  }
  const text = await log.getData(new BlobWriter(), CHECKED).catch(() => undefined);
  if (!text) {
    return refuse(
      'backup-changed',
      'The records in this archive are damaged: their check value does not fit. Nothing was read. Pick another copy.',
    );
  }
  return ok({ log: text, pictures: entries.flatMap(pictureIn) });
}

const CHECKED = { checkSignature: true, useWebWorkers: false } as const;

async function entriesOf(file: FileLike): Promise<readonly FileEntry[] | undefined> {
  try {
    // A file that a page hands over is a Blob, of which the domain knows only what it needs.
    const reader = new ZipReader(new BlobReader(file as unknown as Blob), CHECKED);
    const entries = await reader.getEntries();
    return entries.flatMap((entry) => (entry.directory || entry.encrypted ? [] : [entry]));
  } catch {
    return undefined;
  }
}

const PICTURE = new RegExp(`^pictures/(p-[${SYMBOLS}]{17})[.]jpg$`);

function pictureIn(entry: FileEntry): readonly PackedPicture[] {
  const id = PICTURE.exec(entry.filename)?.[1] as PhotoId | undefined;
  if (!id || entry.filename !== pictureName(id)) return [];
  const bytes = entry.uncompressedSize;
  const load = async () => {
    if (bytes > MOST_BYTES) return undefined;
    const jpeg = await entry.getData(new Uint8ArrayWriter(), CHECKED).catch(() => undefined);
    return jpeg && JPEG_BEGINS.every((byte, n) => jpeg[n] === byte) ? jpeg : undefined;
  };
  return [{ id, bytes, load }];
}
