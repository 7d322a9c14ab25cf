import { Fault } from '../domain/core/fault.ts';
import type { FileLike } from '../domain/file-like.ts';

// Files that the app makes for the keeper to save. They lie in the site's own folder on disk, which
// no memory bounds, until they are saved somewhere else.

const FOLDER = 'made-files';
/** Nobody still saves what was made so long ago. */
const STALE_MS = 3_600_000;

/** A piece may be written over once this resolves. */
export type WritePiece = (piece: Uint8Array) => Promise<void>;

/** Writes a file piece by piece; the same each time it is called. */
type Fill = (write: WritePiece) => Promise<void>;

export interface MadeFile {
  readonly file: FileLike;
  /** Takes it away. */
  readonly drop: () => Promise<void>;
}

/**
 * Makes a file, in memory where the disk is full.
 *
 * Errors: rejects where what fills it does, and where memory does not hold it.
 */
export async function makeFile(nowMs: number, fill: Fill): Promise<MadeFile> {
  try {
    return await onDisk(nowMs, fill);
  } catch (error) {
    if (error instanceof Fault) throw error;
    return inMemory(fill);
  }
}

/** Takes away the files that were made more than an hour ago. */
export async function dropStaleFiles(nowMs: number): Promise<void> {
  try {
    const made = await folder();
    for await (const name of made.keys()) {
      if (Number(name) < nowMs - STALE_MS) await made.removeEntry(name);
    }
  } catch {
    // There is no folder, or one is being saved this moment: it goes the next time.
  }
}

async function folder(): Promise<FileSystemDirectoryHandle> {
  const site = await navigator.storage.getDirectory();
  return site.getDirectoryHandle(FOLDER, { create: true });
}

async function onDisk(nowMs: number, fill: Fill): Promise<MadeFile> {
  const made = await folder();
  const name = String(nowMs);
  const drop = () => made.removeEntry(name);
  const handle = await made.getFileHandle(name, { create: true });
  const disk = await handle.createSyncAccessHandle();
  try {
    await fill(async (piece) => {
      for (let from = 0; from < piece.byteLength;) {
        const bytes = disk.write(piece.subarray(from));
        if (bytes === 0) throw new Error('Nothing more fits.');
        from += bytes;
      }
    });
    disk.flush();
  } catch (error) {
    disk.close();
    await drop();
    throw error;
  }
  disk.close();
  return { file: await handle.getFile(), drop };
}

async function inMemory(fill: Fill): Promise<MadeFile> {
  const parts: Blob[] = [];
  await fill(async (piece) => {
    parts.push(new Blob([piece as Uint8Array<ArrayBuffer>]));
  });
  return { file: new Blob(parts), drop: async () => undefined };
}
